using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Trade.Geometry;

namespace Handwheel.Plan.Steps;

// A conical cutter along an upper edge: its flank, a little above its tip, runs along where the chamfer ends below. Straight edges along a travel, rounds by the rotary, a hole's rim by going down in its middle.
internal sealed class ChamferMilling(Bench bench)
{
    internal void Plan(ChamferStep step)
    {
        if (bench.Plan.Find(step.Feature) is not { } f)
        {
            bench.Cannot(step, $"'{step.Feature}' does not stand upright in this holding.", "Hold the work so that the edge lies level and looks up.");
            return;
        }

        var cone = Cone.Of(bench.Cutter!);
        var deep = step.Wide.Value / cone.Slope;
        if (cone.High < deep - 1e-9)
        {
            bench.Cannot(step, $"The cone of {bench.Cutter!.Name} is only {bench.Figures.LU(cone.High)} high: it does not reach over a chamfer of {bench.Figures.LU(step.Wide.Value)}.", "Take a larger chamfer cutter.");
            return;
        }

        if (f.Feature.IsCut && step.EndOf is null)
        {
            Rim(step, f, cone);
            return;
        }

        // The tip hangs below the chamfer by a part of the cone left over: no corner of it leaves a ridge.
        var below = Math.Min(bench.Clear / 4, (cone.High - deep) / 2);
        var z = Depth(step, step.EndOf is { } of && bench.Plan.Find(of) is { } end ? end.High : f.High, deep, below);
        var radius = cone.Radius(below);
        if (AimedDrawing.RadiusOf(f.Feature) is { } round && step.EndOf is null)
        {
            if (new RoundMilling(bench).Centred(step, f))
            {
                new RoundMilling(bench).Whole(f, Beside(Axis.X, $"X round {f.Feature.Name}", round, radius, plus: true, f), [z], last: true);
            }
        }
        else if (step.EndOf is { } outline)
        {
            End(step, f, outline, radius, z);
        }
        else
        {
            Edges(step, f, radius, z);
        }
    }

    private Working Depth(ChamferStep step, double top, double deep, double below) => bench.Show(bench.Reading(
        Axis.Z,
        $"Z of {bench.Cutter!.Name}",
        "edge - leg / tan(angle/2) - how far the tip hangs below",
        $"{bench.Figures.L(top)} - {bench.Figures.L(deep)} - {bench.Figures.L(below)}",
        top - deep - below,
        Toward.Plus,
        bench.Work.Typed("leg", step.Wide),
        bench.CutterInput));

    // edge +- the cone's radius where the chamfer ends below.
    private Working Beside(Axis axis, string name, double at, double radius, bool plus, PlanFeature f) => bench.Show(bench.Reading(
        axis,
        name,
        $"edge {(plus ? "+" : "-")} the cone's radius there, tip/2 + below tan(angle/2)",
        $"{bench.Figures.L(at)} {(plus ? "+" : "-")} {bench.Figures.L(radius)}",
        plus ? at + radius : at - radius,
        plus ? Toward.Plus : Toward.Minus,
        new WorkingInput($"edge of {f.Feature.Name}", at, bench.Figures.L(at), InputKind.Aimed, $"the middle of the limits of {f.Feature.Name}", f.Feature.Where, null),
        bench.CutterInput));

    private void End(ChamferStep step, PlanFeature f, string outline, double radius, Working z)
    {
        var milling = new RoundMilling(bench);
        if (milling.Centred(step, f) && milling.Lying(step, f, outline, radius) is { } edge)
        {
            milling.Arc(f, outline, edge, Beside(Axis.X, $"X round {f.Feature.Name}", edge.Radius, radius, plus: true, f), [z]);
        }
    }

    // A straight edge is run past both its ends where the outline is convex all round, between its tangent points where it meets rounds.
    private void Edges(ChamferStep step, PlanFeature f, double radius, Working z)
    {
        var sides = new SideMilling(bench);
        var words = step.Edges.Count > 0 ? step.Edges : f.Feature.Shape is TangentShape or SlotShape ? ["near flank", "far flank"] : ["all"];
        var any = false;
        foreach (var word in words)
        {
            foreach (var edge in SideMilling.Edges(f.Outline, word))
            {
                any = true;
                sides.Edge(step, f, edge, word == "all" ? SideMilling.Said(edge) : word, ((lies, name, alongX, plus) =>
                    Beside(alongX ? Axis.Y : Axis.X, $"{(alongX ? "Y" : "X")} along the {name} of {f.Feature.Name}", alongX ? (lies.From.Y + lies.To.Y) / 2 : (lies.From.X + lies.To.X) / 2, radius, plus, f), z));
            }
        }

        if (!any)
        {
            bench.Cannot(step, $"'{f.Feature.Name}' has no straight edge called '{string.Join(", ", words)}' in this holding.", "Name edges as for a side; a rounded end is 'chamfer eye end of arm 0.5'.");
        }
    }

    // Down in the middle where the cone is wide enough, else round it on the rotary.
    private void Rim(ChamferStep step, PlanFeature f, Cone cone)
    {
        if (AimedDrawing.RadiusOf(f.Feature) is not { } radius)
        {
            bench.Cannot(step, $"'{f.Feature.Name}' is no round hole: its rim cannot be worked out.", "Chamfer a round hole, or write the moves out.");
            return;
        }

        if (radius + step.Wide.Value <= (bench.Cutter!.TrueAcross / 2) + 1e-9)
        {
            Down(step, f, cone, radius);
            return;
        }

        if (!new RoundMilling(bench).Centred(step, f))
        {
            return;
        }

        var top = RimAt(f, f.Centre, radius + step.Wide.Value);
        var deep = step.Wide.Value / cone.Slope;
        var below = Math.Min(bench.Clear / 4, (cone.High - deep) / 2);
        var z = Depth(step, top, deep, below);
        var x = Beside(Axis.X, $"X inside {f.Feature.Name}", radius, cone.Radius(below), plus: false, f);
        if (x.Result < 0)
        {
            bench.Cannot(step, $"{bench.Cutter.Name} is wider than '{f.Feature.Name}', and its cone not wide enough to go down in its middle.", "Take another chamfer cutter.");
            return;
        }

        var zero = bench.Reading(Axis.X, "X of the rotary's centre", "0", "0", 0, Toward.Nearest);
        bench.Straighten();
        bench.Up();
        bench.Free(Axis.X, zero);
        bench.Free(Axis.Y, bench.Reading(Axis.Y, "Y of the rotary's centre", "0", "0", 0, Toward.Nearest));
        bench.Free(Axis.Z, z);
        bench.Cut(Axis.X, x);
        bench.Machine.Go(new(Axis.T, bench.AngleZero, true) { WholeTurn = true, Counterclockwise = true });
        bench.Free(Axis.X, zero);
        bench.Up();
    }

    private void Down(ChamferStep step, PlanFeature f, Cone cone, double radius)
    {
        bench.Straighten();
        for (var i = 0; i < f.Centres.Count; i++)
        {
            var centre = f.Centres[i];
            var name = f.Centres.Count > 1 ? $"{f.Feature.Name} {Bench.Bare(i + 1)}" : f.Feature.Name;
            bench.Up();
            bench.Free(Axis.X, bench.Show(bench.Reading(Axis.X, $"X of {name}", "as drawn", bench.Figures.L(centre.X), centre.X, Toward.Nearest)));
            bench.Free(Axis.Y, bench.Show(bench.Reading(Axis.Y, $"Y of {name}", "as drawn", bench.Figures.L(centre.Y), centre.Y, Toward.Nearest)));
            var across = radius + step.Wide.Value;
            var top = RimAt(f, centre, across);
            var down = (across - (bench.Cutter!.Tip / 2)) / cone.Slope;
            bench.Cut(Axis.Z, bench.Show(bench.Reading(
                Axis.Z,
                $"Z of {bench.Cutter.Name} at {name}",
                "face - (radius + leg - tip/2) / tan(angle/2)",
                $"{bench.Figures.L(top)} - ({bench.Figures.L(radius)} + {bench.Figures.L(step.Wide.Value)} - {bench.Figures.L(bench.Cutter.Tip)}/2) / {bench.Figures.L(cone.Slope)}",
                top - down,
                Toward.Plus,
                bench.Work.Typed("leg", step.Wide),
                bench.CutterInput)));
            bench.Up();
        }
    }

    private double RimAt(PlanFeature f, Point2 centre, double radius) =>
        Enumerable.Range(0, 16).Select(i => bench.Metal.TopAt(Plane.Polar(centre, radius + 0.05, i * Math.PI / 8), 0)).OfType<double>().DefaultIfEmpty(f.High).Max();

    // Slope: tangent of half the angle. High: from the tip up to where the cone is widest.
    private readonly record struct Cone(double Slope, double Tip, double High)
    {
        internal static Cone Of(Cutter c)
        {
            var angle = c.PointAngle > 0 ? c.PointAngle : Math.PI / 2;
            return new(Math.Tan(angle / 2), c.Tip, Point.Depth(c.TrueAcross, angle, c.Tip));
        }

        internal double Radius(double above) => (Tip / 2) + (above * Slope);
    }
}
