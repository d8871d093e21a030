using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Cuts;

/// <summary>
/// The solid a cutter removes along a path, exact: at constant Z the section at a height is every place whose least distance to the path is at most
/// the cutter's radius there and whose greatest distance is at least its inner radius; on a slope, the layers carried along. Immutable.
/// </summary>
/// <remarks>
/// Closed form for straight profiles and balls on straight paths of any direction and for every line; bracketed roots, to 1e-9 mm, where a line crosses a
/// torus obliquely (a ball or rounded corner on an arc, a standing rounded corner) and for a rounded corner on a slant; a profile that curves inwards, or a ring with
/// a rounded side, on a slant, is cut in chords and <see cref="ChordBound"/> says how far they may be off.
/// </remarks>
public sealed class SweptCut : Solid
{
    private const double ChordError = 1e-6;
    private readonly Slab[] slabs;
    private readonly Box3[] boxes;
    private readonly Pose toPart;
    private readonly Pose toCut;

    /// <summary>A cutter taken along a path.</summary>
    /// <param name="cutter">The cutter.</param>
    /// <param name="path">The path of its lowest cutting point, in a frame whose Z is the cutter's axis.</param>
    /// <param name="cutFrameToPart">From that frame to the part's; the identity when null.</param>
    /// <param name="whole">False: only the pieces that cut. True: neck, shank, arbor, chuck and all, as for strikes.</param>
    /// <exception cref="ArgumentNullException">Cutter or path is null.</exception>
    public SweptCut(CutterShape cutter, CutterPath path, Pose? cutFrameToPart = null, bool whole = false)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        ArgumentNullException.ThrowIfNull(path);
        Cutter = cutter;
        Path = path;
        IsWhole = whole;
        toPart = cutFrameToPart ?? Pose.Identity;
        toCut = toPart.Inverse();
        slabs = whole ? cutter.Whole : cutter.Cutting;
        var aside = path.From.X != path.To.X || path.From.Y != path.To.Y;
        if (!path.IsLevel && Array.Exists(slabs, s => s.WantsChords && (aside || s.IsHollow)))
        {
            ChordBound = slabs.Max(s => s.ChordsOff(ChordError));
            slabs = [.. slabs.SelectMany(s => s.InChords(ChordError))];
        }

        var bounds = path.Bounds;
        boxes = [.. slabs.Select(s => new Box3(
            bounds.Min + new Vector3(-s.GreatestRadius, -s.GreatestRadius, s.Z0),
            bounds.Max + new Vector3(s.GreatestRadius, s.GreatestRadius, s.Z1)))];
        CutBounds = boxes.Aggregate(Box3.Empty, (a, b) => a.Union(b));
        Bounds = CutBounds.Placed(toPart).Grown(1e-9);
    }

    /// <summary>The cutter.</summary>
    public CutterShape Cutter { get; }

    /// <summary>The path of its lowest cutting point, in the frame of the cut.</summary>
    public CutterPath Path { get; }

    /// <summary>From the frame of the cut to the part's.</summary>
    public Pose ToPart => toPart;

    /// <summary>Whether the pieces that do not cut are in it too.</summary>
    public bool IsWhole { get; }

    /// <summary>How far the answers may be off, mm: 0 when exact, else the bound of the chords used.</summary>
    public double ChordBound { get; }

    /// <inheritdoc/>
    public override Box3 Bounds { get; }

    /// <inheritdoc/>
    public override int SurfaceCount => 4 * Cutter.Pieces.Count;

    internal Box3 CutBounds { get; }

    internal Pose ToCut => toCut;

    internal ReadOnlySpan<Slab> Slabs => slabs;

    /// <summary>The same move with all the cutter's pieces, as for strikes.</summary>
    public SweptCut WithWholeCutter() => IsWhole ? this : new(Cutter, Path, toPart, whole: true);

    /// <summary>What a face of the answers is part of: edge, shank, arbor and so on.</summary>
    /// <param name="surface">A surface that a sounding of this solid named.</param>
    public CutterPart PartAt(SurfaceId surface) => Cutter.Pieces[Math.Clamp(surface.Face / 4, 0, Cutter.Pieces.Count - 1)].Part;

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point)
    {
        var at = toCut.Apply(point);
        return toPart.ApplyDirection(Path.IsLevel
            ? SweepNormal.At(slabs, Path, surface.Face, at)
            : SlantedNormal.Of(slabs, Path, surface.Face / 4, at, p => Contains(toPart.Apply(p))));
    }

    internal override double Distance(Point3 point)
    {
        var p = toCut.Apply(point);
        if (Path.IsLevel)
        {
            return SlabDistance.OfStack(slabs, Path.LeastDistance(p.Plan), Path.GreatestDistance(p.Plan), p.Z - Path.From.Z);
        }

        var least = double.PositiveInfinity;
        for (var i = 0; i < slabs.Length; i++)
        {
            if (BoxDistance(boxes[i], p) < least)
            {
                least = Math.Min(least, OnSlope(slabs[i], p - Path.From, Path.To - Path.From, least));
            }
        }

        return least;
    }

    internal override double LeastIn(in Box3 cell)
    {
        var far = base.LeastIn(cell);
        var local = cell.Placed(toCut);
        Point2 low = local.Min.Plan, high = local.Max.Plan;
        double z0 = Math.Min(Path.From.Z, Path.To.Z), z1 = Math.Max(Path.From.Z, Path.To.Z);
        if (Path.Kind == PathKind.Arc)
        {
            var near = PlanGap.ToArc(low, high, Path.Centre, Path.Radius, Path.NearestInPlan(local.Centre.Plan));
            return Math.Max(far, SlabDistance.LeastOfStack(slabs, near, local.Min.Z - z1, local.Max.Z - z0));
        }

        if (!Path.IsLevel && Path.From.Plan != Path.To.Plan)
        {
            return far;
        }

        // Level, or plunged: a range of heights of the cutter passes the cell.
        var gap = PlanGap.ToSegment(low, high, Path.From.Plan, Path.To.Plan);
        return Math.Max(far, SlabDistance.LeastOfStack(slabs, gap, local.Min.Z - z1, local.Max.Z - z0));
    }

    // A convex layer's distance is convex along the path, so thirds close in on its least; others are halved with the rate they change at.
    private static double OnSlope(Slab slab, Vector3 q, Vector3 d, double known)
    {
        var length = d.Length;
        if (!slab.IsConvex)
        {
            return LeastValue.Over(0, 1, length, Math.Max(1e-4, 0.02 * Math.Min(known, 1e3)), At);
        }

        double a = 0, b = 1;
        while ((b - a) * length > 1e-9 && b - a > 1e-15)
        {
            double l = a + ((b - a) / 3), r = b - ((b - a) / 3);
            (a, b) = At(l) < At(r) ? (a, r) : (l, b);
        }

        return Math.Min(Math.Min(At(0), At(1)), At((a + b) / 2) - (length * (b - a)));

        double At(double share)
        {
            var g = q - (d * share);
            var rho = Math.Sqrt((g.X * g.X) + (g.Y * g.Y));
            return SlabDistance.Of(slab, rho, rho, g.Z);
        }
    }

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        var inCut = line.Placed(toCut);
        double lo = double.NegativeInfinity, hi = double.PositiveInfinity;
        if (!CutBounds.Clip(inCut, ref lo, ref hi))
        {
            return;
        }

        var start = into.Count;
        if (inCut.Direction.Z == 0 && Path.IsLevel && Borders(inCut.Origin.Z, out var below, out var above))
        {
            SoundBorder(below, above, inCut, closed, into);
            return;
        }

        for (var i = 0; i < slabs.Length; i++)
        {
            lo = double.NegativeInfinity;
            hi = double.PositiveInfinity;
            if (boxes[i].Clip(inCut, ref lo, ref hi))
            {
                Sweep.Sound(slabs[i], Path, inCut, closed, into);
            }
        }

        if (into.Count > start + 1)
        {
            into.Normalise(start);
        }
    }

    // A level line exactly at the border of layers.
    private bool Borders(double z, out Slab? below, out Slab? above)
    {
        below = above = null;
        var h = z - Path.From.Z;
        foreach (var slab in slabs)
        {
            below = slab.Z1 == h ? slab : below;
            above = slab.Z0 == h ? slab : above;
        }

        return below is not null || above is not null;
    }

    // Closed: what either layer holds. Open: what is inside both, as only that is inside the whole.
    private void SoundBorder(Slab? below, Slab? above, in Line3 line, bool closed, SpanList into)
    {
        if (!closed && (below is null || above is null))
        {
            return;
        }

        using var first = SpanPool.Rent(out var one);
        using var second = SpanPool.Rent(out var two);
        if (below is not null)
        {
            Sweep.Sound(below, Path, line, closed: true, one);
            one.Normalise();
        }

        if (above is not null)
        {
            Sweep.Sound(above, Path, line, closed: true, two);
            two.Normalise();
        }

        if (closed)
        {
            one.AddAll(two.Items);
            one.Normalise();
        }
        else
        {
            one.Intersect(two);
        }

        into.AddAll(one.Items);
    }
}
