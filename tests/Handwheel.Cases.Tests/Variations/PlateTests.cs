using System.Globalization;
using CsCheck;
using Handwheel.Draws;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Jobs.Stocks;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Cases.Tests.Variations;

/// <summary>Random plates: sound ones prove without a halt, and whichever unit they are written in, the same is cranked.</summary>
public sealed class PlateTests(ITestOutputHelper output)
{
    private static readonly string ShopText = File.ReadAllText(Path.Combine(Courses.Root, "examples", "home.handwheel")) + "\nd4.3 drill 4.3, HSS, point 118\n";

    [Fact]
    public void A_sound_random_plate_proves_without_a_halt() => Gen.Int[0, 100_000].Hold(
        seed =>
        {
            var text = PlateVariation.Text(seed, "mm", Millimetres);
            var (plan, shop) = Planned(text);
            var proof = Prover.Prove(plan.Course, plan.Job.Drawing, plan.Job.Stock, shop);
            List<string> halts = [.. plan.Findings.Concat(proof.Findings).Where(f => f.Grade == Grade.Halt).Select(f => $"{f.Code} {f.Step}: {f.Message}")];
            if (halts.Count > 0)
            {
                output.WriteLine($"{string.Join('\n', halts)}\n{text}");
            }

            Assert.Empty(halts);
        },
        times: 12);

    [Fact]
    public void Lengths_written_in_millimetres_and_in_inches_give_the_same_moves() => Gen.Int[0, 100_000].Hold(
        seed =>
        {
            foreach (var unit in (string[])["mm", "in"])
            {
                var metric = Written(PlateVariation.Text(seed, unit, n => Millimetres(n) + " mm"));
                Assert.Equal(metric, Written(PlateVariation.Text(seed, unit, n => Inches(n) + " in")));
                Assert.Equal(metric, Written(PlateVariation.Text(seed, unit, n => string.Create(CultureInfo.InvariantCulture, $"{n}/100 in"))));
            }
        },
        times: 40);

    // Heights and places in the air are round numbers of the job's unit; whatever touches metal is the same.
    [Fact]
    public void A_metric_and_an_inch_job_take_the_same_metal_in_the_same_order() => Gen.Int[0, 100_000].Hold(
        seed =>
        {
            var (metric, shop) = Planned(PlateVariation.Text(seed, "mm", Millimetres));
            var (inch, _) = Planned(PlateVariation.Text(seed, "in", Inches));
            var (a, b) = (Events(metric.Course), Events(inch.Course));
            Assert.Equal(a.Select(Told), b.Select(Told));
            var worst = a.Zip(b).Where(p => p.First is Move).Max(p => Off(((Move)p.First).To, ((Move)p.Second).To));
            output.WriteLine(FormattableString.Invariant($"{seed}: {a.Count} cuts, their ends in the air up to {worst:F3} mm apart"));
            Assert.InRange(worst, 0, 1.3);
            var (left, other) = (Last(metric.Course, metric.Job, shop), Last(inch.Course, inch.Job, shop));
            var random = new Random(seed);
            for (var i = 0; i < 2_000; i++)
            {
                var box = left.Bounds;
                Point3 at = new(box.Min.X + (box.Size.X * random.NextDouble()), box.Min.Y + (box.Size.Y * random.NextDouble()), box.Min.Z + (box.Size.Z * random.NextDouble()));
                var line = (i % 3) switch { 0 => Line3.AlongX(at.Y, at.Z), 1 => Line3.AlongY(at.X, at.Z), _ => Line3.AlongZ(at.X, at.Y) };
                var (one, two) = (left.Sound(line), other.Sound(line));
                foreach (var span in one.Difference(two).Concat(two.Difference(one)))
                {
                    // A line that runs along a face within what the readout rounds finds it on one side in one, on the other in the other.
                    var aside = line.At(span.Middle);
                    Assert.True(span.Length <= 0.0051 || Nearly(left, other, aside), FormattableString.Invariant($"seed {seed}: {aside} {span.Length:F4}"));
                }
            }
        },
        times: 40);

    private static bool Nearly(Metal a, Metal b, Point3 at)
    {
        bool Near(Metal m, bool metal) => ((Vector3[])[Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ]).Any(u => m.Contains(at + (u * 0.0051)) == metal || m.Contains(at - (u * 0.0051)) == metal);
        return a.Contains(at) != b.Contains(at) && Near(a, !a.Contains(at)) && Near(b, !b.Contains(at));
    }

    private static string Told(CourseEvent e) => e switch { CutterIn put => put.Cutter, TouchOff touch => $"{touch.Axis}", _ => e.GetType().Name };

    private static double Off(Reading a, Reading b) => Math.Max(Math.Max(Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y)), Math.Max(Math.Abs(a.Z - b.Z), Math.Abs(a.T - b.T)));

    private static List<CourseEvent> Events(Course course) => [.. course.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Events).Where(e => e is CutterIn or TouchOff or Move { Cutting: true })];

    private static Metal Last(Course course, Jobs.Job job, Jobs.Shops.Shop shop) =>
        new Follower(course, shop, StockSolid.Of(job.Stock), DrawnPart.Of(job.Drawing, PartVariant.MostMetal)).Follow().Last;

    private static string Written(string text) => CourseFile.Write(Bare(Planned(text).Plan.Course));

    // Without the lines as they were typed.
    private static Course Bare(Course course) =>
        course with { Stages = [.. course.Stages.Select(s => s with { Steps = [.. s.Steps.Select(t => t with { Text = string.Empty, Where = null })] })] };

    private static (JobPlan Plan, Jobs.Shops.Shop Shop) Planned(string text)
    {
        var read = JobReader.Read("plate.handwheel", text, _ => ShopText);
        Assert.Empty(read.Findings.Where(f => f.Grade == Grade.Halt).Select(f => FormattableString.Invariant($"{f.Message} {f.Where?.Line}\n{text}")));
        return (Planner.Plan(read.Value!, read.Shop!), read.Shop!);
    }

    private static string Millimetres(int hundredths) => (hundredths * 0.254m).ToString(CultureInfo.InvariantCulture);

    private static string Inches(int hundredths) => ((decimal)hundredths / 100).ToString(CultureInfo.InvariantCulture);
}
