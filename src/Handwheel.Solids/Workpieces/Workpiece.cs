using System.Collections.Immutable;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Workpieces;

/// <summary>
/// The stock as it is: the bare solid less its cuts, in order. Immutable; each cut makes a new one that shares the rest.
/// The bare solid is closed and cuts are open, so a cut that only touches removes nothing.
/// </summary>
/// <remarks>Metal or gaps thinner than <see cref="Thinnest"/> are dropped when a sounding is read, never when cutting, so the order of cuts does not matter.</remarks>
public sealed class Workpiece : Solid
{
    /// <summary>Metal and gaps thinner than this are dropped when read, mm.</summary>
    public const double Thinnest = 1e-6;

    private readonly Solid bare;
    private readonly ImmutableList<ISolid> cuts;

    /// <summary>Bare stock.</summary>
    /// <param name="bare">The solid no cut has been made in.</param>
    /// <exception cref="ArgumentNullException"><paramref name="bare"/> is null.</exception>
    public Workpiece(ISolid bare)
        : this(From(bare), [])
    {
    }

    private Workpiece(Solid bare, ImmutableList<ISolid> cuts)
    {
        this.bare = bare;
        this.cuts = cuts;
    }

    /// <summary>The bare stock.</summary>
    public ISolid Bare => bare;

    /// <summary>The cuts in order; <see cref="SurfaceId.Cut"/> is an index into them.</summary>
    public IReadOnlyList<ISolid> Cuts => cuts;

    /// <inheritdoc/>
    public override Box3 Bounds => bare.Bounds;

    /// <inheritdoc/>
    public override int SurfaceCount => bare.SurfaceCount;

    /// <summary>The workpiece after one more cut.</summary>
    /// <param name="cut">What is removed, in the frame of the bare stock.</param>
    /// <exception cref="ArgumentNullException"><paramref name="cut"/> is null.</exception>
    public Workpiece After(ISolid cut) => new(bare, cuts.Add(From(cut)));

    /// <summary>The workpiece as it was before its last cuts.</summary>
    /// <param name="count">How many cuts were made by then.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than none, or more than there are.</exception>
    public Workpiece Before(int count) => new(bare, cuts.GetRange(0, count));

    /// <summary>The workpiece with one cut put in another's place, as when a setting is changed.</summary>
    /// <param name="index">Which cut.</param>
    /// <param name="cut">The new cut.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such cut.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="cut"/> is null.</exception>
    public Workpiece With(int index, ISolid cut) => new(bare, cuts.SetItem(index, From(cut)));

    /// <inheritdoc/>
    public override bool Contains(Point3 point)
    {
        if (!bare.Contains(point))
        {
            return false;
        }

        using var rented = SpanPool.Rent(out var list);
        foreach (var cut in cuts)
        {
            if (!cut.Bounds.Contains(point))
            {
                continue;
            }

            list.Clear();
            ((Solid)cut).Sound(new Line3(point, Vector3.UnitZ), closed: false, list);
            foreach (ref readonly var span in list.Items)
            {
                if (span.From < 0 && 0 < span.To)
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>The unit normal, pointing out of the metal: out of the bare stock, or into the space a cut left.</summary>
    /// <param name="surface">A surface that a sounding of this workpiece named.</param>
    /// <param name="point">A place on it.</param>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point) => surface.IsStock
        ? bare.NormalAt(surface, point)
        : -cuts[surface.Cut].NormalAt(surface with { Owner = 0 }, point);

    internal override double Distance(Point3 point)
    {
        var most = bare.Distance(point);
        foreach (var cut in cuts)
        {
            // A cut that does not hold the place says nothing new.
            if (cut.Bounds.Contains(point) || most < 0)
            {
                most = Math.Max(most, -((Solid)cut).Distance(point));
            }
        }

        return most;
    }

    internal override double LeastIn(in Box3 cell)
    {
        var most = bare.LeastIn(cell);
        var centre = cell.Centre;
        foreach (var cut in cuts)
        {
            if (cut.Bounds.Contains(centre))
            {
                most = Math.Max(most, -((Solid)cut).Distance(centre) - (cell.Size.Length / 2));
            }
        }

        return most;
    }

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        using var metal = SpanPool.Rent(out var solid);
        bare.Sound(line, closed, solid);
        solid.Normalise();
        if (solid.Count == 0)
        {
            return;
        }

        using var removed = SpanPool.Rent(out var gone);
        SoundCuts(line, closed, solid[0].From, solid[solid.Count - 1].To, gone);
        solid.Subtract(gone);
        solid.Clean(Thinnest);
        into.AddAll(solid.Items);
    }

    // All cuts' intervals, sorted and disjoint, each end named by the cut that made it.
    private void SoundCuts(in Line3 line, bool closed, double from, double to, SpanList gone)
    {
        var owner = 0;
        foreach (var cut in cuts)
        {
            owner++;
            double lo = from, hi = to;
            if (!cut.Bounds.Clip(line, ref lo, ref hi))
            {
                continue;
            }

            var first = gone.Count;
            ((Solid)cut).Sound(line, !closed, gone);
            gone.Normalise(first);
            gone.Rename(first, owner, 0);
        }

        gone.Normalise();
    }
}
