using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Drawings;
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
        if (bench.Plan.Find(step.Feature) is { Feature: { IsCut: true, Shape: BlockShape } } cut && step.Clear.Count == 0
            && new OpenMilling(bench).Plan(step, cut, bench.Plan.Height(step.To.Value, step.Feature), allow, perPass, onlyWalls: allow <= 0 && step.Allow is { Value: > 0 }))
        {
            return;
        }

        var to = bench.Plan.FaceHeight(step.To.Value, step.Feature, bench.Metal.Box(0).Min.Z) + allow;
        if (Region(step, to) is not { } region)
        {
            bench.Cannot(step, "Nothing stands above that height here.", "Check the height: heights are of the part as it lies in this holding.");
            return;
        }

        bench.Straighten();
        var depths = bench.Depths(bench.Metal.Heights().High, to, perPass, allow > 0 ? "the height and the allowance" : "the height");
        var keeps = step.Clear.SelectMany(c => Keep(step, c)).ToList();
        region = keeps.Aggregate(region, Narrowed);
        foreach (var y in Rows(region))
        {
            Row(region, y, depths, keeps, keeps.Exists(k => k.Meets(y.Result)) || !Climbs(region, y.Result, depths));
        }

        var left = keeps.Where(k => region.OutlineLeft < k.Left - 1e-6).ToList();
        if (left.Count > 0)
        {
            foreach (var y in Rows(region).Reverse().Where(y => left.Exists(k => k.Meets(y.Result))))
            {
                Row(region, y, depths, keeps, fromRight: false);
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

        return new(x.Low, x.High, Math.Max(y0, y.Low), Math.Min(y1, y.High), left) { NearOver = Over, FarOver = Over };
    }

    // What is kept clear of and stands all along the rows, with no room for the cutter past it, ends the region: its last row runs right beside it.
    private static Box Narrowed(Box box, Kept kept)
    {
        if (kept.Centre is not null || kept.Left > box.Left + kept.Off || kept.Right < box.Right - kept.Off)
        {
            return box;
        }

        return kept.Middle > (box.Near + box.Far) / 2
            ? box with { Far = Math.Min(box.Far, kept.Near - kept.Clear.Value), FarOver = 0 }
            : box with { Near = Math.Max(box.Near, kept.Far + kept.Clear.Value), NearOver = 0 };
    }

    private IEnumerable<Kept> Keep(FaceStep step, ClearOf clear)
    {
        if (bench.Plan.Find(clear.Feature) is not { } f)
        {
            bench.Cannot(step, $"'{clear.Feature}' does not stand upright here, so it cannot be kept clear of.", "Name what stands upright in this holding, or write the moves out.");
            return [];
        }

        var r = AimedDrawing.RadiusOf(f.Feature);
        return f.Outlines.Select((o, i) => new Kept(clear.Feature, o, r is null ? null : f.Centres[i], r ?? 0, bench.Radius, clear.By));
    }

    private double Over => bench.Job.Unit == LengthUnit.Inch ? 0.04 * LengthUnit.Inch.MillimetresPerUnit() : 1;

    private IEnumerable<Working> Rows(Box box)
    {
        var (near, far) = Ends(box);
        double d = 2 * bench.Radius, wide = far - near;
        var n = wide <= d ? 1 : (int)Math.Ceiling((wide - d) / (Share * d)) + 1;
        for (var i = 0; i < n; i++)
        {
            yield return RowAt(box, (near, far), i, n);
        }
    }

    // How far the rows reach; beside what is kept clear of a single row lies against it and hangs over the open side.
    private (double Near, double Far) Ends(Box box)
    {
        double d = 2 * bench.Radius, near = box.Near - box.NearOver, far = box.Far + box.FarOver;
        if (far - near >= d || (box.NearOver > 0 && box.FarOver > 0))
        {
            return (near, far);
        }

        return box.FarOver <= 0 ? (far - d, far) : (near, near + d);
    }

    private Working RowAt(Box box, (double Near, double Far) ends, int i, int n)
    {
        var grain = bench.Job.Unit == LengthUnit.Inch ? 0.02 * LengthUnit.Inch.MillimetresPerUnit() : 0.5;
        var d = 2 * bench.Radius;
        var exact = n == 1 ? (ends.Near + ends.Far) / 2 : ends.Far - bench.Radius - (i * (ends.Far - ends.Near - d) / (n - 1));
        bool atFar = i == 0 && box.FarOver <= 0, atNear = i == n - 1 && box.NearOver <= 0;
        var reading = bench.Reading(
            Axis.Y,
            Named(box, i, n),
            Formula(box, i, n),
            PutIn(box, ends, d, i, n),
            atFar || atNear ? exact : Math.Round(exact / grain, MidpointRounding.AwayFromZero) * grain,
            atFar ? Toward.Minus : atNear ? Toward.Plus : Toward.Nearest,
            bench.CutterInput);
        var loss = Math.Abs(reading.Result - exact);
        return reading with
        {
            Exact = exact,
            Rounded = loss < 5e-7 ? string.Empty : atFar || atNear ? reading.Rounded : $"{bench.Figures.L(exact)} to the nearest {bench.Figures.LU(grain)}: {bench.Figures.L(loss)}",
        };
    }

    private static string Formula(Box box, int i, int n)
    {
        if (n == 1)
        {
            return "(near edge + far edge)/2";
        }

        return i == n - 1
            ? $"near edge{(box.NearOver > 0 ? " - overlap" : string.Empty)} + cutter/2"
            : $"far edge{(box.FarOver > 0 ? " + overlap" : string.Empty)} - cutter/2{(i == 0 ? string.Empty : " - rows x spacing")}";
    }

    private string Named(Box box, int i, int n)
    {
        string Past(double over, string edge) => over > 0 ? $", {bench.Figures.L(over)} past the {edge} edge" : ", beside what is kept clear of";
        return n == 1 ? "Y of the one row, the middle"
            : i == 0 ? $"Y of row 1 of {Bench.Bare(n)}{Past(box.FarOver, "far")}"
            : i == n - 1 ? $"Y of row {Bench.Bare(n)}{Past(box.NearOver, "near")}"
            : $"Y of row {Bench.Bare(i + 1)} of {Bench.Bare(n)}, as far on again";
    }

    // The first row from the far edge, the last from the near one, those between spaced evenly.
    private string PutIn(Box box, (double Near, double Far) ends, double d, int i, int n)
    {
        var figures = bench.Figures;
        if (n == 1)
        {
            return $"({figures.L(ends.Near + box.NearOver)} + {figures.L(ends.Far - box.FarOver)})/2";
        }

        return i == n - 1
            ? $"{figures.L(box.Near)}{(box.NearOver > 0 ? $" - {figures.L(box.NearOver)}" : string.Empty)} + {figures.L(d)}/2"
            : $"{figures.L(box.Far)}{(box.FarOver > 0 ? $" + {figures.L(box.FarOver)}" : string.Empty)} - {figures.L(d)}/2" + (i == 0 ? string.Empty : $" - {Bench.Bare(i)} x {figures.L((ends.Far - ends.Near - d) / (n - 1))}");
    }

    // Whether, fed towards minus, more would be cut climbing than towards plus: pass by pass, metal to the right of the feed (further towards plus Y) beyond that to its left.
    private bool Climbs(Box box, double y, IReadOnlyList<Working> depths)
    {
        var high = bench.Metal.Heights().High;
        double minus = 0, plus = 0;
        foreach (var depth in depths)
        {
            var (left, right) = Beside(box, y, depth.Result, high);
            minus += Math.Max(0, right - (1.04 * left));
            plus += Math.Max(0, left - (1.04 * right));
            high = depth.Result;
        }

        return minus > plus;
    }

    private (double Left, double Right) Beside(Box box, double y, double low, double high)
    {
        const int Rows = 8;
        double left = 0, right = 0;
        for (var i = 0; i <= 40; i++)
        {
            var x = box.Left + ((box.Right - box.Left) * (i + 0.5) / 41);
            for (var k = 0; k < Rows; k++)
            {
                var off = bench.Radius * (k + 0.5) / Rows;
                left += Between(new(x, y - off), low, high);
                right += Between(new(x, y + off), low, high);
            }
        }

        return (left, right);
    }

    private double Between(Point2 p, double low, double high)
    {
        var metal = 0.0;
        foreach (var span in bench.Metal.Sound(Line3.AlongZ(p.X, p.Y), 0))
        {
            metal += Math.Max(0, Math.Min(span.To, high) - Math.Max(span.From, low));
        }

        return metal;
    }

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

    private readonly record struct Box(double Left, double Right, double Near, double Far, double OutlineLeft)
    {
        // How far rows reach over the metal's edge; 0 where something stands there.
        internal double NearOver { get; init; }

        internal double FarOver { get; init; }
    }

    // What is kept clear of: a round by its sum, anything else by its outline.
    private sealed record Kept(string Name, PlanOutline Outline, Point2? Centre, double Round, double Cutter, Typed Clear)
    {
        private readonly (Point2 Least, Point2 Most) extent = Outline.Extent();

        internal double Left => extent.Least.X;

        internal double Right => extent.Most.X;

        internal double Near => extent.Least.Y;

        internal double Far => extent.Most.Y;

        internal double Middle => (Near + Far) / 2;

        internal double Off => Cutter + Clear.Value;

        private double Whole => Round + Off;

        internal bool Meets(double y) => Centre is { } c ? Math.Abs(y - c.Y) < Whole - 1e-9 : First(y, fromRight: true) is not null;

        internal Working Stop(Bench bench, Working y, bool fromRight) => Centre is { } c ? AtRound(bench, y, c, fromRight) : AtEdge(bench, y, fromRight);

        private Working AtRound(Bench bench, Working y, Point2 centre, bool fromRight)
        {
            var off = y.Result - centre.Y;
            var half = Math.Sqrt((Whole * Whole) - (off * off));
            var figures = bench.Figures;
            var cutter = bench.Cutter!.Name;
            return bench.Reading(
                Axis.X,
                $"X where the cutter stops clear of {Name}",
                $"{(fromRight ? string.Empty : "-")}sqrt(({Name}/2 + {cutter}/2 + clear)^2 - y^2)",
                $"{(fromRight ? string.Empty : "-")}sqrt(({figures.L(2 * Round)}/2 + {figures.L(2 * Cutter)}/2 + {figures.L(Clear.Value)})^2 - {figures.L(off)}^2)",
                fromRight ? centre.X + half : centre.X - half,
                fromRight ? Toward.Plus : Toward.Minus,
                new WorkingInput($"{Name} across", 2 * Round, figures.L(2 * Round), InputKind.Aimed, $"the middle of the limits of {Name}", bench.Drawing.Find(Name)?.Where, null),
                bench.CutterInput,
                bench.Work.Typed("clear", Clear),
                bench.Work.From("y", y));
        }

        private Working AtEdge(Bench bench, Working y, bool fromRight)
        {
            var figures = bench.Figures;
            var stop = First(y.Result, fromRight)!.Value;
            var sign = fromRight ? "+" : "-";
            var edge = fromRight ? stop - Off : stop + Off;
            return bench.Reading(
                Axis.X,
                $"X where the cutter stops clear of {Name}",
                $"its edge in this row {sign} {bench.Cutter!.Name}/2 {sign} clear",
                $"{figures.L(edge)} {sign} {figures.L(2 * Cutter)}/2 {sign} {figures.L(Clear.Value)}",
                stop,
                fromRight ? Toward.Plus : Toward.Minus,
                bench.CutterInput,
                bench.Work.Typed("clear", Clear),
                bench.Work.From("y", y));
        }

        // The first place on a row, come from one end, where the cutter is no further off the outline than it may be; null where it nowhere is.
        private double? First(double y, bool fromRight)
        {
            const int Steps = 400;
            double from = fromRight ? Right + Off : Left - Off, to = fromRight ? Left - Off : Right + Off;
            bool Clears(double x) => Outline.Distance(new(x, y)) >= Off - 1e-9;
            for (var i = 0; i <= Steps; i++)
            {
                var x = from + ((to - from) * i / Steps);
                if (Clears(x))
                {
                    continue;
                }

                double clear = i == 0 ? from : from + ((to - from) * (i - 1) / Steps), meets = x;
                for (var k = 0; k < 60; k++)
                {
                    var middle = (clear + meets) / 2;
                    (clear, meets) = Clears(middle) ? (middle, meets) : (clear, middle);
                }

                return clear;
            }

            return null;
        }
    }
}
