using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// Hollows: a round one about the rotary's axis in rings from its middle, the work turning counterclockwise; a straight-sided one in loops.
internal sealed class PocketMilling(Bench bench)
{
    // The innermost loop's half width, in radii of the cutter: what is wider leaves a strip in its middle.
    private const double Innermost = 0.9;

    internal void Plan(PocketStep step, double allow, Typed? perPass, bool onlyWalls = false)
    {
        if (bench.Plan.Find(step.Feature) is not { } f)
        {
            bench.Cannot(step, $"'{step.Feature}' does not stand upright in this holding.", "Hold the work so that it opens upwards.");
            return;
        }

        bench.Offs.Clear();
        bench.OffsOf = step;
        var to = step.To is { } typed ? bench.Plan.Height(typed.Value, f.Feature.Name) : f.Low;
        if (AimedDrawing.RadiusOf(f.Feature) is { } radius)
        {
            if (new RoundMilling(bench).Centred(step, f))
            {
                bench.Offs.Add(new($"round wall of {f.Feature.Name}", Axis.X, false, radius - bench.Radius));
                Ring(step, f, radius, to, allow, perPass);
            }
        }
        else if (f.Feature.Shape is BlockShape)
        {
            if (!f.Outline.Edges.All(e => e.IsArc || Math.Abs(e.From.X - e.To.X) < 1e-6 || Math.Abs(e.From.Y - e.To.Y) < 1e-6))
            {
                bench.Cannot(step, $"'{f.Feature.Name}' does not lie along the travels.", "Turn the work until its sides lie along the travels.");
                return;
            }

            foreach (var place in f.Each.Where(place => !new OpenMilling(bench).Plan(step, place, to, allow, perPass, onlyWalls)))
            {
                Straight(step, place, to, allow, perPass);
            }
        }
        else
        {
            bench.Cannot(step, $"A pocket of the shape of '{step.Feature}' cannot be worked out.", "Write its moves out.");
        }
    }

    // R - r inside, metal left.
    internal void Ring(Step step, PlanFeature f, double radius, double to, double allow, Typed? perPass)
    {
        var most = radius - bench.Radius - allow;
        if (most < -1e-9)
        {
            bench.Cannot(step, $"{bench.Cutter!.Name} is wider than '{f.Feature.Name}'.", "Take a smaller cutter.");
            return;
        }

        var figures = bench.Figures;
        var last = bench.Show(bench.Reading(
            Axis.X,
            $"X inside {f.Feature.Name}",
            $"{f.Feature.Name}/2 - {bench.Cutter!.Name}/2{(allow > 0 ? " - allowance" : string.Empty)}",
            $"{figures.L(2 * radius)}/2 - {figures.L(2 * bench.Radius)}/2{(allow > 0 ? " - " + figures.L(allow) : string.Empty)}",
            Math.Max(0, most),
            Toward.Minus,
            new WorkingInput($"{f.Feature.Name} across", 2 * radius, figures.L(2 * radius), InputKind.Aimed, $"the middle of the limits of {f.Feature.Name}", f.Feature.Where, null),
            bench.CutterInput));
        var top = Math.Max(f.High, Top(radius, to));
        var zero = bench.Reading(Axis.X, "X of the rotary's centre", "0", "0", 0, Toward.Nearest);
        bench.Straighten();
        bench.Up();
        bench.Free(Axis.X, zero);
        bench.Free(Axis.Y, bench.Reading(Axis.Y, "Y of the rotary's centre", "0", "0", 0, Toward.Nearest));
        List<Crank> body = [];
        foreach (var x in Rings(last))
        {
            body.Add(new(Axis.X, x, true) { ReadBack = ReferenceEquals(x, last) && allow <= 0 });
            body.Add(new(Axis.T, bench.AngleZero, true) { WholeTurn = true, Counterclockwise = true });
        }

        body.Add(new(Axis.X, zero, true));
        bench.Machine.Passes(bench.Depths(top, to, perPass, "the floor"), plunges: true, body);
        bench.Up();
    }

    private List<Working> Rings(Working last)
    {
        List<Working> rings = [];
        var by = 1.6 * bench.Radius;
        for (var x = by; x < last.Result - 1e-6; x += by)
        {
            rings.Add(bench.Reading(Axis.X, "X of a ring within", "ring x 0.8 of the cutter", bench.Figures.L(x), x, Toward.Minus));
        }

        if (last.Result > 1e-9)
        {
            rings.Add(last);
        }

        return rings;
    }

    private double Top(double radius, double to)
    {
        var top = to;
        for (var i = 0; i < 24; i++)
        {
            for (var k = 0; k <= 4; k++)
            {
                top = Math.Max(top, bench.Metal.TopAt(Plane.Polar(new(0, 0), (radius - 0.05) * k / 4, i * Math.PI / 12), 0) ?? to);
            }
        }

        return top;
    }

    // Loops round the inside, counterclockwise seen from above: metal to the left of the feed is outside the loop when gone round clockwise.
    private void Straight(Step step, PlanFeature f, double to, double allow, Typed? perPass)
    {
        var (least, most) = f.Outline.Extent();
        double halfX = ((most.X - least.X) / 2) - bench.Radius - allow, halfY = ((most.Y - least.Y) / 2) - bench.Radius - allow;
        if (halfX < -1e-9 || halfY < -1e-9)
        {
            bench.Cannot(step, $"{bench.Cutter!.Name} is wider than '{f.Feature.Name}'.", "Take a smaller cutter.");
            return;
        }

        var r = bench.Radius;
        bench.Offs.AddRange([
            new($"left wall of {f.Feature.Name}", Axis.X, true, least.X + r), new($"right wall of {f.Feature.Name}", Axis.X, false, most.X - r),
            new($"near wall of {f.Feature.Name}", Axis.Y, true, least.Y + r), new($"far wall of {f.Feature.Name}", Axis.Y, false, most.Y - r)]);
        var (cx, cy) = ((least.X + most.X) / 2, (least.Y + most.Y) / 2);
        List<Crank> body = [];
        Working? before = null;
        // The innermost loop must leave nothing in its middle; from loop to loop at most 0.8 of the cutter, so that no cusp stays in a corner.
        var narrow = Math.Min(halfX, halfY);
        var loops = 1 + (int)Math.Ceiling(Math.Max(0, (narrow - (Innermost * r)) / (1.6 * r)) - 1e-9);
        var apart = loops > 1 ? (narrow - (Innermost * r)) / (loops - 1) : 0;
        Working X(double at, Toward toward) => bench.Reading(Axis.X, "X along an end wall", "middle +- (long/2 - cutter/2)", $"{bench.Figures.L(cx)} {(at < cx ? "-" : "+")} {bench.Figures.L(Math.Abs(at - cx))}", at, toward, bench.CutterInput);
        Working Y(double at, Toward toward) => bench.Reading(Axis.Y, "Y along a side wall", "middle +- (wide/2 - cutter/2)", $"{bench.Figures.L(cy)} {(at < cy ? "-" : "+")} {bench.Figures.L(Math.Abs(at - cy))}", at, toward, bench.CutterInput);
        for (var i = 1; i <= loops; i++)
        {
            double dx = halfX - (apart * (loops - i)), dy = halfY - (apart * (loops - i));
            Working left = X(cx - dx, Toward.Plus), right = X(cx + dx, Toward.Minus), near = Y(cy - dy, Toward.Plus), far = Y(cy + dy, Toward.Minus);
            // Clockwise round the inside: along the far wall towards plus, down the right, back along the near, up the left.
            body.AddRange([new(Axis.Y, far, true), new(Axis.X, right, true), new(Axis.Y, near, true), new(Axis.X, left, true), new(Axis.Y, far, true)]);
            if (before is not null)
            {
                // Closed where the loop was entered: else a cusp stays in the corner.
                body.Add(new(Axis.X, before, true));
                body.Add(new(Axis.X, left, true));
            }

            before = left;
        }

        Working startX = X(cx - halfX + (apart * (loops - 1)), Toward.Plus), startY = bench.Reading(Axis.Y, "Y of the middle", "middle", bench.Figures.L(cy), cy, Toward.Nearest);
        body.AddRange([new(Axis.Z, bench.Safe(), false), new(Axis.X, startX, false), new(Axis.Y, startY, false)]);
        bench.Straighten();
        bench.Up();
        bench.Free(Axis.X, startX);
        bench.Free(Axis.Y, startY);
        bench.Machine.Passes(bench.Depths(f.High, to, perPass, "the floor"), plunges: true, body);
        bench.Up();
    }
}
