using Handwheel.Jobs.Moves;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Jobs;

/// <summary>The clamp knob's course written by hand from its workings, as a machinist would: inches, rounded to .0005.</summary>
internal static class KnobCourse
{
    private const double In = 25.4;
    private const double Half500 = 0.2495;

    public static CourseBuilder Build(CourseBuilder b)
    {
        b.Holding("A", Setup("top", -2.075, -1.2, 1.625));
        b.Step("A1", "zero").Centre();
        Face(b, "A3", 0.030, 0, [0.6, 0.2, -0.2, -0.6], 1.3);
        Holes(b);
        b.Step("A7", "round head").In("em500").Paper("em500", 0.4 * In, 0, 0, 0.002 * In, "faced top");
        Round(b, [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.98], 0.75 + Half500 + 0.01);
        b.Step("A8", "measure head across");
        Round(b, [0.98], 0.75 + Half500);
        b.Step("A9", "round neck");
        Round(b, [0.1, 0.2, 0.3, 0.375], 0.6335);
        b.Step("A10", "measure neck across");
        Round(b, [0.375], 0.6235);
        b.Step("A11", "bites grips");
        for (var k = 0; k < 6; k++)
        {
            Free(b, z: 0.2).Free(t: b.Full(360 - (60 * k)));
            Free(b, 0.875, 0);
            for (var z = -0.4; z > -0.89; z -= 0.1)
            {
                Cut(b, z: z);
            }

            Cut(b, z: -0.89);
        }

        Free(b, z: 0.2);
        b.Step("A12", "saw under head").In("saw4").Free(t: b.Full(0));
        b.Touch(new TouchOff { Axis = Axis.Z, On = "metal", Surface = "faced top", At = new Place3(0, -1.4 * In, 0), With = "saw4", Paper = 0.002 * In, Face = "lower", SetTo = 0.002 * In });
        Free(b, z: 0.3);
        Free(b, -2.7, -1.31);
        Free(b, z: -0.9575);
        Cut(b, x: 0.4);
        Free(b, y: -3.2);
        Free(b, z: 0.3);
        b.Holding("by hand", null);
        b.Step("h1", "break the web").Hand(new Handwork { Work = "break web", At = new Place3(0, 0.72 * In, -0.92 * In), Direction = new Place3(0, 1, 0), Feature = "head" });
        b.Step("h2", "deburr").Hand(new Handwork { Work = "break edges" });
        Second(b);
        return b;
    }

    private static SetupFacts Setup(string up, double low, double high, double bore) => new()
    {
        Up = up,
        PartOrigin = default,
        Rotary = new RotaryFacts(0, 0, (low - 1) * In, Lies: false, -1, 0, 1.0 / 60),
        Axes = HandCourse.Axes(0.0005 * In),
        Fixtures =
        [
            HandCourse.Ring(3.125 * In, bore * In, low * In, high * In),
            new FixtureFacts { Name = "chuck", Turns = true, Across = 3.125 * In, Least = new Place3(0, 0, (low - 1) * In), Most = new Place3(0, 0, low * In) },
        ],
    };

    private static void Face(CourseBuilder b, string id, double raw, double to, double[] rows, double x)
    {
        b.Step(id, "face").In("em500").Paper("em500", 0.3 * In, 0, raw * In, 0.002 * In, "bar top");
        Rows(b, to, rows, x);
    }

    private static void Rows(CourseBuilder b, double to, double[] rows, double x)
    {
        foreach (var y in rows)
        {
            Free(b, z: to + 0.2);
            Free(b, x, y);
            Free(b, z: to);
            Cut(b, x: -x);
        }

        Free(b, z: to + 0.2);
    }

    private static void Holes(CourseBuilder b)
    {
        b.Step("A4", "spot screw").In("sd250").Paper("sd250", 0.4 * In, 0, 0, 0.002 * In, "faced top").Free(0, 0, 5).Cut(z: -0.0805 * In).Free(z: 5);
        b.Step("A5", "drill screw").In("no7").Paper("no7", 0.4 * In, 0, 0, 0.002 * In, "faced top").Free(0, 0, 5).Cut(z: -1.2105 * In).Free(z: 5);
        b.Step("A6", "tap screw").In("tapq").Paper("tapq", 0.4 * In, 0, 0, 0.002 * In, "faced top").Free(0, 0, 5).Cut(z: -1.1 * In).Free(z: 5);
    }

    private static void Round(CourseBuilder b, double[] depths, double x)
    {
        foreach (var depth in depths)
        {
            Free(b, 1.4, 0).Free(t: b.Full(0));
            Free(b, z: -depth);
            Cut(b, x: x).Cut(t: b.Turn(-360));
            Free(b, x: 1.4);
        }

        Free(b, z: 0.2);
    }

    private static void Second(CourseBuilder b)
    {
        b.Holding("B", Setup("underside", -0.5, 0.375, 0.7475));
        b.Step("B1", "zero").Centre();
        Face(b, "B3", 0.895, 0.885, [0.55, 0.15, -0.25, -0.64], 1.3);
        b.Step("B4", "measure head high");
        Rows(b, 0.875, [0.55, 0.15, -0.25, -0.64], 1.3);
        b.Step("B5", "pocket recess").In("em375").Paper("em375", 0.4 * In, 0, 0.875 * In, 0.002 * In, "faced top");
        foreach (var z in new[] { 0.835, 0.795, 0.755, 0.75 })
        {
            Free(b, 0, 0).Free(t: b.Full(0));
            Cut(b, z: z);
            Cut(b, x: 0.1155).Cut(t: b.Turn(360));
            Cut(b, x: 0);
        }

        Free(b, z: 1.2);
        b.Step("B6", "bore recess").Put(new CutterIn("bb375", 380) { Across = 0.626 * In });
        b.Paper("bb375", 0.45 * In, 0, 0.875 * In, 0.002 * In, "faced top");
        Free(b, z: 1.2);
        Free(b, 0, 0);
        Cut(b, z: 0.75);
        Free(b, z: 1.2);
        b.Holding("by hand", null);
        b.Step("h3", "break all edges").Hand(new Handwork { Work = "break edges" });
    }

    private static CourseBuilder Free(CourseBuilder b, double? x = null, double? y = null, double? z = null) => b.Free(x * In, y * In, z * In);

    private static CourseBuilder Cut(CourseBuilder b, double? x = null, double? y = null, double? z = null) => b.Cut(x * In, y * In, z * In);
}
