using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// Slots: straight along a travel, always towards plus; or curved about the rotary's axis, the work turning clockwise. Wider than the cutter by its two walls.
internal sealed class SlotMilling(Bench bench)
{
    internal void Plan(SlotStep step, double allow)
    {
        if (bench.Plan.Find(step.Feature) is not { } f)
        {
            bench.Cannot(step, $"'{step.Feature}' does not stand upright in this holding.", "Hold the work so that it opens upwards.");
            return;
        }

        bench.Offs.Clear();
        bench.OffsOf = step;
        var to = step.To is { } typed ? bench.Plan.Height(typed.Value, f.Feature.Name) : step.Through ? f.Low - bench.Past : f.Low;
        switch (f.Feature.Shape)
        {
            case SlotShape slot:
                foreach (var place in f.Each)
                {
                    Straight(step, place, slot.Wide.Middle, to, allow);
                }

                break;
            case OutlineShape when Curved(f.Outline) is { } curve:
                Round(step, f, curve, to);
                break;
            case BlockShape when f.Feature.IsCut:
                bench.Cannot(step, $"'{f.Feature.Name}' is drawn as a block that is cut away, and a slot has round ends.", $"Write 'pocket {f.Feature.Name} ...': it clears a block that is cut away, out past the sides that are open. Or draw a slot.");
                break;
            default:
                bench.Cannot(step, $"'{f.Feature.Name}' is no slot of one width.", "Name a slot, straight or curved about the rotary's centre; or write its moves out.");
                break;
        }
    }

    private void Straight(SlotStep step, PlanFeature f, double wide, double to, double allow)
    {
        var ends = f.Outline.Edges.Where(e => e.IsArc).Select(e => e.Centre).ToList();
        if (ends.Count < 2 || bench.Cutter!.TrueAcross > wide + 0.2)
        {
            bench.Cannot(step, $"{bench.Cutter!.Name} does not fit the slot '{f.Feature.Name}'.", "Take a cutter no wider than the slot.");
            return;
        }

        var angle = Plane.Near(Plane.Angle(ends[0], ends[1]));
        var alongX = Math.Abs(Math.Sin(angle)) < 1e-9;
        if (!alongX && Math.Abs(Math.Cos(angle)) > 1e-9)
        {
            bench.Cannot(step, $"The slot '{f.Feature.Name}' lies along no travel of the machine.", "Turn the work until it does.");
            return;
        }

        double Along(Point2 p) => alongX ? p.X : p.Y;
        double middle = alongX ? ends[0].Y : ends[0].X, a = Math.Min(Along(ends[0]), Along(ends[1])), b = Math.Max(Along(ends[0]), Along(ends[1]));
        var spare = Math.Max(0, ((wide - bench.Cutter.TrueAcross) / 2) - allow);
        var (run1, side) = alongX ? (Axis.X, Axis.Y) : (Axis.Y, Axis.X);
        // Wider than its cutter: its middle first, then round its walls and ends.
        var loops = spare > Math.Max(0.03, bench.Work.Facts(side).Step);
        var play = (wide - bench.Cutter.TrueAcross) / 2;
        if (play > allow)
        {
            bench.Offs.AddRange([new($"first wall of {f.Feature.Name}", side, true, middle - play), new($"second wall of {f.Feature.Name}", side, false, middle + play)]);
        }

        Working first = bench.Show(End(run1, f, "first", a - spare, a - (wide / 2))), last = bench.Show(End(run1, f, "last", b + spare, b + (wide / 2)));
        var line = bench.Show(bench.Reading(side, $"{side} along the middle of {f.Feature.Name}", "its middle", bench.Figures.L(middle), middle, Toward.Nearest));
        bench.Straighten();
        bench.Up();
        bench.Free(run1, first);
        bench.Free(side, line);
        List<Crank> body = [new(run1, last, true)];
        if (loops)
        {
            body.AddRange(new SlotWalls(bench, f.Feature.Name, run1, side, line).Round(a, b, middle, spare));
        }

        body.AddRange([new(Axis.Z, bench.Safe(), false), new(run1, first, false)]);
        bench.Machine.Passes(bench.Depths(f.High, to, step.PerPass, "the floor"), plunges: true, body);
        bench.Up();
    }

    // The cutter stands half of itself within the end, and the allowance; one wider than the slot on the end's own middle.
    private Working End(Axis axis, PlanFeature f, string which, double at, double tip)
    {
        var within = at > tip;
        var (figures, left) = (bench.Figures, Math.Abs(at - tip) - bench.Radius);
        var sign = within ? "+" : "-";
        var (rule, numbers) = left < -1e-9
            ? ("the middle of its round end", figures.L(at))
            : ($"its end {sign} cutter/2{(left > 1e-9 ? $" {sign} allowance" : string.Empty)}", $"{figures.L(tip)} {sign} {figures.L(2 * bench.Radius)}/2{(left > 1e-9 ? $" {sign} {figures.L(left)}" : string.Empty)}");
        return bench.Reading(axis, $"{axis} at the {which} end of {f.Feature.Name}", rule, numbers, at, within ? Toward.Plus : Toward.Minus, bench.CutterInput);
    }

    // Two arcs about the rotary's centre, closed by an arc at each end.
    private Curve? Curved(PlanOutline outline)
    {
        if (bench.Machine.Setup.Rotary is not { Lies: false })
        {
            return null;
        }

        var arcs = outline.Edges.Where(e => e.IsArc && Plane.Distance(e.Centre, new(0, 0)) < 1e-6).OrderByDescending(e => e.Radius).ToList();
        var caps = outline.Edges.Where(e => e.IsArc && Plane.Distance(e.Centre, new(0, 0)) >= 1e-6).ToList();
        if (arcs.Count != 2 || caps.Count != 2 || outline.Edges.Count != 4)
        {
            return null;
        }

        var outer = arcs[0];
        var from = Plane.Positive(Plane.Angle(outer.From));
        var sweep = outer.Sweep;
        return sweep > 0 ? new(arcs[1].Radius, outer.Radius, from, sweep) : new(arcs[1].Radius, outer.Radius, Plane.Positive(from + sweep), -sweep);
    }

    private void Round(SlotStep step, PlanFeature f, Curve curve, double to)
    {
        var wide = curve.Outer - curve.Inner;
        var radius = (curve.Outer + curve.Inner) / 2;
        if (bench.Cutter!.TrueAcross > wide + 0.1 || wide - bench.Cutter.TrueAcross > 0.3)
        {
            bench.Cannot(step, $"{bench.Cutter.Name} does not cut the curved slot '{f.Feature.Name}' in one width.", "Take a cutter as wide as the slot.");
            return;
        }

        var name = f.Feature.Name;
        double first = curve.From * Plane.ToDegrees, last = (curve.From + curve.Sweep) * Plane.ToDegrees;
        var x = bench.Show(bench.Reading(Axis.X, $"X along the middle of {name}", "(outer radius + inner radius)/2", $"({bench.Figures.L(curve.Outer)} + {bench.Figures.L(curve.Inner)})/2", radius, Toward.Nearest));
        var start = bench.Show(bench.Angle("theta where the slot begins", "- the angle of its first end", "-" + Figures.Deg(first), -first, Toward.Minus));
        var end = bench.Show(bench.Angle("theta where the slot ends", "- the angle of its last end", "-" + Figures.Deg(last % 360), -last, Toward.Plus));
        bench.Up();
        bench.Free(Axis.T, start);
        bench.Free(Axis.X, x);
        bench.Free(Axis.Y, bench.Reading(Axis.Y, "Y of the rotary's centre", "0", "0", 0, Toward.Nearest));
        bench.Machine.Passes(bench.Depths(f.High, to, step.PerPass, "the floor"), plunges: true,
        [
            new(Axis.T, end, true),
            new(Axis.Z, bench.Safe(), false),
            new(Axis.T, start, false),
        ]);
        bench.Up();
    }

    private readonly record struct Curve(double Inner, double Outer, double From, double Sweep);
}
