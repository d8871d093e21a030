using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// Faces in rows along X, far row first and fed towards minus, so that metal lies to the left of the feed; short of what is kept clear.
internal sealed class Facing(Bench bench)
{
    // A row covers no more than this share of the cutter (common practice, no source).
    private const double Share = 0.8;

    internal void Plan(FaceStep step, double allow, Typed? perPass)
    {
        var to = bench.Plan.Height(step.To.Value) + allow;
        if (Region(step, to) is not { } region)
        {
            bench.Cannot(step, "Nothing stands above that height here.", "Check the height: heights are of the part as it lies in this holding.");
            return;
        }

        bench.Straighten();
        var depths = bench.Depths(bench.Metal.Heights().High, to, perPass, allow > 0 ? "the height and the allowance" : "the height");
        var keeps = step.Clear.Select(c => Keep(step, c)).OfType<Kept>().ToList();
        foreach (var y in Rows(region))
        {
            Row(region, y, depths, keeps, keeps.Exists(k => k.Meets(y.Result)) || !Climbs(region, y.Result, to));
        }

        var left = keeps.Where(k => region.OutlineLeft < k.Centre.X - k.Round - 1e-6).ToList();
        if (left.Count > 0)
        {
            foreach (var y in Rows(region).Reverse().Where(y => left.Exists(k => k.Meets(y.Result))))
            {
                Row(region, y, depths, left, fromRight: false);
            }
        }

        bench.Up();
    }

    // The box of metal above the height, near the outline where one is named.
    private Box? Region(FaceStep step, double z)
    {
        var all = bench.Metal.Box(0);
        double y0 = all.Min.Y, y1 = all.Max.Y, x0 = all.Min.X, x1 = all.Max.X, left = double.PositiveInfinity;
        if (bench.Plan.Find(step.Feature) is { } f)
        {
            var (least, most) = f.Outline.Extent();
            (y0, y1) = (Math.Max(y0, least.Y - (2 * bench.Radius)), Math.Min(y1, most.Y + (2 * bench.Radius)));
            left = least.X;
        }

        if (bench.Metal.Extent(true, y0, y1, z, 0) is not { } x || bench.Metal.Extent(false, x0, x1, z, 0) is not { } y)
        {
            return null;
        }

        return new(x.Low, x.High, Math.Max(y0, y.Low), Math.Min(y1, y.High), left);
    }

    private Kept? Keep(FaceStep step, ClearOf clear)
    {
        if (bench.Plan.Find(clear.Feature) is not { } f || AimedDrawing.RadiusOf(f.Feature) is not { } r)
        {
            bench.Cannot(step, $"'{clear.Feature}' is no upright round, so it cannot be kept clear of here.", "Name a round, or write the moves out.");
            return null;
        }

        return new(clear.Feature, f.Centre, r, bench.Radius, clear.By);
    }

    private IEnumerable<Working> Rows(Box box)
    {
        var inch = bench.Job.Unit == LengthUnit.Inch;
        var grain = inch ? 0.02 * LengthUnit.Inch.MillimetresPerUnit() : 0.5;
        double over = inch ? 0.04 * LengthUnit.Inch.MillimetresPerUnit() : 1, d = 2 * bench.Radius;
        var wide = box.Far - box.Near + (2 * over);
        var n = wide <= d ? 1 : (int)Math.Ceiling((wide - d) / (Share * d)) + 1;
        for (var i = 0; i < n; i++)
        {
            var exact = n == 1 ? (box.Near + box.Far) / 2 : box.Far + over - bench.Radius - (i * (wide - d) / (n - 1));
            var round = Math.Round(exact / grain, MidpointRounding.AwayFromZero) * grain;
            var reading = bench.Reading(
                Axis.Y,
                n == 1 ? "Y of the one row, the middle" : i == 0 ? $"Y of row 1 of {Bench.Bare(n)}, {bench.Figures.L(over)} past the far edge" : i == n - 1 ? $"Y of row {Bench.Bare(n)}, {bench.Figures.L(over)} past the near edge" : $"Y of row {Bench.Bare(i + 1)} of {Bench.Bare(n)}, as far on again",
                n == 1 ? "(near edge + far edge)/2" : i == n - 1 ? "near edge - overlap + cutter/2" : i == 0 ? "far edge + overlap - cutter/2" : "far edge + overlap - cutter/2 - rows x spacing",
                PutIn(box, over, d, i, n),
                round,
                Toward.Nearest,
                bench.CutterInput);
            var loss = Math.Abs(reading.Result - exact);
            yield return reading with
            {
                Exact = exact,
                Rounded = loss < 5e-7 ? string.Empty : $"{bench.Figures.L(exact)} to the nearest {bench.Figures.LU(grain)}: {bench.Figures.L(loss)}",
            };
        }
    }

    // The first row from the far edge, the last from the near one, those between spaced evenly.
    private string PutIn(Box box, double over, double d, int i, int n)
    {
        var figures = bench.Figures;
        if (n == 1)
        {
            return $"({figures.L(box.Near)} + {figures.L(box.Far)})/2";
        }

        return i == n - 1
            ? $"{figures.L(box.Near)} - {figures.L(over)} + {figures.L(d)}/2"
            : $"{figures.L(box.Far)} + {figures.L(over)} - {figures.L(d)}/2" + (i == 0 ? string.Empty : $" - {Bench.Bare(i)} x {figures.L((box.Far - box.Near + (2 * over) - d) / (n - 1))}");
    }

    // Whether, fed towards minus, more metal would lie to the right of the feed (further towards plus Y) than to its left.
    private bool Climbs(Box box, double y, double z)
    {
        const int Rows = 8;
        double left = 0, right = 0;
        for (var i = 0; i <= 40; i++)
        {
            var x = box.Left + ((box.Right - box.Left) * (i + 0.5) / 41);
            for (var k = 0; k < Rows; k++)
            {
                var off = bench.Radius * (k + 0.5) / Rows;
                left += Above(new(x, y - off), z);
                right += Above(new(x, y + off), z);
            }
        }

        return right > left;
    }

    private double Above(Point2 p, double z) => Math.Max(0, (bench.Metal.TopAt(p, 0) ?? z) - z);

    private void Row(Box box, Working y, IReadOnlyList<Working> depths, List<Kept> keeps, bool fromRight)
    {
        var start = fromRight
            ? bench.Clearing(Axis.X, "clear of the right end", box.Right + bench.Radius + bench.Clear, up: true)
            : bench.Clearing(Axis.X, "clear of the left end", box.Left - bench.Radius - bench.Clear, up: false);
        var stop = keeps.Where(k => k.Meets(y.Result)).Select(k => k.Stop(bench, y, fromRight)).OrderBy(w => fromRight ? -w.Result : w.Result).FirstOrDefault();
        var end = stop ?? (fromRight
            ? bench.Clearing(Axis.X, "out past the left end", box.Left - bench.Radius - bench.Clear, up: false)
            : bench.Clearing(Axis.X, "out past the right end", box.Right + bench.Radius + bench.Clear, up: true));
        if (fromRight ? end.Result >= start.Result : end.Result <= start.Result)
        {
            return;
        }

        _ = bench.Show(y);
        if (stop is not null)
        {
            _ = bench.Show(stop);
        }

        bench.Up();
        bench.Free(Axis.X, start);
        bench.Free(Axis.Y, y);
        List<Crank> body = [new(Axis.X, end, true) { ReadBack = stop is not null }];
        if (stop is null)
        {
            body.Add(new(Axis.Z, bench.Safe(), false));
        }

        body.Add(new(Axis.X, start, false));
        bench.Machine.Passes(depths, plunges: false, body);
    }

    private readonly record struct Box(double Left, double Right, double Near, double Far, double OutlineLeft);

    // A round that is kept clear of.
    private sealed record Kept(string Name, Point2 Centre, double Round, double Cutter, Typed Clear)
    {
        private double Whole => Round + Cutter + Clear.Value;

        internal bool Meets(double y) => Math.Abs(y - Centre.Y) < Whole - 1e-9;

        internal Working Stop(Bench bench, Working y, bool fromRight)
        {
            var off = y.Result - Centre.Y;
            var half = Math.Sqrt((Whole * Whole) - (off * off));
            var figures = bench.Figures;
            var cutter = bench.Cutter!.Name;
            return bench.Reading(
                Axis.X,
                $"X where the cutter stops clear of {Name}",
                $"{(fromRight ? string.Empty : "-")}sqrt(({Name}/2 + {cutter}/2 + clear)^2 - y^2)",
                $"{(fromRight ? string.Empty : "-")}sqrt(({figures.L(2 * Round)}/2 + {figures.L(2 * Cutter)}/2 + {figures.L(Clear.Value)})^2 - {figures.L(off)}^2)",
                fromRight ? Centre.X + half : Centre.X - half,
                fromRight ? Toward.Plus : Toward.Minus,
                new WorkingInput($"{Name} across", 2 * Round, figures.L(2 * Round), InputKind.Aimed, $"the middle of the limits of {Name}", bench.Drawing.Find(Name)?.Where, null),
                bench.CutterInput,
                bench.Work.Typed("clear", Clear),
                bench.Work.From("y", y));
        }
    }
}
