using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Moves;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// One run along an edge that lies along a travel; Off is where the spindle stands beside it.
internal sealed class EdgeRun(Bench bench, PlanFeature f, PlanEdge edge, bool alongX, bool plus, double theta, Working off, Working? depth = null)
{
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
        bench.Machine.Passes(Depths(Math.Min(a, b), Math.Max(a, b), to, perPass), plunges: false,
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
        bench.Machine.Passes(Depths(low, high, to, perPass), plunges: false,
        [
            new(Run, end, true) { ReadBack = true },
            new(Axis.Z, bench.Safe(), false),
            new(Run, start, false),
        ]);
        bench.Up();
    }

    // Past both ends: from outside the metal to outside the metal.
    internal void PastTheEnds(string word, double to, Typed? perPass)
    {
        var r = bench.Radius;
        var (least, most) = (Math.Min(Along(edge.From.X, edge.From.Y), Along(edge.To.X, edge.To.Y)), Math.Max(Along(edge.From.X, edge.From.Y), Along(edge.To.X, edge.To.Y)));
        var band = bench.Metal.Extent(alongX, off.Result - r, off.Result + r, to, theta);
        double low = Math.Min(least, band?.Low ?? least), high = Math.Max(most, band?.High ?? most);
        var before = bench.Clearing(Run, $"clear of the {word}", low - r - bench.Clear, up: false);
        var after = bench.Clearing(Run, $"clear of the {word}", high + r + bench.Clear, up: true);
        var (start, end) = Forward ? (before, after) : (after, before);
        bench.Up();
        bench.Free(Run, start);
        bench.Free(Side, off);
        bench.Machine.Passes(Depths(low, high, to, perPass), plunges: false,
        [
            new(Run, end, true),
            new(Axis.Z, bench.Safe(), false),
            new(Run, start, false),
        ]);
        bench.Up();
        _ = f;
    }

    private IReadOnlyList<Working> Depths(double low, double high, double to, Typed? perPass) =>
        depth is null ? bench.Depths(Top(low, high, to), to, perPass, "the height") : [depth];

    private double Along(double x, double y) => alongX ? x : y;

    // The highest metal in the band the cutter goes through.
    private double Top(double low, double high, double to)
    {
        var top = to;
        for (var i = 0; i <= 40; i++)
        {
            for (var k = 0; k <= 8; k++)
            {
                var along = low + ((high - low) * i / 40);
                var side = off.Result + (bench.Radius * 0.999 * ((2 * k / 8.0) - 1));
                top = Math.Max(top, bench.Metal.TopAt(alongX ? new(along, side) : new(side, along), theta) ?? to);
            }
        }

        return top;
    }
}
