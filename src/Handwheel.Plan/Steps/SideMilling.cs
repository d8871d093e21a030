using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// Edges by the flank of the cutter. On the rotary an edge is turned until it lies along X; metal lies to the left of the feed.
internal sealed class SideMilling(Bench bench)
{
    internal void Plan(SideStep step, double allow, Typed? perPass)
    {
        if (bench.Plan.Find(step.Feature) is not { } f)
        {
            bench.Cannot(step, $"'{step.Feature}' does not stand upright in this holding.", "Hold the work so that its sides are upright.");
            return;
        }

        bench.Offs.Clear();
        bench.OffsOf = step;
        var any = false;
        // The far edge first: what is left standing then holds the near one.
        foreach (var word in step.Edges.OrderBy(w => w.StartsWith("near", StringComparison.Ordinal) ? 1 : 0))
        {
            foreach (var edge in f.Outlines.SelectMany(o => Edges(o, word)))
            {
                any = true;
                Side(step, f, edge, word == "all" ? Said(edge) : word, allow, perPass);
            }
        }

        if (!any)
        {
            bench.Cannot(step, $"'{step.Feature}' has no edge called '{string.Join(", ", step.Edges)}' in this holding.", "Edges are near side, far side, left end, right end, all sides, near flank, far flank, or 1-2 from corner to corner.");
        }
    }

    // The straight edges a word means, as the work lies now.
    internal static IEnumerable<PlanEdge> Edges(PlanOutline outline, string word)
    {
        var straight = outline.Edges.Where(e => !e.IsArc).ToList();
        bool Faces(PlanEdge e, double x, double y) => (e.Normal.X * x) + (e.Normal.Y * y) > Math.Sqrt(0.5) + 1e-9;
        return word switch
        {
            "near flank" => straight.Where(e => e.Name == "flank" && Aside(outline, e) < 0),
            "far flank" => straight.Where(e => e.Name == "flank" && Aside(outline, e) > 0),
            "near" or "near side" => straight.Where(e => Faces(e, 0, -1)),
            "far" or "far side" => straight.Where(e => Faces(e, 0, 1)),
            "left" or "left end" => straight.Where(e => Faces(e, -1, 0)),
            "right" or "right end" => straight.Where(e => Faces(e, 1, 0)),
            "all" => straight.OrderBy(e => Plane.Positive(Plane.Angle(e.Normal) - (Math.PI / 2))),
            _ => straight.Where(e => e.Name == word),
        };
    }

    // An edge in words, by the side it faces.
    internal static string Said(PlanEdge edge) => Math.Abs(edge.Normal.Y) >= Math.Abs(edge.Normal.X)
        ? edge.Normal.Y > 0 ? "far side" : "near side"
        : edge.Normal.X > 0 ? "right end" : "left end";

    // Which of two flanks lies further towards far.
    private static double Aside(PlanOutline outline, PlanEdge edge)
    {
        var other = outline.Edges.FirstOrDefault(e => e.Name == "flank" && e != edge);
        double y(PlanEdge e) => e.From.Y + e.To.Y;
        double x(PlanEdge e) => e.From.X + e.To.X;
        return Math.Abs(y(edge) - y(other)) > 1e-9 ? y(edge) - y(other) : x(other) - x(edge);
    }

    // Theta (radians) that turns an edge along X, its metal away from the side it faces; null where nothing turns and it does not lie along a travel.
    internal double? Turn(PlanEdge edge)
    {
        var n = edge.Normal;
        if (bench.Machine.Setup.Rotary is { Lies: false })
        {
            return Plane.Near((n.Y >= -1e-9 ? Math.PI / 2 : -Math.PI / 2) - Plane.Angle(n));
        }

        return Math.Abs(n.X) < 1e-9 || Math.Abs(n.Y) < 1e-9 ? 0 : null;
    }

    // One edge run along with a cutter whose place beside it and depth are worked out by the caller.
    internal void Edge(Step step, PlanFeature f, PlanEdge edge, string word, (Func<PlanEdge, string, bool, bool, Working> Off, Working Depth) cone) =>
        Run(step, f, edge, word, cone.Off, cone.Depth.Result, null, cone.Depth);

    private void Side(SideStep step, PlanFeature f, PlanEdge edge, string word, double allow, Typed? perPass) =>
        Run(step, f, edge, word, (lies, name, alongX, plus) => Off(f, lies, name, alongX, plus, allow), bench.Plan.Height(step.To.Value, f.Feature.Name), perPass, null, onlyEdge: allow <= 0 && step.Allow is { Value: > 0 });

    // Beside what is cut away the metal lies outside its outline.
    private static PlanEdge FromMetal(PlanFeature f, PlanEdge edge) => f.Feature.IsCut ? edge with { From = edge.To, To = edge.From } : edge;

    private void Run(Step step, PlanFeature f, PlanEdge drawn, string word, Func<PlanEdge, string, bool, bool, Working> beside, double to, Typed? perPass, Working? depth, bool onlyEdge = false)
    {
        var edge = FromMetal(f, drawn);
        if (Turn(edge) is not { } turn)
        {
            bench.Cannot(step, $"The {word} of '{f.Feature.Name}' lies along no travel of the machine.", "Turn the work, or hold it on the rotary.");
            return;
        }

        var theta = bench.Machine.Setup.Rotary is not { Lies: false } ? null : bench.Show(Laid(bench, f, edge, word, turn * Plane.ToDegrees));
        var as1 = theta is null ? 0 : theta.Result / Plane.ToDegrees;
        var lies = edge.Mapped(p => Plane.Turned(p, new(0, 0), as1), mirrored: false);
        var n = lies.Normal;
        var alongX = Math.Abs(n.Y) > 0.5;
        var plus = alongX ? n.Y > 0 : n.X > 0;
        var off = beside(lies, word, alongX, plus);
        if (theta is not null && Math.Abs(bench.Machine.At.T - new Crank(Axis.T, theta, false).From(bench.Machine.At.T)) > 1e-9)
        {
            bench.Up();
            bench.Free(Axis.T, theta);
        }

        var run = new EdgeRun(bench, f, lies, alongX, plus, theta?.Result ?? 0, off, depth);
        if (edge.Name == "flank")
        {
            run.BetweenRounds(word, to, perPass);
        }
        else
        {
            run.PastTheEnds(word, to, perPass, onlyEdge);
        }
    }

    // How the work is turned for an edge to lie along X: a flank of two rounds by their sum, any other by the angle of its normal.
    internal static Working Laid(Bench bench, PlanFeature f, PlanEdge edge, string word, double degrees)
    {
        var arcs = edge.Name == "flank" ? TangentArcs.Of(f.Outline, null, bench.Figures) : null;
        var name = $"theta that lays the {word} along X";
        return arcs?.Lay(degrees) is { } lay
            ? bench.Angle(name, "the flank's slope to the line of centres, asin((R - r)/L)", lay.Sum, lay.Degrees, Toward.Nearest)
            : bench.Angle(name, "90 deg - the angle of its normal", Figures.Deg(degrees), degrees, Toward.Nearest);
    }

    // edge +- (half the cutter + allowance), metal left.
    private Working Off(PlanFeature f, PlanEdge lies, string word, bool alongX, bool plus, double allow)
    {
        var at = alongX ? (lies.From.Y + lies.To.Y) / 2 : (lies.From.X + lies.To.X) / 2;
        var sign = plus ? "+" : "-";
        var by = bench.Radius + allow;
        var beyond = Math.Abs(bench.Beyond) > 1e-9 ? $" {(bench.Beyond < 0 ? "-" : "+")} {bench.Figures.L(Math.Abs(bench.Beyond))}" : string.Empty;
        bench.Offs.Add(new(word, alongX ? Axis.Y : Axis.X, plus, plus ? at + bench.Radius : at - bench.Radius));
        return bench.Show(bench.Reading(
            alongX ? Axis.Y : Axis.X,
            $"{(alongX ? "Y" : "X")} along the {word} of {f.Feature.Name}{(lies.Name == "flank" ? ", from its middle as it lies" : string.Empty)}",
            $"the edge {sign} {bench.Cutter!.Name}/2{(allow > 0 ? $" {sign} allowance" : string.Empty)}{(beyond.Length > 0 ? ", and what the face opposite stands off" : string.Empty)}",
            $"{bench.Figures.L(at)} {sign} {bench.Figures.L(2 * bench.Radius)}/2{(allow > 0 ? $" {sign} {bench.Figures.L(allow)}" : string.Empty)}{beyond}",
            (plus ? at + by : at - by) + bench.Beyond,
            bench.Leaving(plus),
            new WorkingInput($"{word} of {f.Feature.Name}", at, bench.Figures.L(at), InputKind.Aimed, $"the middle of the limits of {f.Feature.Name}", f.Feature.Where, null),
            bench.CutterInput));
    }
}
