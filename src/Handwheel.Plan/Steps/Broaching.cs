using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Quantities;
using Handwheel.Trade.Geometry;

namespace Handwheel.Plan.Steps;

// A prism pushed down by the quill in the locked spindle: once, or once for each pair of flats, the rotary indexed between.
internal sealed class Broaching(Bench bench, Toucher toucher)
{
    // Flats closer than this are the same flats, millimetres: a broach is made a little over its nominal.
    private const double Near = 0.25;

    internal void Plan(BroachStep step)
    {
        if (bench.Plan.Find(step.Feature) is not { Feature.Shape: PolygonShape shape } f)
        {
            bench.Cannot(step, $"'{step.Feature}' is no square, hexagon or other polygon that opens upwards in this holding.", "Name one, and hold the work so that it opens upwards.");
            return;
        }

        if (step.Cutter is not { } name || !bench.Shop.Cutters.TryGetValue(name, out var broach))
        {
            bench.Cannot(step, "This step has no broach of the shop.", "Name one after 'with'.");
            return;
        }

        if (Pushes(broach, shape) is not { } pushes)
        {
            bench.Cannot(step, $"{broach.Name} does not make the flats of '{f.Feature.Name}': {bench.Figures.LU(shape.AcrossFlats.Middle)} across {Bench.Bare(shape.Sides)} flats.", "Take a broach of as many sides, or a rectangle as wide across as the flats and as a side is long.");
            return;
        }

        if (pushes.Count > 1 && (bench.Machine.Setup.Rotary is not { Lies: false } || !new RoundMilling(bench).Centred(step, f)))
        {
            if (bench.Machine.Setup.Rotary is not { Lies: false })
            {
                bench.Cannot(step, $"{broach.Name} must be pushed {Bench.Bare(pushes.Count)} times, the work turned between; nothing turns it here.", "Hold the work on the rotary, the hole on its centre.");
            }

            return;
        }

        var normal = f.Outline.Edges.Where(e => !e.IsArc).Select(e => Plane.Angle(e.Normal) * Plane.ToDegrees).First();
        if (toucher.Push(step, broach, Least(normal + pushes.Off, broach.OtherSide > 0 ? 180 : 360.0 / broach.Sides)))
        {
            Push(step, f, shape, broach, pushes);
        }
    }

    // How often it is pushed, how far the work is turned between, and by how much its side's normal is off the flat's; degrees. Null where it does not fit.
    private static (int Count, double By, double Off)? Pushes(Cutter broach, PolygonShape shape)
    {
        var flats = shape.AcrossFlats.Middle;
        if (broach.OtherSide <= 0)
        {
            return shape.Sides % broach.Sides == 0 && Math.Abs(broach.TrueAcross - flats) < Near ? (shape.Sides / broach.Sides, 360.0 / shape.Sides, 0) : null;
        }

        var side = RegularPolygon.Side(shape.Sides, flats);
        if (shape.Sides % 2 != 0)
        {
            return null;
        }

        var across = Math.Abs(broach.TrueAcross - flats) < Near && broach.OtherSide < side + Near;
        var over = Math.Abs(broach.OtherSide - flats) < Near && broach.TrueAcross < side + Near;
        return across ? (shape.Sides / 2, 360.0 / shape.Sides, 0) : over ? (shape.Sides / 2, 360.0 / shape.Sides, 90) : null;
    }

    private static double Least(double degrees, double share)
    {
        var rest = degrees - (share * Math.Floor((degrees / share) + 1e-9));
        return Math.Abs(rest) < 1e-9 ? 0 : rest;
    }

    private void Push(BroachStep step, PlanFeature f, PolygonShape shape, Cutter broach, (int Count, double By, double Off) pushes)
    {
        var to = step.To is { } typed ? bench.Plan.Height(typed.Value, f.Feature.Name) : step.Through || f.Feature.Through ? f.Low - bench.Past : f.Low;
        var name = f.Feature.Name;
        var x = bench.Show(bench.Reading(Axis.X, $"X of {name}", "as drawn, at the middle of its limits", bench.Figures.L(f.Centre.X), f.Centre.X, Toward.Nearest));
        var y = bench.Show(bench.Reading(Axis.Y, $"Y of {name}", "as drawn, at the middle of its limits", bench.Figures.L(f.Centre.Y), f.Centre.Y, Toward.Nearest));
        var z = bench.Show(bench.Reading(Axis.Z, $"Z of {broach.Name} in {name}", "the floor", bench.Figures.L(to), to, Toward.Plus, bench.CutterInput));
        bench.Up();
        bench.Free(Axis.X, x);
        bench.Free(Axis.Y, y);
        for (var i = 0; i < pushes.Count; i++)
        {
            if (i > 0)
            {
                bench.Up();
                var theta = -i * pushes.By;
                bench.Free(Axis.T, bench.Show(bench.Angle($"theta of push {Bench.Bare(i + 1)} of {Bench.Bare(pushes.Count)}", "- push x 360 deg / flats", $"-{Bench.Bare(i)} x 360 / {Bench.Bare(shape.Sides)}", theta, Toward.Nearest)));
            }

            bench.Machine.Go(new(Axis.Z, z, true) { Remark = "spindle stopped and locked: push with the quill, oil; back it out to clear the chips" });
            bench.Up();
        }

        bench.Straighten();
    }
}
