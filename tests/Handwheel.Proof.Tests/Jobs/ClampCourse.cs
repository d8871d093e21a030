using Handwheel.Jobs.Moves;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Jobs;

/// <summary>The T-slot clamp&#39;s course written by hand from its workings: the first of the two, out of the whole bar.</summary>
internal static class ClampCourse
{
    private const double Half = 7.98;

    public static CourseBuilder Build(CourseBuilder b)
    {
        Squared(b, "A", "top", 0, (-11, 11), (4, 104), -4, 1, [0.5, 0], [3, -6]);
        b.Holding("by hand", null).Step("h1", "deburr").Hand(new Handwork { Work = "break edges" });
        Squared(b, "B", "front", 0, (-16, 0), (4, 104), 1, 11, [10.5, 10, 9.975], [-4, -12]);
        b.Holding("by hand", null).Step("h2", "deburr").Hand(new Handwork { Work = "break edges" });
        Squared(b, "C", "back", 180, (-16, 0), (-104, -4), 2.025, 11, [10.5, 10.175, 9.975], [-4, -12]);
        b.Holding("by hand", null).Step("h3", "deburr").Hand(new Handwork { Work = "break edges" });
        Squared(b, "D", "underside", 0, (-9.975, 9.975), (4, 104), 12, 16, [15.5, 15.2, 15], [3, -6]);
        b.Holding("by hand", null).Step("h4", "saw right end to the line, allow 2").Hand(new Handwork { Work = "saw", At = new Place3(52, 0, -7.5), Direction = new Place3(1, 0, 0), Depth = 100, Feature = "right end" });
        b.Step("h5", "deburr").Hand(new Handwork { Work = "break edges" });
        Ends(b);
        Tongue(b);
        Nose(b);
        b.Holding("by hand", null).Step("h7", "break all edges").Hand(new Handwork { Work = "break edges" });
        return b;
    }

    private static SetupFacts Setup(string up, double turn, double tiltY, (double Near, double Far) jaws, (double Left, double Right) along, double top) => new()
    {
        Up = up,
        Turn = turn,
        TiltY = tiltY,
        PartOrigin = default,
        Axes = HandCourse.Axes(0.005),
        Fixtures = [.. HandCourse.Vise(jaws.Near, jaws.Far, along.Left, along.Right, top, 32)],
    };

    private static void Zero(CourseBuilder b, string id, double left, double fixedJaw, double height)
    {
        b.Step(id, "zero").Side(Axis.X, 1, new Place3(left - 5, fixedJaw - 4, height), 5, left - 5, "left end");
        b.Touch(new TouchOff { Axis = Axis.Y, On = "fixture", Surface = "fixed jaw", At = new Place3(left + 20, fixedJaw, height), Towards = 1, With = "indicator", SetTo = fixedJaw });
    }

    // One side of the bar: zero, and every pass in two rows fed towards minus.
    private static void Squared(CourseBuilder b, string name, string up, double turn, (double Near, double Far) jaws, (double Left, double Right) along, double top, double raw, double[] depths, double[] rows)
    {
        b.Holding(name, Setup(up, turn, 0, jaws, along, top));
        var left = turn == 0 ? -2 : -110;
        Zero(b, name + "1", left, jaws.Far, top + 1);
        b.Step(name + "4", "face").In("em16").TouchZ("em16", left + 50, rows[0], raw + 0.05);
        Face(b, depths, rows, left + 126, left - 12);
    }

    private static void Face(CourseBuilder b, double[] depths, double[] rows, double from, double to)
    {
        foreach (var z in depths)
        {
            foreach (var y in rows)
            {
                b.Free(z: depths[0] + 8).Free(from, y).Free(z: z).Cut(x: to);
            }
        }

        b.Free(z: depths[0] + 8);
    }

    private static void Ends(CourseBuilder b)
    {
        double[] passes = [-2, -4, -6, -8, -10, -12, -14, -15.5];
        b.Holding("E", Setup("top", 0, 0, (-9.975, 9.975), (10, 110), -3));
        Zero(b, "E1", -2, 9.975, -2.5);
        b.Step("E4", "side body, left end").In("em16").TouchZ("em16", 25, 0, 0.05);
        foreach (var z in passes)
        {
            b.Free(z: 5).Free(-Half, 22).Free(z: z).Cut(y: -22);
        }

        b.Free(z: 5);
        Hole(b, "E5", "sd6", 5, (8, -2), (25, -2.64));
        Hole(b, "E6", "d5", 5, (8, -17.005));
        Hole(b, "E7", "d6.6", 5, (25, -17.485));
        Hole(b, "E8", "cb11", 10, (25, -6.6));
        Hole(b, "E9", "tap6", 5, (8, -19.5));
        b.Holding("by hand", null).Step("h6", "deburr").Hand(new Handwork { Work = "break edges" });
        b.Holding("F", Setup("top", 0, 0, (-9.975, 9.975), (-60, 40), -3));
        Zero(b, "F1", 0, 9.975, -2.5);
        b.Step("F4", "side body, right end, allow 0.2").In("em16").TouchZ("em16", 15, 0, 0.05);
        foreach (var z in passes)
        {
            b.Free(z: 5).Free(50.2 + Half, -22).Free(z: z).Cut(y: 22);
        }

        b.Step("F5", "last pass").Free(z: 5).Free(50 + Half, -22).Free(z: -15.5).Cut(y: 22).Free(z: 5);
    }

    private static void Hole(CourseBuilder b, string id, string cutter, double clear, params (double X, double Z)[] places)
    {
        // The counterbore is touched off with its pilot in the hole, and lifted past it.
        b.Step(id, cutter).In(cutter).TouchZ(cutter, cutter == "cb11" ? 25 : 38, 0, 0.05).Free(z: clear);
        foreach (var (x, z) in places)
        {
            b.Free(x, 0).Cut(z: z).Free(z: clear);
        }
    }

    // Tongue 7.9 aimed: 3.95 + 15.96/2 = 11.93.
    private static void Tongue(CourseBuilder b)
    {
        b.Holding("by hand", null).Step("h6b", "deburr").Hand(new Handwork { Work = "break edges" });
        b.Holding("G", Setup("underside", 0, 0, (-9.975, 9.975), (-25, 75), 7));
        Zero(b, "G1", 0, 9.975, 10);
        b.Step("G4", "side tongue, allow 0.2").In("em16").TouchZ("em16", 40, 0, 15.05);
        foreach (var (y, z) in new[] { (12.13, 14.0), (12.13, 13), (12.13, 12), (11.93, 12) })
        {
            b.Free(z: 20).Free(62, y).Free(z: z).Cut(x: -12).Free(z: 20).Free(-12, -y).Free(z: z).Cut(x: 62);
        }

        b.Free(z: 20);
    }

    // Tilted 30 deg: the corner (50, 0) stands at 50 sin 30 = 25, the nose's plane at 40 sin 30 = 20, the lower corner at x = 50 cos 30 + 15 sin 30 = 50.801.
    private static void Nose(CourseBuilder b)
    {
        b.Holding("by hand", null).Step("h6c", "deburr").Hand(new Handwork { Work = "break edges" });
        b.Holding("H", Setup("top", 0, -30, (-9.975, 9.975), (-25, 75), 8));
        b.Step("H1", "zero").Side(Axis.X, -1, new Place3(55.801, 0, 11), 5, 55.801, "right end");
        b.Touch(new TouchOff { Axis = Axis.Y, On = "fixture", Surface = "fixed jaw", At = new Place3(20, 9.975, 9), Towards = 1, With = "indicator", SetTo = 9.975 });
        b.Step("H4", "face nose").In("em16").TouchZ("em16", 43, 0, 25.05);
        Face(b, [24.5, 24, 23.5, 23, 22.5, 22, 21.5, 21, 20.5, 20], [4, -5], 62, 22);
    }
}
