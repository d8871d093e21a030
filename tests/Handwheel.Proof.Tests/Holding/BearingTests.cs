using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Proof.Loads;
using Handwheel.Proof.Tests.Crank;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Tests.Holding;

/// <summary>
/// What flat jaws meet: a face, two lines of a round, a corner, an edge under a chamfer, or nothing (plane geometry, by hand; how much it holds: common practice,
/// no source).
/// </summary>
public sealed class BearingTests
{
    private const string Text = """
        job   Peg
        unit  mm
        metal brass
        shop  home.handwheel
        drawing
          peg  PART
          others +/-0.1
        stock STOCK
        holding A in large vise
          zero x on left end of stock by finder
        """;

    // A round of 44 upright: jaws 44 apart meet it on two lines, whichever way they stand, and however far it lies along them (the middle of it between two
    // places of any net); jaws a tenth further apart on each side miss it.
    [Theory]
    [InlineData(22, 0, 0, null)]
    [InlineData(22, 0, 3.7, null)]
    [InlineData(22, 90, 0, null)]
    [InlineData(22.1, 0, 0, "bears on the work")]
    public void A_round_stands_between_flat_jaws_on_two_lines(double half, double turn, double along, string? halt)
    {
        var found = Prove("round 44 at 0, 0 from -30 to 0", "round 44, 30 long, along z\n  z top 0", Setup(half, -30, -10) with { Turn = turn, PartOrigin = new(along, 0, 0) });
        if (halt is not null)
        {
            Assert.Contains(found, f => f is { Code: "grip", Grade: Grade.Halt } && f.Message.Contains(halt, StringComparison.Ordinal));
            return;
        }

        var grip = Assert.Single(found, f => f.Code == "grip");
        Assert.Equal((Grade.Caution, true), (grip.Grade, grip.Message.Contains("on two upright lines only", StringComparison.Ordinal)));
        Assert.Contains("V-block", grip.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Soft_jaws_give_and_hold_a_round()
    {
        var hard = Setup(22, -30, -10);
        var soft = hard with { Fixtures = [.. hard.Fixtures.Select(f => f with { Soft = true })] };
        Assert.DoesNotContain(Prove("round 44 at 0, 0 from -30 to 0", "round 44, 30 long, along z\n  z top 0", soft), f => f.Code == "grip");
    }

    // A round of 12 along the jaws, its middle at Z -6: jaws up to -2 reach past it; up to -5.5 hardly; up to -8 they meet it 2 below its middle, where its
    // side leans out by asin(2/6) = 19 deg, more than friction of 0.1 (6 deg) holds down: it is squeezed out.
    [Theory]
    [InlineData(-2, 6, Grade.Caution, "on two lines along them only")]
    [InlineData(-5.5, 6, Grade.Caution, "reaches only 0.500 mm above the line")]
    [InlineData(-8, 5.65685425, Grade.Halt, "squeezes the work out")]
    public void A_round_lies_along_the_jaws_past_its_middle(double top, double half, Grade grade, string said)
    {
        var found = Prove("round 12 at 0, -6 from -40 to 40, seen from right", "round 12, 80 long, along x\n  x from -40\n  z top 0", Setup(half, -30, top));
        Assert.Contains(found, f => f.Code == "grip" && f.Grade == grade && f.Message.Contains(said, StringComparison.Ordinal));
        Assert.Equal(grade == Grade.Halt, found.Any(f => f is { Code: "grip", Grade: Grade.Halt }));
    }

    // A hexagon of 17 across flats: between its flats it is held as any flat work; on two of its corners, 19.63 apart, on lines.
    [Theory]
    [InlineData(8.5, 0, false)]
    [InlineData(9.814954576, 30, true)]
    public void A_hexagon_lies_on_flats_or_on_corners(double half, double turn, bool lines)
    {
        var found = Prove("hexagon 17 across flats at 0, 0 from -30 to 0", "hex 17 across flats, 30 long, along z\n  z top 0", Setup(half, -30, -10) with { Turn = turn });
        Assert.Equal(lines ? [Grade.Caution] : [], found.Where(f => f.Code == "grip").Select(f => f.Grade));
    }

    // A bar 60 by 20 turned 10 deg stands 60 sin 10 + 20 cos 10 = 30.115 across the jaws and touches them with two opposite corners, which lie
    // 60 cos 10 - 20 sin 10 = 55.616 beside each other: the press turns it flat.
    [Fact]
    public void A_bar_set_askew_is_turned_by_the_jaws()
    {
        var half = ((60 * Math.Sin(Math.PI / 18)) + (20 * Math.Cos(Math.PI / 18))) / 2;
        var found = Prove("block 60 by 20 at 0, 0 from -30 to 0", "bar 20 wide, 30 high, 60 long\n  x from -30", Setup(half, -30, -10) with { Turn = 10 });
        var grip = Assert.Single(found, f => f is { Code: "grip", Grade: Grade.Halt });
        Assert.Contains("55.616 mm beside each other", grip.Message, StringComparison.Ordinal);
    }

    // 4000 N on two faces at 0.10 (lines): 800 N of friction. Against 200 N across and 0 of lift: slides 4.00 times over. The lines 20 apart hold 800 x 10 N mm;
    // the cut 25 from the middle asks 200 x 25: 1.60 times over, and it turns first. Held 12 deep with the cut 46 above the middle of that: 4000 x 12 / 2 against
    // 200 x 46 is 2.61 times over. Lying, 25 above the lines, it rolls at the same 1.60.
    [Theory]
    [InlineData(true, 25, 6, 1.6, "turns")]
    [InlineData(true, 5, 6, 4.0, "slides")]
    [InlineData(true, 5, 46, 2.6086956, "rocks")]
    [InlineData(false, 0, 25, 1.6, "rolls")]
    public void Friction_along_lines_is_summed(bool upright, double beside, double above, double margin, string way)
    {
        var held = new HeldWork(4000, GripStrength.LineFriction * 2 * 4000, -6, 6, false, new(default, 10, 0, upright));
        var load = new CutLoad { Stroke = null!, At = default, SideN = 200 };
        var (found, how) = held.Against(load, new Point3(beside, 0, above));
        Assert.Equal(way, how);
        Assert.Equal(margin, found, 1e-6);
    }

    private static SetupFacts Setup(double half, double low, double top)
    {
        var axis = new AxisFacts(-100, 100, Readout: true, 0.005, 0.12);
        return new SetupFacts
        {
            Up = "top",
            PartOrigin = default,
            Axes = new AxesFacts(axis, axis, axis, new AxisFacts(null, null, Readout: false, 0, 0)),
            Fixtures =
            [
                new FixtureFacts { Name = "fixed jaw", Holds = true, Least = new Place3(-50, half, low), Most = new Place3(50, half + 16, top) },
                new FixtureFacts { Name = "moving jaw", Holds = true, Least = new Place3(-50, -half - 16, low), Most = new Place3(50, -half, top) },
            ],
        };
    }

    private static IReadOnlyList<Finding> Prove(string part, string stock, SetupFacts setup)
    {
        var text = Text.Replace("PART", part, StringComparison.Ordinal).Replace("STOCK", stock, StringComparison.Ordinal);
        var read = JobReader.Read("peg.handwheel", text, CrankCourse.Example);
        Job job = read.Value ?? throw new InvalidOperationException(string.Join("; ", read.Findings.Select(f => f.Message)));
        var b = new CourseBuilder();
        b.Holding("A", setup).Step("A1", "zero x on left end").Touch(new TouchOff { Axis = Axis.X, On = "fixture", Surface = "fixed jaw", At = default, With = "indicator", SetTo = 0 });
        return Prover.Prove(b.Build(null), job.Drawing, job.Stock, CrankCourse.Shop).Findings;
    }
}
