using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// Bites: the cutter plunged at each place; on the rotary each place is turned to X plus, one after the other, the work turning clockwise.
internal sealed class Biting(Bench bench)
{
    internal void Plan(BitesStep step)
    {
        if (bench.Plan.Find(step.Feature) is not { } f)
        {
            bench.Cannot(step, $"'{step.Feature}' does not stand upright in this holding.", "Hold the work so that it opens upwards.");
            return;
        }

        var to = step.To is { } typed ? bench.Plan.Height(typed.Value, f.Feature.Name) : step.Through ? f.Low - bench.Past : f.Low;
        var depths = bench.Depths(f.High, to, step.PerPass, "the depth");
        var turning = bench.Machine.Setup.Rotary is { Lies: false } && f.Centres.All(c => Plane.Distance(c, new(0, 0)) > 1e-6);
        var ordered = turning ? f.Centres.OrderBy(c => Math.Round(Plane.Positive(Plane.Angle(c)), 9)).ToList() : [.. f.Centres];
        for (var i = 0; i < ordered.Count; i++)
        {
            bench.Up();
            var c = ordered[i];
            if (turning)
            {
                var degrees = Plane.Positive(Plane.Angle(c)) * Plane.ToDegrees;
                var away = Plane.Distance(c, new(0, 0));
                bench.Free(Axis.T, bench.Show(bench.Angle($"theta of place {Bench.Bare(i + 1)}", "- the angle of the place", "-" + Figures.Deg(degrees), -degrees, Toward.Nearest)));
                bench.Free(Axis.X, bench.Show(bench.Reading(Axis.X, $"X of {f.Feature.Name}", "radius of its circle", bench.Figures.L(away), away, Toward.Nearest)));
                bench.Free(Axis.Y, bench.Reading(Axis.Y, "Y of the rotary's centre", "0", "0", 0, Toward.Nearest));
            }
            else
            {
                bench.Free(Axis.X, bench.Show(bench.Reading(Axis.X, $"X of place {Bench.Bare(i + 1)}", "as drawn", bench.Figures.L(c.X), c.X, Toward.Nearest)));
                bench.Free(Axis.Y, bench.Show(bench.Reading(Axis.Y, $"Y of place {Bench.Bare(i + 1)}", "as drawn", bench.Figures.L(c.Y), c.Y, Toward.Nearest)));
            }

            bench.Machine.Passes(depths, plunges: true, []);
        }

        bench.Up();
    }
}
