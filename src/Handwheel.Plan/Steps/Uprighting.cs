using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// In the indexer: turns the work so that what a step names opens upwards.
internal sealed class Uprighting(Bench bench)
{
    internal void Turn(Step step)
    {
        if (bench.Machine.Setup.Rotary is not { Lies: true } axis || Named(step) is not { } name || bench.Drawing.Find(name) is not { } f || bench.Plan.Of(f) is not null)
        {
            return;
        }

        var way = bench.AtZero.Placement.Direction(AimedDrawing.AxisOf(f.View));
        if (Math.Abs(way.X) > 1e-9)
        {
            return;
        }

        // The end further from the axis is the mouth.
        Point3 At(double depth) => bench.AtZero.Placement.Apply(FeatureView.Place(f.View, f.Centre, depth));
        double Along(double depth) => ((At(depth).Y - axis.Y) * way.Y) + ((At(depth).Z - axis.Z) * way.Z);
        double low = Along(f.From.Middle), high = Along(f.To.Middle);
        var sign = Math.Abs(low) > Math.Abs(high) + 1e-6 ? Math.Sign(low) : Math.Abs(high) > Math.Abs(low) + 1e-6 ? Math.Sign(high) : f.LooksUp ? 1 : -1;
        var theta = 90 - (Math.Atan2(sign * way.Z, sign * way.Y) * Setting.Plane.ToDegrees);
        bench.Index(bench.Show(bench.Angle($"angle that brings {f.Name} up", "90 deg - the angle of its axis", Workings.Figures.Deg(theta), theta, Toward.Nearest)));
    }

    private static string? Named(Step step) => step switch
    {
        HoleStep s => s.Features[0],
        FaceStep s => s.Feature,
        SideStep s => s.Feature,
        SlotStep s => s.Feature,
        PocketStep s => s.Feature,
        BitesStep s => s.Feature,
        ChamferStep s => s.Feature,
        _ => null,
    };
}
