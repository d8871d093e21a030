using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Measuring;

/// <summary>Measures the sides and ends of one feature at one of its places on the part as cut.</summary>
internal sealed class FeatureProbe
{
    private const int Spokes = 24;
    private const double OffRound = 0.013;
    private const double OffEdges = 0.25;

    // Off round shares: no level lies in a face drawn at a half or a quarter.
    private static readonly double[] Shares = [0.0613, 0.2687, 0.5037, 0.7319, 0.9383];

    // A cone may be cut away but for a rim near either end.
    private static readonly double[] ConeShares = [0.02, 0.05, 0.1, 0.27, 0.5, 0.73, 0.9, 0.95, 0.98];

    private readonly Feature feature;
    private readonly FaceProbe probe;
    private readonly double[] levels;
    private readonly DrawnFeature drawn;
    private readonly int index;

    /// <summary>Prepares to measure.</summary>
    /// <param name="drawn">The feature as aimed.</param>
    /// <param name="index">Which of its places.</param>
    /// <param name="probe">The part.</param>
    /// <param name="bounds">The aimed part&#39;s box.</param>
    public FeatureProbe(DrawnFeature drawn, int index, FaceProbe probe, Box3 bounds)
    {
        feature = drawn.Feature;
        this.drawn = drawn;
        this.index = index;
        this.probe = probe;
        Faces = FeatureFaces.Of(drawn, index);
        Centre = drawn.Centres[index];
        Turn = feature.Places.Count > index ? feature.Places[index].Turn : 0;
        Mirrored = feature.Places.Count > index && feature.Places[index].Mirrored;
        (Bottom, Top) = (Math.Min(drawn.From, drawn.To), Math.Max(drawn.From, drawn.To));
        var (low, high) = FeatureView.Ends(feature.View, bounds);
        double first = Math.Max(Bottom, low), last = Math.Min(Top, high);
        (first, last) = OffChamfers(first, last);
        levels = [.. (feature.Shape is ConeShape ? ConeShares : Shares).Select(s => first + ((last - first) * s))];
    }

    /// <summary>The heights at which its sides are measured, along the view&#39;s axis.</summary>
    public IReadOnlyList<double> Levels => levels;

    /// <summary>Its sides.</summary>
    public FeatureFaces Faces { get; }

    /// <summary>Its centre in plan, as aimed.</summary>
    public Point2 Centre { get; }

    /// <summary>How far this place is turned, radians.</summary>
    public double Turn { get; }

    /// <summary>Whether this place is a mirror image.</summary>
    public bool Mirrored { get; }

    /// <summary>The lower of its ends.</summary>
    public double Bottom { get; }

    /// <summary>The higher of its ends.</summary>
    public double Top { get; }

    /// <summary>A cone&#39;s diameter at one end, as aimed.</summary>
    /// <param name="face"><c>bottom</c> for its lower end, else its upper.</param>
    /// <returns>The diameter; null where the feature is no cone.</returns>
    public double? Cone(string? face) => feature.Shape is ConeShape cone ? face == "bottom" ? cone.AcrossLow.Middle : cone.AcrossHigh.Middle : null;

    /// <summary>A two-point size across a round side; where the drawing has no two opposite places, across the circle through those it has.</summary>
    /// <param name="round">The round side.</param>
    /// <param name="across">What it measures as aimed (a cone&#39;s differs by level).</param>
    /// <param name="tally">Takes the values.</param>
    public void Across(RoundFace round, double across, Tally tally)
    {
        foreach (var level in levels)
        {
            for (var i = 0; i < Spokes / 2; i++)
            {
                var angle = OffRound + (2 * Math.PI * i / Spokes);
                var here = At(round, level);
                if (Radial(here, level, angle) is { } a && Radial(here, level, angle + Math.PI) is { } b && tally.Sees(a) & tally.Sees(b))
                {
                    tally.Add(across + ((a.Offset!.Value + b.Offset!.Value) * (round.Inner ? -1 : 1)));
                }
            }
        }

        if (tally.Any || tally.Gone || feature.Shape is ConeShape)
        {
            return;
        }

        foreach (var circle in Circles(round, tally))
        {
            tally.Add(2 * circle.Radius);
        }
    }

    // A cone's side at a level; any other round side is the same at all.
    private RoundFace At(RoundFace round, double level) => feature.Shape is ConeShape cone
        ? round with { Radius = (cone.AcrossLow.Middle + ((cone.AcrossHigh.Middle - cone.AcrossLow.Middle) * (level - Bottom) / (Top - Bottom))) / 2 }
        : round;

    /// <summary>The circles that a round side makes, one a level.</summary>
    /// <param name="round">The round side.</param>
    /// <param name="tally">Takes surfaces and lost faces.</param>
    /// <returns>The circles.</returns>
    public IReadOnlyList<Circle> Circles(RoundFace round, Tally tally)
    {
        var circles = new List<Circle>();
        foreach (var level in levels)
        {
            var places = new List<Point2>();
            for (var i = 0; i < 3 * Spokes; i++)
            {
                var angle = OffRound + (2 * Math.PI * i / (3 * Spokes));
                if (Radial(round, level, angle) is { } a && tally.Sees(a))
                {
                    var r = round.Radius + (a.Offset!.Value * (round.Inner ? -1 : 1));
                    places.Add(new Point2(round.Centre.X + (r * Math.Cos(angle)), round.Centre.Y + (r * Math.Sin(angle))));
                }
            }

            if (Circle.Through(places) is { } circle)
            {
                circles.Add(circle);
            }
        }

        return circles;
    }

    /// <summary>How far a straight side stands out of where it is aimed.</summary>
    /// <param name="plane">The side.</param>
    /// <param name="tally">Takes the offsets.</param>
    public void Plane(PlaneFace plane, Tally tally)
    {
        foreach (var level in levels)
        {
            foreach (var share in Shares)
            {
                var slide = plane.Half * ((2 * share) - 1);
                if (Side(plane, level, slide) is { } probed)
                {
                    tally.Add(probed, 0, 1);
                }
            }
        }
    }

    /// <summary>A two-point size between two opposite straight sides; where they do not lie opposite on any line, between their extremes.</summary>
    /// <param name="a">One side.</param>
    /// <param name="b">The side opposite.</param>
    /// <param name="tally">Takes the values.</param>
    public void Between(PlaneFace a, PlaneFace b, Tally tally)
    {
        var apart = ((a.Middle.X - b.Middle.X) * a.Normal.X) + ((a.Middle.Y - b.Middle.Y) * a.Normal.Y);
        foreach (var level in levels)
        {
            foreach (var share in Shares)
            {
                var slide = Math.Min(a.Half, b.Half) * ((2 * share) - 1);
                if (Side(a, level, slide) is { } one && Side(b, level, -slide) is { } other && tally.Sees(one) & tally.Sees(other))
                {
                    tally.Add(apart + one.Offset!.Value + other.Offset!.Value);
                }
            }
        }

        if (tally.Any || tally.Gone)
        {
            return;
        }

        Tally first = new(), second = new();
        Plane(a, first);
        Plane(b, second);
        tally.Rests(first);
        tally.Rests(second);
        if (first.Any && second.Any)
        {
            tally.Add(apart + first.Least + second.Least);
            tally.Add(apart + first.Greatest + second.Greatest);
        }
    }

    /// <summary>Where a level face (an end along the view&#39;s axis) stands.</summary>
    /// <param name="depth">Where it is aimed.</param>
    /// <param name="metalBelow">Whether metal lies on its lower side.</param>
    /// <param name="tally">Takes the places found.</param>
    public void Level(double depth, bool metalBelow, Tally tally)
    {
        var up = FeatureView.Direction(feature.View, default, 1);
        List<(Probed Probed, bool Amid)> found = [];
        foreach (var place in PlanSamples().Select(plan => FeatureView.Place(feature.View, plan, depth)))
        {
            if (probe.At(place, up, metalBelow) is { } probed)
            {
                found.Add((probed, probe.IsAmid(place, up, metalBelow, OffEdges)));
            }
        }

        foreach (var (probed, _) in Amid(found))
        {
            tally.Add(probed, depth, 1);
        }
    }

    // Places well off the face's edges, where there are any: right beside an edge a displacement that every limit allows loses the face.
    private static IEnumerable<(T Found, bool Amid)> Amid<T>(List<(T Found, bool Amid)> found) => found.Exists(f => f.Amid) ? found.Where(f => f.Amid) : found;

    /// <summary>A two-point height: both ends on one line along the view&#39;s axis, else between their extremes.</summary>
    /// <param name="tally">Takes the values.</param>
    public void High(Tally tally)
    {
        var up = FeatureView.Direction(feature.View, default, 1);
        List<((Probed Top, Probed Bottom) Ends, bool Amid)> found = [];
        foreach (var plan in PlanSamples())
        {
            Point3 high = FeatureView.Place(feature.View, plan, Top), low = FeatureView.Place(feature.View, plan, Bottom);
            if (probe.At(high, up, metalInside: true) is { } top && probe.At(low, up, metalInside: false) is { } bottom)
            {
                found.Add(((top, bottom), probe.IsAmid(high, up, metalInside: true, OffEdges) && probe.IsAmid(low, up, metalInside: false, OffEdges)));
            }
        }

        foreach (var ((top, bottom), _) in Amid(found))
        {
            if (tally.Sees(top) & tally.Sees(bottom))
            {
                tally.Add(Top - Bottom + top.Offset!.Value - bottom.Offset!.Value);
            }
        }

        if (!tally.Any && !tally.Gone)
        {
            Ends(tally, topMetalBelow: true, bottomMetalBelow: false);
        }

        // A boss stands on other metal: its lower end is the shoulder round it.
        if (!tally.Any && !tally.Gone)
        {
            Ends(tally, topMetalBelow: true, bottomMetalBelow: true);
        }
    }

    /// <summary>A cut&#39;s depth: from the face it starts in, beside it, to its floor.</summary>
    /// <param name="tally">Takes the values.</param>
    public void Deep(Tally tally)
    {
        Ends(tally, topMetalBelow: true, bottomMetalBelow: true);
        if (!tally.Any)
        {
            Ends(tally, topMetalBelow: false, bottomMetalBelow: false);
        }
    }

    /// <summary>The direction of a straight side at each level: the line through the places found on it, by least squares.</summary>
    /// <param name="plane">The side.</param>
    /// <param name="tally">Takes surfaces and lost faces.</param>
    /// <returns>Unit normals in plan, one a level with places enough.</returns>
    public IReadOnlyList<Point2> Leans(PlaneFace plane, Tally tally)
    {
        var found = new List<Point2>();
        foreach (var level in levels)
        {
            var places = new List<(double, double)>();
            for (var i = 0; i < 9; i++)
            {
                var slide = plane.Half * 0.9 * ((i / 4.0) - 1);
                if (Side(plane, level, slide) is { } probed && tally.Sees(probed))
                {
                    places.Add((slide, probed.Offset!.Value));
                }
            }

            if (Fits.Slope(places, 0.1 * plane.Half) is { } slope)
            {
                var normal = plane.Normal - (new Point2(-plane.Normal.Y, plane.Normal.X) * slope);
                found.Add(normal * (1 / normal.Length));
            }
        }

        return found;
    }

    /// <summary>The outermost place of a round side along a direction.</summary>
    /// <param name="round">The round side.</param>
    /// <param name="way">Unit direction in plan.</param>
    /// <param name="tally">Takes how far it stands out of where it is aimed.</param>
    public void Outermost(RoundFace round, Point2 way, Tally tally)
    {
        foreach (var level in levels)
        {
            if (Radial(round, level, Math.Atan2(way.Y, way.X)) is { } probed)
            {
                tally.Add(probed, 0, 1);
            }
        }
    }

    private void Ends(Tally tally, bool topMetalBelow, bool bottomMetalBelow)
    {
        Tally top = new(), bottom = new();
        Level(Top, topMetalBelow, top);
        Level(Bottom, bottomMetalBelow, bottom);
        if (!top.Any)
        {
            top = new Tally();
            Level(Top, !topMetalBelow, top);
        }

        tally.Rests(top);
        tally.Rests(bottom);
        if (top.Any && bottom.Any)
        {
            tally.Add(top.Least - bottom.Greatest);
            tally.Add(top.Greatest - bottom.Least);
        }
    }

    // The sides end where their chamfers begin.
    private (double First, double Last) OffChamfers(double first, double last)
    {
        var (above, below) = feature.LooksUp ? (feature.ChamferAbove, feature.ChamferBelow) : (feature.ChamferBelow, feature.ChamferAbove);
        return (first + below, last - above);
    }

    // Places where the ends are level: none over a chamfer.
    private IEnumerable<Point2> PlanSamples()
    {
        var leg = Math.Max(feature.ChamferAbove, feature.ChamferBelow);
        return leg > 0 ? PlanNet().Where(p => !drawn.Outlines[index].Contains(p) || drawn.Outlines[index].DistanceTo(p) > 1.5 * leg) : PlanNet();
    }

    // Plan places over the feature's extent and a little round it.
    private IEnumerable<Point2> PlanNet()
    {
        double minX = Centre.X, maxX = minX, minY = Centre.Y, maxY = minY;
        foreach (var r in Faces.Rounds)
        {
            minX = Math.Min(minX, r.Centre.X - r.Radius);
            maxX = Math.Max(maxX, r.Centre.X + r.Radius);
            minY = Math.Min(minY, r.Centre.Y - r.Radius);
            maxY = Math.Max(maxY, r.Centre.Y + r.Radius);
        }

        foreach (var p in Faces.Planes)
        {
            double ex = Math.Abs(p.Normal.Y) * p.Half, ey = Math.Abs(p.Normal.X) * p.Half;
            minX = Math.Min(minX, p.Middle.X - ex);
            maxX = Math.Max(maxX, p.Middle.X + ex);
            minY = Math.Min(minY, p.Middle.Y - ey);
            maxY = Math.Max(maxY, p.Middle.Y + ey);
        }

        const int Side = 15;
        const double Round = 1.0;
        for (var i = 0; i < Side; i++)
        {
            for (var j = 0; j < Side; j++)
            {
                yield return new Point2(
                    minX - Round + ((maxX - minX + (2 * Round)) * (i + 0.487) / Side),
                    minY - Round + ((maxY - minY + (2 * Round)) * (j + 0.513) / Side));
            }
        }
    }

    private Probed? Radial(RoundFace round, double level, double angle)
    {
        var (s, c) = Math.SinCos(angle);
        var plan = new Point2(round.Centre.X + (round.Radius * c), round.Centre.Y + (round.Radius * s));
        var out1 = round.Inner ? new Point2(-c, -s) : new Point2(c, s);
        return probe.At(FeatureView.Place(feature.View, plan, level), FeatureView.Direction(feature.View, out1, 0), !feature.IsCut);
    }

    /// <summary>Probes one place of a straight side.</summary>
    /// <param name="plane">The side.</param>
    /// <param name="level">How high, along the view&#39;s axis.</param>
    /// <param name="slide">How far along it from its middle.</param>
    /// <returns>What was found; null where the drawing has no such face there.</returns>
    public Probed? Side(PlaneFace plane, double level, double slide)
    {
        var plan = new Point2(plane.Middle.X - (plane.Normal.Y * slide), plane.Middle.Y + (plane.Normal.X * slide));
        return probe.At(FeatureView.Place(feature.View, plan, level), FeatureView.Direction(feature.View, plane.Normal, 0), !feature.IsCut);
    }
}
