using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Moves;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// One run along an edge that lies along a travel; Off is where the spindle stands beside it.
internal sealed class EdgeRun(Bench bench, PlanFeature f, PlanEdge edge, bool alongX, bool plus, double theta, Working off, Working? depth = null)
{
    // A row covers no more than this share of the cutter (common practice, no source).
    private const double Share = 0.8;

    private Axis Run => alongX ? Axis.X : Axis.Y;

    private Axis Side => alongX ? Axis.Y : Axis.X;

    // Metal to the left of the feed: the far side towards X minus, the near towards plus; the right end towards Y plus, the left towards minus.
    private bool Forward => alongX ? !plus : plus;

    // Between two tangent points: in from the side at the first, along to the second.
    internal void BetweenRounds(string word, double to, Typed? perPass)
    {
        double a = Along(edge.From.X, edge.From.Y), b = Along(edge.To.X, edge.To.Y);
        var (first, last) = Forward == a < b ? (a, b) : (b, a);
        var start = bench.Show(bench.Reading(Run, $"{Run} where the {word} begins", "its tangent point, turned with the work", bench.Figures.L(first), first, Toward.Nearest));
        var end = bench.Show(bench.Reading(Run, $"{Run} where the {word} ends", "its tangent point, turned with the work", bench.Figures.L(last), last, Toward.Nearest));
        var r = bench.Radius;
        var reach = bench.Metal.Extent(!alongX, first - r, first + r, to, theta);
        if (Climbs(first, to, reach))
        {
            RunIn(word, end, to, perPass);
            return;
        }

        var clear = bench.Clearing(Side, $"clear beside the {word}", plus ? Math.Max(off.Result, reach?.High ?? 0) + r + bench.Clear : Math.Min(off.Result, reach?.Low ?? 0) - r - bench.Clear, plus);
        bench.Up();
        bench.Free(Run, start);
        bench.Free(Side, clear);
        bench.Machine.Passes(Depths(off, Math.Min(a, b), Math.Max(a, b), to, perPass), plunges: false,
        [
            new(Side, off, true) { ReadBack = true },
            new(Run, end, true),
            new(Axis.Z, bench.Safe(), false),
            new(Side, clear, false),
            new(Run, start, false),
        ]);
        bench.Up();
    }

    // Whether coming in from the side would climb: more metal to the right of the way in than to its left.
    private bool Climbs(double first, double to, (double Low, double High)? reach)
    {
        if (reach is not { } metal)
        {
            return false;
        }

        double before = 0, behind = 0;
        for (var i = 0; i <= 24; i++)
        {
            var side = off.Result + (((plus ? metal.High : metal.Low) - off.Result) * i / 24);
            for (var k = 0; k < 12; k++)
            {
                var by = bench.Radius * (k + 0.5) / 12;
                before += Above(first + (Forward ? by : -by), side, to);
                behind += Above(first - (Forward ? by : -by), side, to);
            }
        }

        // The run to come lies to the right of the way in on either flank.
        return before > behind * 1.04;
    }

    private double Above(double along, double side, double to) =>
        Math.Max(0, (bench.Metal.TopAt(alongX ? new(along, side) : new(side, along), theta) ?? to) - to);

    // In along the edge's own line from outside the metal, to its last tangent point: the line touches the outline nowhere else.
    private void RunIn(string word, Working end, double to, Typed? perPass)
    {
        var r = bench.Radius;
        double a = Along(edge.From.X, edge.From.Y), b = Along(edge.To.X, edge.To.Y);
        var band = bench.Metal.Extent(alongX, off.Result - r, off.Result + r, to, theta);
        double low = Math.Min(Math.Min(a, b), band?.Low ?? a), high = Math.Max(Math.Max(a, b), band?.High ?? b);
        var start = bench.Clearing(Run, $"clear of the metal before the {word}", Forward ? low - r - bench.Clear : high + r + bench.Clear, up: !Forward);
        bench.Up();
        bench.Free(Run, start);
        bench.Free(Side, off);
        bench.Machine.Passes(Depths(off, low, high, to, perPass), plunges: false,
        [
            new(Run, end, true) { ReadBack = true },
            new(Axis.Z, bench.Safe(), false),
            new(Run, start, false),
        ]);
        bench.Up();
    }

    // Past both ends: from outside the metal to outside the metal; where more stands outside than the cutter takes in one width, in rows from there inwards.
    internal void PastTheEnds(string word, double to, Typed? perPass, bool onlyEdge)
    {
        var rows = onlyEdge || depth is not null ? [] : Rows(word, to);
        for (var i = rows.Count - 1; i >= 0; i--)
        {
            Along(word, to, perPass, bench.Show(rows[i]));
        }

        Along(word, to, perPass, off);
        bench.Up();
    }

    private void Along(string word, double to, Typed? perPass, Working at)
    {
        var r = bench.Radius;
        var (low, high) = Run1(at, to);
        var (before, after) = (Low(word, at, low - r - bench.Clear, to), High(word, at, high + r + bench.Clear, to));
        var (start, end) = Forward ? (before, after) : (after, before);
        bench.Up();
        bench.Free(Run, start);
        bench.Free(Side, at);

        // From a corner of what is cut away it goes down in the metal.
        var plunges = Stops(at, Forward ? Ends.Least : Ends.Most, Forward ? -1 : 1, to) is not null;
        bench.Machine.Passes(Depths(at, low, high, to, perPass), plunges,
        [
            new(Run, end, true),
            new(Axis.Z, bench.Safe(), false),
            new(Run, start, false),
        ]);
    }

    private IReadOnlyList<Working> Depths(Working at, double low, double high, double to, Typed? perPass) =>
        depth is null ? bench.Depths(Top(at, low, high, to), to, perPass, "the height") : [depth];

    private (double Least, double Most) Ends => (Math.Min(Along(edge.From.X, edge.From.Y), Along(edge.To.X, edge.To.Y)), Math.Max(Along(edge.From.X, edge.From.Y), Along(edge.To.X, edge.To.Y)));

    private (double Low, double High) Run1(Working at, double to)
    {
        var (least, most) = Ends;
        var band = bench.Metal.Extent(alongX, at.Result - bench.Radius, at.Result + bench.Radius, to, theta);
        return (Math.Min(least, band?.Low ?? least), Math.Max(most, band?.High ?? most));
    }

    private Working Low(string word, Working at, double clear, double to) => Stops(at, Ends.Least, -1, to) is { } corner
        ? bench.Show(bench.Reading(Run, $"{Run} at the {(alongX ? "left" : "near")} corner of {word}", "its corner + cutter/2", bench.Figures.L(Ends.Least) + " + " + bench.Figures.L(2 * bench.Radius) + "/2", corner, Toward.Plus, bench.CutterInput))
        : bench.Clearing(Run, $"clear of the {word}", clear, up: false);

    private Working High(string word, Working at, double clear, double to) => Stops(at, Ends.Most, 1, to) is { } corner
        ? bench.Show(bench.Reading(Run, $"{Run} at the {(alongX ? "right" : "far")} corner of {word}", "its corner - cutter/2", bench.Figures.L(Ends.Most) + " - " + bench.Figures.L(2 * bench.Radius) + "/2", corner, Toward.Minus, bench.CutterInput))
        : bench.Clearing(Run, $"clear of the {word}", clear, up: true);

    // Where an edge of what is cut away ends at a wall of the part: the cutter stops half its width before it.
    private double? Stops(Working at, double corner, int way, double to)
    {
        if (!f.Feature.IsCut)
        {
            return null;
        }

        for (var k = -8; k <= 8; k++)
        {
            double beyond = corner + (way * 0.5), side = at.Result + (bench.Radius * 0.98 * k / 8);
            if (Outside(side) && bench.DrawnTopAt(alongX ? new(beyond, side) : new(side, beyond), theta) > to + 0.02)
            {
                return corner - (way * bench.Radius);
            }
        }

        return null;
    }

    // Whether a place across the run lies off the edge, not behind it.
    private bool Outside(double side)
    {
        var line = alongX ? (edge.From.Y + edge.To.Y) / 2 : (edge.From.X + edge.To.X) / 2;
        return plus ? side > line + 0.05 : side < line - 0.05;
    }

    // Rows off the edge, the nearest first, as far as metal stands above the height and the part has none there.
    private List<Working> Rows(string word, double to)
    {
        double d = 2 * bench.Radius, over = bench.Job.Unit == LengthUnit.Inch ? 0.04 * LengthUnit.Inch.MillimetresPerUnit() : 1;
        var (least, most) = Ends;
        List<Working> rows = [];
        if (bench.Metal.Extent(!alongX, least, most, to, theta) is not { } stands)
        {
            return rows;
        }

        var outermost = plus ? stands.High - off.Result - bench.Radius : off.Result - bench.Radius - stands.Low;
        var deep = outermost + over;
        var n = outermost > 1e-3 ? (int)Math.Ceiling((deep / (d * Share)) - 1e-9) : 0;
        for (var i = 1; i <= n; i++)
        {
            var by = deep * i / n;
            var row = bench.Reading(Side, $"{Side} of row {Bench.Bare(i)} off the {word}", $"{Side} along the edge {(plus ? "+" : "-")} row x spacing", $"{bench.Figures.L(off.Result)} {(plus ? "+" : "-")} {Bench.Bare(i)} x {bench.Figures.L(deep / n)}", plus ? off.Result + by : off.Result - by, plus ? Toward.Plus : Toward.Minus, bench.CutterInput);
            var (low, high) = Run1(row, to);
            if (Drawn(row, low, high, to))
            {
                break;
            }

            if (Top(row, low, high, to) > to + 1e-6)
            {
                rows.Add(row);
            }
        }

        return rows;
    }

    // Whether the part as drawn stands above the height in a row's way.
    private bool Drawn(Working at, double low, double high, double to) => Net(at, low, high).Any(p => bench.DrawnTopAt(p, theta) > to + 0.02);

    private double Along(double x, double y) => alongX ? x : y;

    // The highest metal in the band the cutter goes through.
    private double Top(Working at, double low, double high, double to) => Net(at, low, high).Select(p => bench.Metal.TopAt(p, theta) ?? to).Append(to).Max();

    private IEnumerable<Point2> Net(Working at, double low, double high)
    {
        for (var i = 0; i <= 40; i++)
        {
            for (var k = 0; k <= 8; k++)
            {
                var along = low + ((high - low) * i / 40);
                var side = at.Result + (bench.Radius * 0.999 * ((2 * k / 8.0) - 1));
                yield return alongX ? new(along, side) : new(side, along);
            }
        }
    }
}
