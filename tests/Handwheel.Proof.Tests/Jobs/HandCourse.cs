using Handwheel.Jobs;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Jobs;

/// <summary>What the hand-written courses of the examples share.</summary>
internal static class HandCourse
{
    public static Job Read(string name) => JobReader.Read(name, CrankCourse.Example(name), CrankCourse.Example).Value!;

    public static AxesFacts Axes(double step, bool readout = true)
    {
        var linear = new AxisFacts(-200, 200, readout, step, 0.15);
        return new(linear, linear, linear, new AxisFacts(null, null, Readout: false, 1.0 / 60, 0.05));
    }

    public static FixtureFacts Ring(double across, double bore, double low, double high) => new()
    {
        Name = "chuck jaws",
        Holds = true,
        Turns = true,
        Across = across,
        Bore = bore,
        Least = new Place3(0, 0, low),
        Most = new Place3(0, 0, high),
    };

    /// <summary>Two jaws along X, the fixed one at far Y, and the bed below.</summary>
    public static IReadOnlyList<FixtureFacts> Vise(double near, double far, double left, double right, double top, double deep, bool turns = false)
    {
        FixtureFacts Block(string name, bool holds, double y0, double y1, double z0, double z1) => new()
        {
            Name = name,
            Holds = holds,
            Turns = turns,
            Least = new Place3(left, y0, z0),
            Most = new Place3(right, y1, z1),
        };
        return
        [
            Block("fixed jaw", true, far, far + 16, top - deep, top),
            Block("moving jaw", true, near - 16, near, top - deep, top),
            Block("vise bed", false, near - 60, far + 60, top - deep - 20, top - deep),
        ];
    }

    /// <summary>Proves and says all that was found.</summary>
    public static ProofResult Prove(CourseBuilder b, Job job, string? releaseAt, ITestOutputHelper output)
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var shop = ShopReader.Read(job.ShopFile, CrankCourse.Example(job.ShopFile)).Value!;
        var result = Prover.Prove(b.Build(releaseAt) with { Unit = job.Unit }, job.Drawing, job.Stock, shop);
        output.WriteLine(FormattableString.Invariant($"{clock.Elapsed.TotalSeconds:F2} s"));
        foreach (var f in result.Findings)
        {
            output.WriteLine(FormattableString.Invariant($"{f.Grade} {f.Code} {f.Step} {f.Move}: {f.Message} | {f.Mend} {f.At}"));
        }

        foreach (var s in result.Sizes)
        {
            output.WriteLine(FormattableString.Invariant($"{s.Name}: {s.Least} {s.Greatest} in {s.Lower} {s.Upper} {s.Ok} {s.ByHand}"));
        }

        output.WriteLine(FormattableString.Invariant($"{result.Release} {result.Guarantee}"));
        return result;
    }

    public static CourseBuilder Paper(this CourseBuilder b, string with, double x, double y, double height, double paper, string surface) =>
        b.Touch(new TouchOff { Axis = Axis.Z, On = "metal", Surface = surface, At = new Place3(x, y, height), With = with, Paper = paper, SetTo = height + paper });

    public static CourseBuilder Side(this CourseBuilder b, Axis axis, int towards, Place3 at, double half, double setTo, string surface) =>
        b.Touch(new TouchOff { Axis = axis, On = "metal", Surface = surface, At = at, Towards = towards, With = "finder", Half = half, SetTo = setTo });
}
