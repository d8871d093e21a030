using Handwheel.Jobs;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Jobs.Shops;

namespace Handwheel.Proof.Tests.Crank;

/// <summary>The winch crank&#39;s course written by hand from its workings: readings and angles as a machinist would work them out.</summary>
internal static class CrankCourse
{
    private const double FlankAngle = 2.0166666666666666;
    private const double TangentAngle = 87.98333333333333;

    public static Job Job { get; } = ReadJob();

    public static Shop Shop { get; } = ShopReader.Read("home.handwheel", Example("home.handwheel")).Value!;

    public static string Example(string name)
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Handwheel.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return File.ReadAllText(Path.Combine(folder, "examples", name));
    }

    public static SetupFacts Setup(double originX, double jawsAt = -19)
    {
        var linear = new AxisFacts(-200, 200, Readout: true, 0.005, 0.15);
        FixtureFacts Jaw(string name, double low, double high) => new()
        {
            Name = name,
            Holds = true,
            Turns = true,
            Least = new Place3(-20, low, -35.5),
            Most = new Place3(20, high, jawsAt),
        };
        return new SetupFacts
        {
            Up = "top",
            PartOrigin = new Place3(originX, 0, 0),
            Rotary = new RotaryFacts(0, 0, -49.5, Lies: false, -1, 0, 1.0 / 60),
            Axes = new AxesFacts(linear, linear, linear, new AxisFacts(null, null, Readout: false, 1.0 / 60, 0.05)),
            Fixtures =
            [
                Jaw("fixed jaw", 6.98, 16.98),
                Jaw("moving jaw", -16.98, -6.98),
                new FixtureFacts { Name = "vise bed", Turns = true, Least = new Place3(-20, -45, -49.5), Most = new Place3(20, 45, -35.5) },
                new FixtureFacts { Name = "rotary", Turns = true, Across = 160, Least = new Place3(0, 0, -129.5), Most = new Place3(0, 0, -49.5) },
            ],
        };
    }

    public static Course Sound() => Build(new CourseBuilder()).Build("h3");

    public static CourseBuilder Build(CourseBuilder b)
    {
        b.Holding("A", Setup(0));
        b.Step("A1", "zero x, y on rotary centre").Centre();
        b.Step("A3", "face to 0 with em10").In("em10").TouchZ("em10", 0, 0, 0.55).Free(50, 3, 5, 0).Free(z: 0).Cut(x: -16).Free(z: 5).Free(50, -3).Free(z: 0).Cut(x: -16).Free(z: 5);
        Holes(b);
        FaceArm(b);
        b.Step("A9", "round hub to -8 with em10, allow 0.2");
        for (var z = -1; z >= -8; z--)
        {
            b.Free(x: 20, y: 0, z: 5, t: 0).Free(z: z).Cut(x: 10.19).Cut(t: b.Turn(-360)).Free(x: 20);
        }

        b.Step("A10", "measure hub across, then last pass at full depth").Cut(x: 9.99).Cut(t: b.Turn(-360)).Free(x: 20).Free(z: 5);
        b.Step("A11", "round hub end of arm to -13.4 with em10");
        foreach (var z in Depths())
        {
            b.Free(x: 20, z: 5, t: b.Full(360 - TangentAngle)).Free(z: z).Cut(x: 9.99).Cut(t: b.Full(TangentAngle)).Free(x: 20);
        }

        Flanks(b);
        b.Holding("by hand", null);
        b.Step("h1", "press socket with sq4").Hand(new Handwork { Work = "press", Cutter = "sq4", Direction = new Place3(0, 0, -1), Depth = 6, Feature = "socket" });
        b.Step("h2", "run d4 through again").Hand(new Handwork { Work = "run", Cutter = "d4", Direction = new Place3(0, 0, -1), Depth = 14, Feature = "pilot" });
        SecondHolding(b);
        Last(b);
        return b;
    }

    private static Job ReadJob() => JobReader.Read("crank.handwheel", Example("crank.handwheel"), Example).Value!;

    private static IEnumerable<double> Depths() => [-9, -10, -11, -12, -13, -13.4];

    private static void Holes(CourseBuilder b)
    {
        b.Step("A4", "spot hub, pin").In("sd6").TouchZ("sd6", -6, 0, 0.05, "faced top").Free(0, 0, 5).Cut(z: -1.5).Free(z: 5).Free(x: 28).Cut(z: -1.2).Free(z: 5);
        b.Step("A5", "drill pilot through with d4").In("d4").TouchZ("d4", -6, 0, 0.05, "faced top").Free(0, 0, 5).Cut(z: -13.7).Free(z: 5);
        b.Step("A6", "drill pin to -14.5 with d2.9").In("d2.9").TouchZ("d2.9", -6, 0, 0.05, "faced top").Free(28, 0, 5).Cut(z: -15.4).Free(z: 5);
        b.Step("A7", "ream pin through with r3").In("r3").TouchZ("r3", -6, 0, 0.05, "faced top").Free(28, 0, 5).Cut(z: -14.0).Free(z: 5);
    }

    private static void FaceArm(CourseBuilder b)
    {
        b.Step("A8", "face arm to -8 with em10").In("em10").TouchZ("em10", 0, 0, 0.05, "faced top");
        for (var z = -1; z >= -8; z--)
        {
            b.Free(x: 50, y: 3, z: 5).Free(z: z).Cut(x: 9.845).Free(z: 5).Free(x: 50).Free(y: -3).Free(z: z).Cut(x: 9.845).Free(z: 5);
        }
    }

    private static void Flanks(CourseBuilder b)
    {
        b.Step("A12", "side arm, both flanks, to -13.4 with em10");
        foreach (var z in Depths())
        {
            b.Free(z: 5, t: b.Full(FlankAngle)).Free(x: 27.985, y: 20).Free(z: z).Cut(y: 9.99).Cut(x: 0).Free(z: 5);
        }

        foreach (var z in Depths())
        {
            b.Free(z: 5, t: b.Full(360 - FlankAngle)).Free(x: 0, y: -20).Free(z: z).Cut(y: -9.99).Cut(x: 27.985).Free(z: 5);
        }
    }

    private static void SecondHolding(CourseBuilder b)
    {
        b.Holding("B", Setup(-28));
        b.Step("B1", "zero x, y at pin on rotary centre").Centre();
        b.Step("B3", "round eye end of arm to -13.4 with em10").In("em10").Free(z: 20, t: b.Full(0)).TouchZ("em10", -28, 3.5, 0.05, "hub top");
        foreach (var z in Depths())
        {
            b.Free(z: 5, t: b.Full(TangentAngle)).Free(x: 20, y: 0).Free(z: z).Cut(x: 9).Cut(t: b.Turn(-2 * TangentAngle)).Free(x: 20).Free(z: 5);
        }

        b.Step("B4", "saw under arm with saw1").In("saw1").Free(z: 20, t: b.Full(0)).TouchZ("saw1", -28, -20, 0.05, "hub top")
            .Free(x: -61, y: -80, z: 5, t: b.Full(FlankAngle)).Free(z: -13.1).Free(y: -27.8).Cut(x: 2).Free(y: -80).Free(z: 5);
    }

    private static void Last(CourseBuilder b)
    {
        b.Holding("by hand", null);
        b.Step("h3", "break the web, file to the line").Hand(new Handwork { Work = "break web", At = new Place3(14, 4.4, -12.6), Direction = new Place3(0, 1, 0), Feature = "arm" });
        b.Step("h4", "rub underside to arm high").Hand(new Handwork { Work = "rub", At = new Place3(14, 0, -12), Direction = new Place3(0, 0, -1), Depth = 0.5, Feature = "arm" });
        b.Step("h5", "break all edges 0.2").Hand(new Handwork { Work = "break edges" });
    }
}
