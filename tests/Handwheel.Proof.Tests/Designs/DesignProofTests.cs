using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;
using Handwheel.Proof.Designs;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Designs;

/// <summary>Lines of a design against worked figures from outside; each names its source.</summary>
public sealed class DesignProofTests
{
    // A strip 100 x 20 x 10 with posts to hold and load it, a tapped hole, a square socket, a bore; limits of a thousandth, so that worst is nearly nominal.
    private const string Drawing = """
          strip   block 100 by 20 at 0, 0       from -10 to 0
          left    round 4 at -40, 0             from 0 to 1
          right   round 4 at 40, 0              from 0 to 1
          middle  round 4 at 0, 0               from 0 to 1
          tapped  hole 5 at -20, 0              through, thread M6
          bore    hole 10 H7 at 20, 0           through
          socket  cut square 8 at -30, 0        through
          spigot  cone 10 to 8 at 60, 0         from -20 to 0
          loose   round 10 f7 at 80, 0          from -10 to 0
          blind   cut round 6 at 30, 6          from -6 to 0
          others  +/-0.001
        """;

    private static DesignResult Check(string line, string metal = "mild steel", string unit = "mm", string drawing = Drawing)
    {
        var text = $"job t\nunit {unit}\nmetal {metal}\nshop home.handwheel\ndrawing\n{drawing}\ndesign\n  {line}\nstock bar 40 wide, 40 high, 300 long\n  x from -100\n  z top 5\nholding A in large vise\n  zero x on middle of stock\n";
        var read = JobReader.Read("t.handwheel", text, CrankCourse.Example);
        Assert.Equal(string.Empty, string.Concat(read.Findings.Where(f => f.Code != "stock-short").Select(f => FindingPrinter.Print(f, (_, _) => null))));
        return Assert.Single(DesignProof.Of(read.Value!.Drawing, read.Value.Stock, read.Shop, read.Value.Unit));
    }

    private static double Value(DesignResult result, string name) => result.Answers.First(a => a.Name.Contains(name, StringComparison.Ordinal)).Number!.Value;

    [Fact]
    public void A_screw_s_proof_load_is_the_standard_s()
    {
        // ISO 898-1 Table 5: M6, 8.8: stress area 20.1 mm2, proof load 11 600 N. SAE J429: 1/4-20, grade 5: 0.0318 in2 x 85 000 psi = 2 700 lbf.
        Assert.Equal(11_600, Value(Check("screw M6, 12 engaged, pull 2 kN, grade 8.8"), "proof load"), 120.0);
        Assert.Equal(2700 * 4.4482216, Value(Check("screw 1/4-20 UNC, 12 engaged, pull 2 kN, grade 5"), "proof load"), 60.0);
    }

    [Fact]
    public void A_torque_pulls_as_the_short_formula_says()
    {
        // T = K F d (Shigley 9th ed. Eq. 8-27): 1/4-20, plated (0.20), 101 lbf in pulls 2020 lbf.
        var result = Check("screw 1/4-20 UNC, 12 engaged, torque 101 lbf in");
        Assert.Equal(2020 * 4.4482216, Value(result, "pull by that torque"), 10.0);
    }

    [Theory]
    [InlineData(1, Grade.Halt)]
    [InlineData(12, null)]
    public void Short_threads_strip_in_soft_metal(double engaged, Grade? grade)
    {
        // A diameter and a half in aluminium holds more than the screw (shop rule); one turn of M6 does not hold 4 kN.
        var result = Check(FormattableString.Invariant($"screw M6, {engaged} engaged, pull 4 kN, in 6061"));
        Assert.Equal(grade, result.Grade);
        Assert.Contains(grade is null ? "the screw stretches" : "the thread in aluminium 6061 strips", result.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tapped_hole_is_engaged_as_the_drawing_has_it()
    {
        // 10 thick less the limits of its two faces and one pitch.
        Assert.Equal(9, Value(Check("screw tapped, pull 1 kN"), "thread engaged"), 0.01);
    }

    [Fact]
    public void Morse_tapers_hold_themselves_and_steep_ones_do_not()
    {
        // Morse 2: 0.59941 in per foot, half angle 1 deg 25' 50" (ASME B5.10); 7/24: 8 deg 17' 50" (ISO 297). A fact of the trade which of them stays in without its bolt.
        var morse = Check("taper Morse 2, pull 4 kN, drives 1 N m");
        Assert.Equal(1.4306, Value(morse, "half angle"), 3e-4);
        Assert.Null(morse.Grade);
        var steep = Check("taper 7/24 30");
        Assert.Equal(8.2971, Value(steep, "half angle"), 3e-4);
        Assert.Equal(Grade.Halt, steep.Grade);
        Assert.Null(Check("drawbar M12 on 7/24 30, torque 25 N m").Grade);
    }

    [Fact]
    public void A_cone_s_torque_is_that_of_statics()
    {
        // Cone clutch, any machine-design text: T = mu F d / (2 (sin a + mu cos a)); a = atan(1/20), d 9, mu 0.10, 1000 N: 3.0 N m.
        var a = Math.Atan(1.0 / 20);
        Assert.Equal(0.1 * 1000 * 9 / (2 * (Math.Sin(a) + (0.1 * Math.Cos(a)))) / 1000, Value(Check("taper spigot, pull 1 kN, drives 0.5 N m"), "torque by friction"), 0.01);
        Assert.Equal(Grade.Halt, Check("taper spigot, pull 1 kN, drives 5 N m").Grade);
    }

    [Theory]
    [InlineData("fit bore with shaft 10 f7, to slide", 0.013, 0.043, null)]
    [InlineData("fit bore with shaft 10 p6, to press", -0.024, 0, null)]
    [InlineData("fit bore with shaft 10 p6, to slide", -0.024, 0, Grade.Halt)]
    [InlineData("fit bore with dowel 10 m6, to press", -0.015, 0.009, Grade.Caution)]
    [InlineData("fit bore H7/g6, to slide", 0.005, 0.029, null)]
    [InlineData("fit bore H8/g6", 0.005, 0.029, null)]
    [InlineData("fit bore H6/g6", 0.005, 0.029, Grade.Halt)]
    [InlineData("fit bore with loose, clear 0.01 to 0.05", 0.013, 0.043, null)]
    [InlineData("fit bore with loose, clear 0.02 to 0.05", 0.013, 0.043, Grade.Halt)]
    public void Fits_are_those_of_the_standard(string line, double least, double most, Grade? grade)
    {
        // ISO 286-2, over 6 to 10: H7 +15 0; f7 -13 -28; p6 +24 +15; m6 +15 +6; g6 -5 -14; H6 +9 0; H8 +22 0 (micrometres).
        var result = Check(line);
        Assert.Equal(least, Value(result, "least clearance"), 1e-9);
        Assert.Equal(most, Value(result, "greatest clearance"), 1e-9);
        Assert.Equal(grade, result.Grade);
    }

    [Fact]
    public void A_press_of_one_metal_has_the_closed_form_s_pressure()
    {
        // Shigley 9th ed. Eq. 3-57, solid shaft: p = E delta / (2 d) (1 - d^2/D^2); s6 in H7 is at most 32 um tight (ISO 286-2), 20 outside, E 205 GPa: 246 MPa.
        var result = Check("press bore with pin 10 s6, 10 long, outside 20");
        Assert.Equal(205_000 * 0.032 / 20 * 0.75, Value(result, "greatest pressure"), 2.0);
        Assert.Equal(Grade.Halt, Check("press bore with pin 10 f7, 10 long, outside 20").Grade);
    }

    [Theory]
    [InlineData("wall bore to strip, at least 4.9", 5, null)]
    [InlineData("wall bore to strip, at least 5.1", 5, Grade.Halt)]
    [InlineData("wall tapped to bore, at least 30", 32, null)]
    [InlineData("wall blind to strip, at least 0.9", 1, null)]
    [InlineData("wall blind to strip, at least 1.1", 1, Grade.Halt)]
    public void Walls_are_plane_geometry(string line, double wall, Grade? grade)
    {
        // 10 - 5; 40 - 3 (M6, not its drill) - 5; 10 - 6 - 3; with the thousandths of their limits off.
        var result = Check(line);
        Assert.Equal(wall, Value(result, "thinnest"), 0.02);
        Assert.True(Value(result, "thinnest") <= wall);
        Assert.Equal(grade, result.Grade);
    }

    // A block 60 x 40 x 30 with holes from three sides, by hand: axes at right angles 12 apart, less 5 and 3; 6 deep over a hole whose top is 11 down; the floor of
    // a pit 10 over an axis, less 3; its edge at (4, -10) from the axis at (14, -24): sqrt(10^2 + 14^2) - 3; a hole's side to the block's, 20 - 12 - 3; a blind
    // hole's bottom, 30 - 25; a tapped hole counts as M6: 15 - 3 - 5.
    [Theory]
    [InlineData("up", "across", 4)]
    [InlineData("groove", "under", 5)]
    [InlineData("pit", "below", 7)]
    [InlineData("pit", "beside", 14.2046505)]
    [InlineData("across", "body", 5)]
    [InlineData("blind", "body", 5)]
    [InlineData("screw", "up", 7)]
    public void Walls_between_sides_drawn_otherwise_are_geometry(string first, string second, double wall)
    {
        const string block = """
              body    block 60 by 40 at 0, 0        from -30 to 0
              up      hole 10 at 0, 0               through
              across  cut round 6 at 12, -15        from -30 to 30, seen from right
              groove  cut block 60 by 8 at 0, 12    from -6 to 0
              under   cut round 6 at 20, -14        from -20 to 20, seen from front
              pit     cut round 8 at -20, 0         from -10 to 0
              below   cut round 6 at 0, -20         from -30 to 30, seen from right
              beside  cut round 6 at 14, -24        from -30 to 30, seen from right
              blind   cut round 6 at 0, -15         from -25 to 30, seen from right
              screw   hole 5 at 15, -15             through, seen from front, thread M6
              others  +/-0.001
            """;
        foreach (var (a, b) in new[] { (first, second), (second, first) })
        {
            var result = Check(FormattableString.Invariant($"wall {a} to {b}, at least {wall - 0.02:0.00}"), drawing: block);
            Assert.Equal(wall, Value(result, "thinnest"), 0.01);
            Assert.Null(result.Grade);
            Assert.Equal(Grade.Halt, Check(FormattableString.Invariant($"wall {a} to {b}, at least {wall + 0.02:0.00}"), drawing: block).Grade);
        }
    }

    [Fact]
    public void A_bore_under_pressure_is_a_thick_cylinder()
    {
        // Lame (Shigley 9th ed. Eq. 3-50): 10 bar = 1 MPa, 5 and 10: (100 + 25) / (100 - 25) = 1.667 MPa.
        Assert.Equal(1.667, Value(Check("wall bore to strip, holds 10 bar"), "hoop stress"), 0.01);
    }

    [Fact]
    public void A_square_twists_as_saint_venant_says()
    {
        // Shigley 9th ed. Eq. 3-40 and its table: square, alpha 0.208: 10 N m on 8 mm is 93.9 MPa.
        Assert.Equal(10_000 / (0.208 * 512), Value(Check("drive socket, torque 10 N m, 10 long"), "twist"), 0.2);
        Assert.Equal(Grade.Halt, Check("drive socket, torque 30 N m, 10 long").Grade);
    }

    [Fact]
    public void A_strip_bends_as_the_handbook_s_beams_do()
    {
        // Shigley Table A-9, W = b h^2 / 6. Held at the middle, loaded at right: M = F (40 - x), and the bore at 20 leaves 20 - its chord of the width.
        double Left(double x) => 20 - (Math.Abs(x - 20) < 5 ? 2 * Math.Sqrt(25 - ((x - 20) * (x - 20))) : 0);
        var held = Check("bend under 100 N at right, held at middle");
        var expected = Enumerable.Range(20, 200).Max(i => 100 * (40 - (i / 10.0)) / (Left(i / 10.0) * 100 / 6));
        Assert.Equal(expected, Value(held, "greatest bending stress"), 0.02 * expected);

        // The same in plan, W = h b^2 / 6 of two strips that the bore parts: (20^3 - chord^3) x 10 / 12 / 10.
        var across = Check("bend under 100 N at right, held at middle, across");
        var inPlan = Enumerable.Range(20, 200).Max(i => 100 * (40 - (i / 10.0)) / ((8000 - Math.Pow(20 - Left(i / 10.0), 3)) * 10 / 12 / 10));
        Assert.Equal(inPlan, Value(across, "greatest bending stress"), 0.03 * inPlan);
        var supported = Check("bend under 1 kN at middle, resting on left and right");
        var inSocket = 1000.0 / 2 * (40 - 26) / (12 * 100 / 6.0);
        Assert.True(Value(supported, "greatest bending stress") > 0.95 * Math.Max(inSocket, 500 * 39 / 333.3));
        Assert.Equal(Grade.Halt, Check("bend under 20 kN at middle, resting on left and right").Grade);
        Assert.Equal(Grade.Caution, Check("bend under 1 kN at left, resting on middle and right").Grade);
    }
}
