using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>An outline drawn out along Z. Faces: one a piece of the outline in order, then bottom, then top.</summary>
public sealed class Prism : Solid
{
    private readonly double reach;

    /// <summary>An outline between two heights.</summary>
    /// <param name="outline">The outline in plan.</param>
    /// <param name="z0">Lower height, mm.</param>
    /// <param name="z1">Upper height, mm.</param>
    /// <exception cref="ArgumentNullException"><paramref name="outline"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The heights are out of order.</exception>
    public Prism(Outline outline, double z0, double z1)
    {
        ArgumentNullException.ThrowIfNull(outline);
        Demand.Ordered(z0, z1);
        Outline = outline;
        Z0 = z0;
        Z1 = z1;
        Bounds = new(outline.Min.At(z0), outline.Max.At(z1));
        reach = 1e-12 * (1 + outline.Max.Length + outline.Min.Length);
    }

    /// <summary>The outline in plan.</summary>
    public Outline Outline { get; }

    /// <summary>Lower height, mm.</summary>
    public double Z0 { get; }

    /// <summary>Upper height, mm.</summary>
    public double Z1 { get; }

    /// <inheritdoc/>
    public override Box3 Bounds { get; }

    /// <inheritdoc/>
    public override int SurfaceCount => Outline.Pieces.Count + 2;

    /// <summary>The face number of the bottom; the top is the next one.</summary>
    public int BottomFace => Outline.Pieces.Count;

    /// <inheritdoc/>
    public override bool Contains(Point3 point) => point.Z >= Z0 && point.Z <= Z1 && Outline.Contains(point.Plan);

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point)
    {
        if (surface.Face >= BottomFace)
        {
            return new(0, 0, surface.Face == BottomFace ? -1 : 1);
        }

        var n = Outline.Pieces[surface.Face].Outward(point.Plan);
        return new(n.X, n.Y, 0);
    }

    internal override double Distance(Point3 point)
    {
        var d = Outline.DistanceTo(point.Plan);
        return Corner(Outline.IsInside(point.Plan) ? -d : d, Math.Max(Z0 - point.Z, point.Z - Z1));
    }

    internal override double LeastIn(in Box3 cell)
    {
        var ends = Math.Max(Z0 - cell.Max.Z, cell.Min.Z - Z1);
        Point2 low = cell.Min.Plan, high = cell.Max.Plan, centre = cell.Centre.Plan;
        if (Outline.IsInside(centre))
        {
            return Math.Max(-Outline.DistanceTo(centre) - ((high - low).Length / 2), ends);
        }

        var side = double.PositiveInfinity;
        foreach (var piece in Outline.Pieces)
        {
            side = Math.Min(side, piece.IsArc
                ? PlanGap.ToArc(low, high, piece.Centre, piece.Radius, piece.Nearest(centre))
                : PlanGap.ToSegment(low, high, piece.From, piece.To));
        }

        return Corner(side, ends);
    }

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        double lo = double.NegativeInfinity, hi = double.PositiveInfinity;
        if (!Bounds.Grown(1e-9).Clip(line, ref lo, ref hi))
        {
            return;
        }

        Vector3 u = line.Direction;
        Point2 o = line.Origin.Plan, w = new(u.X, u.Y);
        if (u.Z == 0 && !(closed ? line.Origin.Z >= Z0 && line.Origin.Z <= Z1 : line.Origin.Z > Z0 && line.Origin.Z < Z1))
        {
            return;
        }

        var start = into.Count;
        if (u.X == 0 && u.Y == 0)
        {
            if (IsIn(o, closed))
            {
                into.Add(double.NegativeInfinity, double.PositiveInfinity, 0, 0);
            }
        }
        else
        {
            SoundPlan(o, w, closed, into);
        }

        if (u.Z != 0)
        {
            double a = (Z0 - line.Origin.Z) / u.Z, b = (Z1 - line.Origin.Z) / u.Z;
            var up = u.Z > 0;
            into.Clip(start, Math.Min(a, b), Math.Max(a, b), up ? BottomFace : BottomFace + 1, up ? BottomFace + 1 : BottomFace);
        }
    }

    // Appends where a plan line is inside the outline.
    internal void SoundPlan(Point2 o, Point2 w, bool closed, SpanList into)
    {
        var start = into.Count;
        var crossings = Scratch.Crossings();
        Outline.Crossings(o, w, crossings);
        Scratch.Sort(crossings);
        for (var i = 0; i + 1 < crossings.Count; i++)
        {
            var ((lo, first), (hi, last)) = (crossings[i], crossings[i + 1]);
            if (lo < hi && IsIn(o + (w * Breaks.Within(lo, hi)), closed))
            {
                into.Add(lo, hi, first, last);
            }
        }

        into.Normalise(start);
    }

    private bool IsIn(Point2 p, bool closed)
    {
        if (p.X < Outline.Min.X - reach || p.X > Outline.Max.X + reach || p.Y < Outline.Min.Y - reach || p.Y > Outline.Max.Y + reach)
        {
            return false;
        }

        return Outline.DistanceTo(p) <= reach ? closed : Outline.IsInside(p);
    }
}
