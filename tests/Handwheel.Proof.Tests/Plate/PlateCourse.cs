using Handwheel.Jobs;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Plate;

/// <summary>A guide plate held in a plain vise: faced, slotted, spotted and drilled. Small enough to spoil one thing at a time.</summary>
internal static class PlateCourse
{
    private const string Document = """
        job   Guide plate
        unit  mm
        metal aluminium
        shop  home.handwheel

        drawing
          base   block 40 by 20 at 0, 0       from -10 to 0
          key    cut block 40 by 6 at 0, KEY  from -4 to 0
          hole   cut round 4 at 0, KEY        through
          others +/-0.1

        stock bar 20 wide, 10.5 high, 40 long
          x from -20
          z top 0.5

        holding A in large vise, on parallels 25
          zero z on bar top by paper 0.05
          face to 0 with em16
        """;

    public static Shop Shop { get; } = CrankCourse.Shop;

    public static Job Job(double key = 0)
    {
        var text = Document.Replace("KEY", FormattableString.Invariant($"{key}"), StringComparison.Ordinal);
        var read = JobReader.Read("plate.handwheel", text, CrankCourse.Example);
        return read.Value ?? throw new InvalidOperationException(string.Join("; ", read.Findings.Select(f => f.Message)));
    }

    public static SetupFacts Setup(double jaws = -6, double gap = 0)
    {
        var axis = new AxisFacts(-100, 100, Readout: true, 0.005, 0.12);
        return new SetupFacts
        {
            Up = "top",
            PartOrigin = default,
            Axes = new AxesFacts(axis, axis, axis, new AxisFacts(null, null, Readout: false, 0, 0)),
            Fixtures =
            [
                new FixtureFacts { Name = "fixed jaw", Holds = true, Least = new Place3(-50, 10 + gap, -35), Most = new Place3(50, 26, jaws) },
                new FixtureFacts { Name = "moving jaw", Holds = true, Least = new Place3(-50, -26, -35), Most = new Place3(50, -10 - gap, jaws) },
                new FixtureFacts { Name = "parallel", Least = new Place3(-40, 4, -35), Most = new Place3(40, 9, -10) },
            ],
        };
    }

    public static TouchOff Side(Axis axis, double setTo, int towards, double at = -2) => new()
    {
        Axis = axis,
        On = "metal",
        Surface = axis == Axis.X ? "left end of stock" : "near side of stock",
        At = axis == Axis.X ? new Place3(0, 5, at) : new Place3(5, 0, at),
        Towards = towards,
        With = "finder",
        Half = 5,
        SetTo = setTo,
    };

    public static CourseBuilder Begin(double jaws = -6, double gap = 0)
    {
        var b = new CourseBuilder();
        b.Holding("A", Setup(jaws, gap));
        b.Step("A1", "zero x on left end, y on near side by finder").Touch(Side(Axis.X, -25, 1)).Touch(Side(Axis.Y, -15, 1));
        b.Step("A2", "face to 0 with em16").In("em16").TouchZ("em16", 0, 0, 0.55).Free(x: 40, y: 4, z: 5).Free(z: 0).Cut(x: -40).Free(z: 5).Free(x: 40, y: -6).Free(z: 0).Cut(x: -40).Free(z: 5);
        return b;
    }

    public static CourseBuilder Slot(this CourseBuilder b, double y = 0)
    {
        b.Step("A3", "slot key with em6").In("em6").TouchZ("em6", 10, 0, 0.05, "faced top");
        foreach (var z in new[] { -2.0, -4.0 })
        {
            b.Free(x: 30, y: y, z: 5).Free(z: z).Cut(x: -30).Free(z: 5);
        }

        return b;
    }

    public static CourseBuilder Hole(this CourseBuilder b, double y = 0, bool spotted = true)
    {
        if (spotted)
        {
            b.Step("A4", "spot hole").In("sd6").TouchZ("sd6", 5, 8, 0.05, "faced top").Free(x: 0, y: y, z: 5).Cut(z: -5.2).Free(z: 5);
        }

        return b.Step("A5", "drill hole through with d4").In("d4").TouchZ("d4", 5, 8, 0.05, "faced top").Free(x: 0, y: y, z: 5).Cut(z: -11.7).Free(z: 5);
    }

    public static ProofResult Prove(this CourseBuilder b, Job? job = null, Shop? shop = null) => b.Build(null).Proved(job, shop);

    public static ProofResult Proved(this Course course, Job? job = null, Shop? shop = null)
    {
        job ??= Job();
        return Prover.Prove(course, job.Drawing, job.Stock, shop ?? Shop);
    }
}
