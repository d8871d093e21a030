using Handwheel.Jobs.Moves;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Jobs;

/// <summary>The friction quadrant&#39;s course written by hand from its workings: tangent angle acos(7/20) = 69.513 deg, flank asin(7/20) = 20.487 deg.</summary>
internal static class QuadrantCourse
{
    private const double Flank = 20 + (29.0 / 60);
    private static readonly double[] Depths = [-5, -6, -7, -8, -9, -9.6];

    public static CourseBuilder Build(CourseBuilder b)
    {
        b.Holding("A", Setup(0));
        b.Step("A1", "zero").Centre();
        b.Step("A3", "face").In("em10").TouchZ("em10", 0, 0, 0.55);
        foreach (var y in new[] { 9, 0.5, -8 })
        {
            b.Free(z: 5).Free(34, y, t: 0).Free(z: 0).Cut(x: -21);
        }

        Holes(b);
        FacePlate(b);
        b.Step("A11", "round hub, allow 0.2");
        Hub(b, [-1, -2, -3, -4], 9.69);
        b.Step("A12", "last pass");
        Hub(b, [-4], 9.49);
        Slot(b);
        b.Step("A14", "round disc end").In("em10").Free(t: b.Full(0)).TouchZ("em10", 0, 0, 0.05, "hub top");
        foreach (var z in Depths)
        {
            b.Free(x: 22, y: 0, z: 5).Free(t: b.Full(360 - (69 + (31.0 / 60)))).Free(z: z).Cut(x: 16).Cut(t: b.Full(360 - (290 + (29.0 / 60)))).Free(x: 27);
        }

        b.Step("A15", "side plate");
        foreach (var z in Depths)
        {
            b.Free(z: 5).Free(t: b.Full(Flank)).Free(x: 18.735, y: 31).Free(z: z).Cut(y: 16).Cut(x: 0);
        }

        foreach (var z in Depths)
        {
            b.Free(z: 5).Free(t: b.Full(360 - Flank)).Free(x: 0, y: -31).Free(z: z).Cut(y: -16).Cut(x: 18.735);
        }

        b.Free(z: 5);
        Second(b);
        return b;
    }

    private static void FacePlate(CourseBuilder b)
    {
        b.Step("A10", "face plate").In("em10").TouchZ("em10", 0, 0, 0.05, "faced top");
        for (var z = -1; z >= -4; z--)
        {
            b.Free(z: 5).Free(34, 9.8).Free(z: z).Cut(x: -21).Free(z: 5).Free(-21, -9.8).Free(z: z).Cut(x: 34).Free(z: 5);
            b.Free(34, 0).Free(z: z).Cut(x: 9.79).Free(z: 5).Free(x: -21).Free(z: z).Cut(x: -9.79);
        }

        b.Free(z: 5);
    }

    private static void Holes(CourseBuilder b)
    {
        (double X, double Y) stop = (3.75, -6.495);
        b.Step("A4", "spot").In("sd6").TouchZ("sd6", -8, 0, 0.05, "faced top").Free(0, 0, 5).Cut(z: -2).Free(z: 5).Free(x: 20).Cut(z: -1.15).Free(z: 5)
            .Free(stop.X, stop.Y).Cut(z: -1.15).Free(z: 5);
        b.Step("A5", "drill bore").In("d4.8").TouchZ("d4.8", -8, 0, 0.05, "faced top").Free(0, 0, 5).Cut(z: -11.945).Free(z: 5);
        b.Step("A6", "ream bore").In("r5").TouchZ("r5", -8, 0, 0.05, "faced top").Free(0, 0, 5).Cut(z: -10.5).Free(z: 5);
        b.Step("A7", "drill pin").In("d2.9").TouchZ("d2.9", -8, 0, 0.05, "faced top").Free(20, 0, 5).Cut(z: -11.375).Free(z: 5).Free(stop.X, stop.Y).Cut(z: -10.375).Free(z: 5);
        b.Step("A8", "ream pin").In("r3").TouchZ("r3", -8, 0, 0.05, "faced top").Free(20, 0, 5).Cut(z: -10).Free(z: 5);
    }

    private static void Hub(CourseBuilder b, double[] depths, double x)
    {
        foreach (var z in depths)
        {
            b.Free(34, 0, 5).Free(t: b.Full(0)).Free(z: z).Cut(x: x).Cut(t: b.Turn(-360)).Free(x: 34);
        }

        b.Free(z: 5);
    }

    // From 100 to 200 deg of the part: theta -100 to -200, clockwise, and back.
    private static void Slot(CourseBuilder b)
    {
        b.Step("A13", "slot travel").In("em3").TouchZ("em3", 0, 3.4, 0.05, "hub top").Free(x: 7.5, y: 0, z: 5).Free(t: b.Full(260)).Free(z: -3.5);
        var clockwise = true;
        for (var z = -4.5; z > -8.9; z -= 0.5)
        {
            b.Cut(z: Math.Max(z, -8.4)).Cut(t: b.Turn(clockwise ? -100 : 100));
            clockwise = !clockwise;
        }

        b.Free(z: 5);
    }

    private static SetupFacts Setup(double originX) => CrankCourse.Setup(originX) with
    {
        Fixtures = [.. HandCourse.Vise(-13, 13, -20, 20, -15, 16.5, turns: true)],
    };

    private static void Second(CourseBuilder b)
    {
        b.Holding("B", Setup(-20));
        b.Step("B1", "zero").Centre();
        b.Step("B3", "round nose end").In("em10").Free(z: 20, t: b.Full(0)).TouchZ("em10", -20, 0, 0.05, "hub top");
        foreach (var z in Depths)
        {
            b.Free(x: 21, y: 0, z: 5).Free(t: b.Full(69.5)).Free(z: z).Cut(x: 9).Cut(t: b.Turn(-139)).Free(x: 21);
        }

        b.Free(z: 5);
        b.Step("B4", "saw under plate").In("saw2").Free(z: 20, t: b.Full(0)).TouchZ("saw2", -20, -25, 0.05, "hub top");
        b.Free(-82, -74, 5).Free(t: b.Full(Flank)).Free(z: -9.3).Free(y: -36.3).Cut(x: 2).Free(y: -74).Free(z: 5);
        b.Holding("by hand", null);
        b.Step("h1", "break the web").Hand(new Handwork { Work = "break web", At = new Place3(10, 7.3, -8.6), Direction = new Place3(0, 1, 0), Feature = "plate" });
        b.Step("h2", "rub underside").Hand(new Handwork { Work = "rub", At = new Place3(15, 0, -8), Direction = new Place3(0, 0, -1), Depth = 0.5, Feature = "plate" });
        b.Step("h3", "break all edges").Hand(new Handwork { Work = "break edges" });
    }
}
