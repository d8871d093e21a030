using Handwheel.Jobs.Moves;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Jobs;

/// <summary>The end plate&#39;s course written by hand for plain dials: every place that matters is come to cranking towards plus, Z downwards.</summary>
internal static class EndPlateCourse
{
    private static readonly double[] Rows = [20, 9, -2, -13, -18];

    public static CourseBuilder Build(CourseBuilder b)
    {
        b.Holding("A", Setup("top", -22.5, 22.5, -9.4));
        Zero(b, -3);
        b.Step("A3", "face to 0").In("em12").Paper("em12", 0, 0, 0.6, 0.05, "bar top");
        Face(b, 0);
        b.Step("A5", "side plate, allow 0.2");
        foreach (var z in new[] { -1, -2, -3, -4, -5, -6, -7, -8, -8.5 })
        {
            Sides(b, z, 0.2);
        }

        b.Step("A7", "side plate");
        Sides(b, -8.5, 0);
        Holes(b);
        b.Step("A13", "slot strap").In("em6").Paper("em6", 0, 0, 0, 0.05, "faced top").Free(z: 5).Free(-10, 10).Free(y: 12).Free(x: -8).Free(z: 0.5);
        for (var z = -0.5; z > -8.6; z -= 0.5)
        {
            b.Cut(z: z).Cut(x: 8).Free(z: 5).Free(x: -10).Free(x: -8).Free(z: z + 0.1);
        }

        b.Free(z: 5);
        b.Holding("by hand", null).Step("h1", "deburr").Hand(new Handwork { Work = "break edges" });
        b.Holding("B", Setup("underside", -20, 20, 6));
        Zero(b, 11);
        b.Step("B3", "face to 8, allow 0.2").In("em12").Paper("em12", 10, 0, 15.4, 0.05, "bar top");
        foreach (var z in new[] { 13.9, 12.4, 10.9, 9.4, 8.2 })
        {
            Face(b, z);
        }

        b.Step("B4", "last pass");
        Face(b, 8);
        b.Holding("by hand", null).Step("h2", "break all edges").Hand(new Handwork { Work = "break edges" });
        return b;
    }

    // Half the finder beyond the raw edge: -33 - 5 and -22.5 - 5.
    private static void Zero(CourseBuilder b, double height)
    {
        b.Step("1", "zero").Side(Axis.X, 1, new Place3(-38, 0, height), 5, -38, "left end");
        b.Side(Axis.Y, 1, new Place3(0, -27.5, height), 5, -27.5, "near side");
    }

    private static void Face(CourseBuilder b, double z)
    {
        foreach (var y in Rows)
        {
            b.Free(z: z + 5).Free(42, y).Free(z: z).Cut(x: -42);
        }

        b.Free(z: z + 5);
    }

    // 30 + 11.96/2 = 35.98, to the dial's 0.05 with metal left: 36.00. Y: 20 + 5.98 = 25.98, 26.00.
    private static void Sides(CourseBuilder b, double z, double allow)
    {
        double x = 36 + allow, y = 26 + allow;
        b.Free(z: 5).Free(44, y - 2).Free(y: y).Free(z: z).Cut(x: -44);
        b.Free(z: 5).Free(-x - 2, 34).Free(x: -x).Free(z: z).Cut(y: -34);
        b.Free(z: 5).Free(-44, -y - 2).Free(y: -y).Free(z: z).Cut(x: 44);
        b.Free(z: 5).Free(x - 2, -34).Free(x: x).Free(z: z).Cut(y: 34);
        b.Free(z: 5);
    }

    private static void Holes(CourseBuilder b)
    {
        (double X, double Y)[] screws = [(-24, -14), (24, -14), (-24, 14), (24, 14)];
        (double X, double Y)[] rods = [(-16, 0), (16, 0)];
        Drill(b, "A8", new CutterIn("sd6", 900), [.. rods, .. screws], -2.2);
        Drill(b, "A9", new CutterIn("d5.5", 900), screws, -12.675);
        Drill(b, "A10", new CutterIn("cb10", 400), screws, -5.15);
        Drill(b, "A11", new CutterIn("d11", 400), rods, -11.8);
        Drill(b, "A12", new CutterIn("bar9", 400) { Across = 12.0215 }, rods, -8.5);
    }

    private static void Drill(CourseBuilder b, string id, CutterIn cutter, (double X, double Y)[] places, double z)
    {
        // The counterbore is touched off with its pilot in a hole, and lifted past it.
        var (at, clear) = cutter.Cutter == "cb10" ? (places[0], 8) : ((0, -8), 5);
        b.Step(id, cutter.Cutter).Put(cutter).Paper(cutter.Cutter, at.X, at.Y, 0, 0.05, "faced top").Free(z: clear);
        foreach (var (x, y) in places)
        {
            b.Free(x - 2, y - 2).Free(y: y).Free(x: x).Cut(z: z).Free(z: clear);
        }
    }

    private static SetupFacts Setup(string up, double near, double far, double top) => new()
    {
        Up = up,
        PartOrigin = default,
        Axes = new(new(-125, 125, false, 0.05, 0.25), new(-55, 55, false, 0.05, 0.2), new(-90, 90, false, 0.025, 0.15), new(null, null, false, 0, 0)),
        Fixtures = [.. HandCourse.Vise(near, far, -37.5, 37.5, top, 28)],
    };
}
