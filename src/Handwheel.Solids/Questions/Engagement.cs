using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>How a cutter is engaged along a move, from the metal really before it. Seen along the feed; the caller's frame decides what is left.</summary>
public sealed class Engagement
{
    private const int Angles = 90;

    private Engagement(IReadOnlyList<Station> stations, bool entersSolid)
    {
        Stations = stations;
        EntersSolid = entersSolid;
    }

    /// <summary>The stations in order along the path.</summary>
    public IReadOnlyList<Station> Stations { get; }

    /// <summary>Whether the cutter begins in metal, or goes down into metal under its end: a plunge.</summary>
    public bool EntersSolid { get; }

    /// <summary>Greatest depth along the axis at any station, mm.</summary>
    public double Depth => Stations.Max(s => s.Depth);

    /// <summary>Greatest width across the feed at any station, mm.</summary>
    public double Width => Stations.Max(s => s.Width);

    /// <summary>Looks at the metal before a move is made.</summary>
    /// <param name="before">The metal before the move.</param>
    /// <param name="cut">The move.</param>
    /// <param name="stations">How many stations, 1 or more, at equal distances, the first half a distance from the start.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one station.</exception>
    public static Engagement Along(ISolid before, SweptCut cut, int stations = 9)
    {
        ArgumentNullException.ThrowIfNull(cut);
        ArgumentOutOfRangeException.ThrowIfLessThan(stations, 1);
        var metal = new Shapes.Placed(before, cut.ToPart.Inverse());
        var list = new Station[stations];
        for (var i = 0; i < stations; i++)
        {
            list[i] = At(metal, cut, (i + 0.5) / stations);
        }

        var first = At(metal, cut, 0);
        var falls = cut.Path.To.Z < cut.Path.From.Z;
        var starts = first.Below > 0 && Inside(metal, cut) > 0;
        return new(list, starts || (falls && Array.Exists(list, s => s.Below > 0.02)));
    }

    // Share of the cutter's own body that stands in metal at the start.
    private static double Inside(Shapes.Placed metal, SweptCut cut)
    {
        var body = new SweptCut(cut.Cutter, CutterPath.At(cut.Path.From));
        var r = cut.Cutter.GreatestRadius;
        double inside = 0;
        for (var i = 0; i < 3 * 16; i++)
        {
            var p = Point2.Polar(cut.Path.From.Plan, r * ((i / 16) + 0.37) / 3, (i % 16) * Math.PI / 8 + 0.1);
            var line = Line3.AlongZ(p.X, p.Y);
            inside += metal.Sound(line).Intersection(body.Sound(line)).Cleaned(1e-6).Length;
        }

        return inside;
    }

    private static Station At(Shapes.Placed metal, SweptCut cut, double share)
    {
        var place = cut.Path.At(share);
        var feed = cut.Path.DirectionAt(share);
        var heading = Math.Atan2(feed.Y, feed.X);
        var body = new SweptCut(cut.Cutter, CutterPath.At(place));
        var moves = Math.Abs(feed.X) + Math.Abs(feed.Y) > 1e-12;
        var r = cut.Cutter.GreatestRadius;
        double depth = 0, least = double.PositiveInfinity, most = double.NegativeInfinity;
        int left = 0, right = 0;
        for (var i = 0; moves && i < 2 * Angles; i++)
        {
            // From a right angle on the right to one on the left, at the middles of equal steps, just before the cutter.
            var side = (((i + 0.5) / (2 * Angles)) - 0.5) * Math.PI;
            var height = HeightBefore(metal, body, Point2.Polar(place.Plan, r * (1 - 1e-7), heading + side));
            if (height <= 1e-6)
            {
                continue;
            }

            depth = Math.Max(depth, height);
            (left, right) = side > 0 ? (left + 1, right) : (left, right + 1);
            least = Math.Min(least, r * Math.Sin(side - (Math.PI / 4 / Angles)));
            most = Math.Max(most, r * Math.Sin(side + (Math.PI / 4 / Angles)));
        }

        return new(
            share, place, depth, Math.Max(0, most - least), (left + right) * Math.PI / (2 * Angles), left / (double)Angles, right / (double)Angles, Below(metal, cut, place));
    }

    private static double HeightBefore(Shapes.Placed metal, SweptCut body, Point2 p)
    {
        var line = Line3.AlongZ(p.X, p.Y);
        var reach = body.Sound(line);
        return reach.Count == 0 ? 0 : metal.Sound(line).Intersection(reach).Length;
    }

    // Metal within a hair under the cutter's lowest surface, over its end face.
    private static double Below(Shapes.Placed metal, SweptCut cut, Point3 place)
    {
        const int rings = 4, around = 16;
        var r = cut.Cutter.GreatestRadius;
        var hits = 0;
        for (var i = 0; i < rings * around; i++)
        {
            var p = Point2.Polar(default, r * Math.Sqrt(((i / around) + 0.5) / rings), ((i % around) + 0.3) * Turn.Full / around);
            var bottom = ToolUnderside.At(cut.Cutter, p.Length, cuttingOnly: true);
            if (double.IsFinite(bottom) && metal.Sound(Line3.AlongZ(place.X + p.X, place.Y + p.Y)).Contains(place.Z + bottom - 1e-5))
            {
                hits++;
            }
        }

        return hits / (double)(rings * around);
    }
}
