using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// Flats about the indexer's axis, one after the other: rows across the work from its free end to the shoulder, metal to the left of the feed.
internal sealed class FlatMilling(Bench bench)
{
    internal void Plan(FlatsStep step, double allow, Typed? perPass)
    {
        if (bench.Machine.Setup.Rotary is not { Lies: true } axis)
        {
            bench.Cannot(step, "Flats are cut in the indexer.", "Write 'holding A in indexer'; a polygon that stands upright is cut by 'side head, all sides'.");
            return;
        }

        if (bench.Drawing.Find(step.Feature) is not { Shape: PolygonShape shape, IsCut: false } f || Normal(f) is not { } first)
        {
            bench.Cannot(step, $"'{step.Feature}' is no polygon about the indexer's axis.", "Draw it as 'head hexagon 17 across flats at 0, 0 from 20 to 30, seen from right', the bar's axis through 0, 0.");
            return;
        }

        var run = Run(f);
        bench.Offs.Clear();
        bench.OffsOf = step;
        bench.Offs.Add(new("flats", Axis.Z, true, axis.Z + (shape.AcrossFlats.Middle / 2)));
        var high = axis.Z + (shape.AcrossFlats.Middle / 2) + allow;
        var z = bench.Show(bench.Reading(
            Axis.Z,
            $"Z of the flats of {f.Name}",
            allow > 0 ? "axis + flats/2 + allowance" : "axis + flats/2",
            $"{bench.Figures.L(axis.Z)} + {bench.Figures.L(shape.AcrossFlats.Middle)}/2" + (allow > 0 ? $" + {bench.Figures.L(allow)}" : string.Empty),
            high,
            Toward.Plus,
            new WorkingInput($"{f.Name} across flats", shape.AcrossFlats.Middle, bench.Figures.L(shape.AcrossFlats.Middle), InputKind.Aimed, $"the middle of the limits of {f.Name}", f.Where, null),
            bench.CutterInput));
        if (IsShut(run, axis.Y, high, first))
        {
            bench.Cannot(step, $"'{f.Name}' has no open end: metal of the part stands above its flats at both.", "Cut the flats while one end is open, or write their moves out with a cutter that goes down between.");
            return;
        }

        for (var i = 0; i < shape.Sides; i++)
        {
            var theta = first + (i * 360.0 / shape.Sides);
            bench.Index(bench.Show(bench.Angle($"angle of flat {Bench.Bare(i + 1)} of {Bench.Bare(shape.Sides)}", "first flat + flat x 360 deg / flats", $"{Figures.Deg(((first % 360) + 360) % 360)} + {Bench.Bare(i)} x 360 / {Bench.Bare(shape.Sides)}", theta, Toward.Nearest)));
            Flat(run, z, perPass);
        }

        bench.Up();
    }

    // Theta that brings its first flat up, degrees; null where its axis does not lie along the indexer's.
    private double? Normal(Feature f)
    {
        var way = bench.AtZero.Placement.Direction(AimedDrawing.AxisOf(f.View));
        if (Math.Abs(Math.Abs(way.X) - 1) > 1e-9)
        {
            return null;
        }

        var edge = bench.Drawing.Outline(f, f.Places[0]).Edges[0];
        var n = bench.AtZero.Placement.Direction(FeatureView.Place(f.View, edge.Normal, 0));
        var theta = 90 - (Math.Atan2(n.Z, n.Y) * Setting.Plane.ToDegrees);
        var share = 360.0 / ((PolygonShape)f.Shape).Sides;
        var rest = theta - (share * Math.Floor((theta / share) + 1e-9));
        return Math.Abs(rest) < 1e-9 ? 0 : rest;
    }

    // Its two ends along X, and which of them the metal goes on at.
    private (double Free, double Shoulder, bool Left) Run(Feature f)
    {
        double X(double depth) => bench.AtZero.Placement.Apply(FeatureView.Place(f.View, f.Centre, depth)).X;
        double a = X(f.From.Middle), b = X(f.To.Middle);
        double low = Math.Min(a, b), high = Math.Max(a, b);
        var chuck = bench.Machine.Setup.Fixtures.First(k => k.Holds);
        return chuck.Most.X <= low + 1e-6 ? (high, low, true) : (low, high, false);
    }

    // Whether the part stands in the cutter's way past the free end.
    private bool IsShut((double Free, double Shoulder, bool Left) run, double y, double high, double theta)
    {
        var sign = run.Left ? 1 : -1;
        return ((double[])[0.3, 1, 1.9]).SelectMany(along => ((double[])[-1, -0.5, 0, 0.5, 1]).Select(across => new Solids.Geometry.Point2(run.Free + (sign * along * bench.Radius), y + (across * bench.Radius))))
            .Any(p => bench.DrawnTopAt(p, theta) > high + 0.1);
    }

    private void Flat((double Free, double Shoulder, bool Left) run, Working z, Typed? perPass)
    {
        var r = bench.Radius;
        var sign = run.Left ? 1 : -1;
        var last = bench.Show(bench.Reading(
            Axis.X,
            "X at the shoulder",
            run.Left ? "shoulder + cutter/2" : "shoulder - cutter/2",
            $"{bench.Figures.L(run.Shoulder)} {(run.Left ? "+" : "-")} {bench.Figures.L(2 * r)}/2",
            run.Shoulder + (sign * r),
            run.Left ? Toward.Plus : Toward.Minus,
            bench.CutterInput));
        var wide = Math.Abs(run.Free - run.Shoulder);
        var count = Math.Max(1, (int)Math.Ceiling((wide - (2 * r)) / (1.6 * r)) + 1);
        var box = bench.Metal.Box(0);
        var reach = bench.Metal.Extent(false, Math.Min(run.Free, run.Shoulder), Math.Max(run.Free, run.Shoulder), z.Result, 0) ?? (box.Min.Y, box.Max.Y);
        var near = bench.Clearing(Axis.Y, "clear of the near side", reach.Low - r - bench.Clear, up: false);
        var far = bench.Clearing(Axis.Y, "clear of the far side", reach.High + r + bench.Clear, up: true);
        // Metal goes on towards the shoulder: at the left fed towards plus, at the right towards minus.
        var (start, end) = run.Left ? (near, far) : (far, near);
        var depths = bench.Depths(bench.Metal.Heights().High, z.Result, perPass, "the flat");
        for (var i = count - 1; i >= 0; i--)
        {
            var x = i == 0 ? last : bench.Reading(Axis.X, $"X of row {Bench.Bare(count - i)} of {Bench.Bare(count)}", "shoulder row + rows x 0.8 of the cutter", bench.Figures.L(last.Result + (sign * 1.6 * r * i)), last.Result + (sign * 1.6 * r * i), Toward.Nearest);
            bench.Up();
            bench.Free(Axis.Y, start);
            bench.Free(Axis.X, x);
            bench.Machine.Passes([.. depths.Take(depths.Count - 1), z], plunges: false,
            [
                new Crank(Axis.Y, end, true),
                new Crank(Axis.Z, bench.Safe(), false),
                new Crank(Axis.Y, start, false),
            ]);
        }
    }
}
