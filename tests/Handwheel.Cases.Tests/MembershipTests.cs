using System.Globalization;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Stocks;
using Handwheel.Membership;
using Handwheel.Proof.Following;
using Handwheel.Slips;
using Handwheel.Solids.Geometry;

namespace Handwheel.Cases.Tests;

/// <summary>
/// What the proof leaves of each example's stock against a membership test that shares no code with engine, plan or proof: it reads the moves file itself,
/// feels for its touch-offs and measures its own distances. Places nearer to a surface than 1e-7 mm are excepted and counted. HANDWHEEL_PLACES asks for more places.
/// </summary>
public sealed class MembershipTests(ITestOutputHelper output)
{
    private const double Skin = 1e-7;

    private static int Places => int.TryParse(Environment.GetEnvironmentVariable("HANDWHEEL_PLACES"), CultureInfo.InvariantCulture, out var wanted) ? wanted : 200_000;

    public static TheoryData<string> Names() => [.. Courses.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_left_agrees_at_random_places(string name)
    {
        var job = Courses.Job(name);
        var (shop, course) = (Courses.Shop(job), Courses.Course(name));
        var drawn = DrawnPart.Of(job.Drawing, PartVariant.MostMetal);
        var metal = new Follower(course, shop, StockSolid.Of(job.Stock), drawn).Follow().Last;
        var part = Plain.Of(job.Drawing);
        var replay = Replay.Of(CourseFile.Write(course), Plain.Of(job.Stock), Plain.Of(shop), (p, only) => part.Metal(p, 1, only));
        var (least, size) = (job.Stock.Least, job.Stock.Used);
        var random = new Random(20260215);
        int inside = 0, excepted = 0;
        var wrong = new List<string>();
        for (var i = 0; i < Places; i++)
        {
            var p = new Vec(least.X + (size.X * random.NextDouble()), least.Y + (size.Y * random.NextDouble()), least.Z + (size.Z * random.NextDouble()));
            var plain = replay.Metal(p);
            inside += plain ? 1 : 0;
            if (plain != metal.Contains(new Point3(p.X, p.Y, p.Z)))
            {
                if (replay.Metal(p, Skin) != replay.Metal(p, -Skin))
                {
                    excepted++;
                }
                else
                {
                    wrong.Add(FormattableString.Invariant($"{p.X:F3} {p.Y:F3} {p.Z:F3} is {(plain ? "metal" : "air")} here"));
                }
            }
        }

        output.WriteLine(FormattableString.Invariant($"{name}: {Places} places, {inside} metal, {excepted} excepted, {wrong.Count} wrong {string.Join("; ", wrong.Take(6))}"));
        Assert.Empty(wrong.Take(8));
        Assert.InRange(inside, 0.02 * Places, 0.98 * Places);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_drawing_agrees_at_random_places_in_all_its_variants(string name)
    {
        var job = Courses.Job(name);
        var part = Plain.Of(job.Drawing);
        var (least, size) = (job.Stock.Least, job.Stock.Used);
        foreach (var (variant, sense) in new[] { (PartVariant.LeastMetal, -1), (PartVariant.Nominal, 0), (PartVariant.MostMetal, 1) })
        {
            var solid = DrawnPart.Of(job.Drawing, variant).Solid;
            var random = new Random(77);
            var wrong = new List<Vec>();
            for (var i = 0; i < Places / 4; i++)
            {
                var p = new Vec(least.X + (size.X * random.NextDouble()), least.Y + (size.Y * random.NextDouble()), least.Z + (size.Z * random.NextDouble()));
                if (part.Metal(p, sense) != solid.Contains(new Point3(p.X, p.Y, p.Z)))
                {
                    wrong.Add(p);
                }
            }

            output.WriteLine(FormattableString.Invariant($"{name} {variant}: {wrong.Count} wrong {string.Join(" ", wrong.Take(4))}"));
            Assert.Empty(wrong.Take(8));
        }
    }
}
