using Handwheel.Jobs;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Tests.Crank;
using Handwheel.Proof.Tests.Jobs;

namespace Handwheel.Cases.Tests;

/// <summary>The examples' courses as a machinist worked them out by hand.</summary>
internal static class Courses
{
    private static readonly Dictionary<string, (Func<CourseBuilder, CourseBuilder> Build, string? Release)> ByHand = new(StringComparer.Ordinal)
    {
        ["crank"] = (CrankCourse.Build, "h3"),
        ["clamp-knob"] = (KnobCourse.Build, "h1"),
        ["friction-quadrant"] = (QuadrantCourse.Build, "h1"),
        ["plain-dial"] = (EndPlateCourse.Build, null),
        ["tslot-clamp"] = (ClampCourse.Build, null),
    };

    public static IEnumerable<string> Names => ByHand.Keys;

    public static string Root { get; } = FindRoot();

    public static Job Job(string name) => JobReader.Read(name + ".handwheel", Example(name + ".handwheel"), Example).Value!;

    public static Shop Shop(Job job) => ShopReader.Read(job.ShopFile, Example(job.ShopFile)).Value!;

    public static Course Course(string name)
    {
        var (build, release) = ByHand[name];
        return build(new CourseBuilder()).Build(release) with { Unit = Job(name).Unit, Title = Job(name).Title };
    }

    private static string Example(string name) => File.ReadAllText(Path.Combine(Root, "examples", name));

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Handwheel.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
