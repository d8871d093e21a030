using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Holding;

/// <summary>Work in a chuck, whose jaws stand all round it, and the waste that a hand saw drops.</summary>
public sealed class ChuckAndHandSawTests
{
    private const string Text = """
        job   Peg
        unit  mm
        metal brass
        shop  home.handwheel
        drawing
          peg   round 20 at 0, 0   from -30 to 0
          others +/-0.1
        stock round 20, 40 long, along z
          z top 0
        holding A in three chuck on rotary
          zero x, y on rotary centre
        """;

    private static Job Job { get; } = JobReader.Read("peg.handwheel", Text, CrankCourse.Example).Value!;

    [Theory]
    [InlineData(20, false)]
    [InlineData(26, true)]
    public void A_chuck_holds_what_its_jaws_touch(double bore, bool halts)
    {
        var found = Prove(bore, 30, 0);
        Assert.Equal(halts, found.Any(f => f is { Code: "grip", Grade: Grade.Halt }));
    }

    [Theory]
    [InlineData(-30, false)]
    [InlineData(-31, true)]
    public void A_hand_saw_drops_all_beyond_its_cut(double at, bool leftover)
    {
        var found = Prove(20, -at, 12);
        Assert.Equal(leftover, found.Any(f => f is { Code: "leftover", Grade: Grade.Halt }));
        Assert.DoesNotContain(found, f => f.Code == "gouge");
    }

    private static IReadOnlyList<Finding> Prove(double bore, double sawnAt, double waste)
    {
        var b = new CourseBuilder();
        var setup = CrankCourse.Setup(0) with
        {
            Fixtures = [new FixtureFacts { Name = "chuck jaws", Holds = true, Turns = true, Across = 80, Bore = bore, Least = new Place3(0, 0, -40), Most = new Place3(0, 0, -33) }],
        };
        b.Holding("A", setup).Step("A1", "zero x, y on rotary centre").Centre();
        b.Holding("by hand", null).Step("h1", "saw underside").Hand(new Handwork { Work = "saw", At = new Place3(0, 0, -sawnAt), Direction = new Place3(0, 0, -1), Depth = Math.Max(waste, 1e-3), Feature = "underside" });
        return Prover.Prove(b.Build("h1"), Job.Drawing, Job.Stock, CrankCourse.Shop).Findings;
    }
}
