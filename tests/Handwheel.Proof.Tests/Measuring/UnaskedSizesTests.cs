using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;
using Handwheel.Proof.Tests.Crank;
using Handwheel.Proof.Tests.Plate;

namespace Handwheel.Proof.Tests.Measuring;

/// <summary>Sizes that nobody asked for and that have no two faces are told in one note; one that was asked for keeps its own.</summary>
public sealed class UnaskedSizesTests
{
    private const string Text = """
        job   Grooved plate
        unit  mm
        metal aluminium
        shop  home.handwheel
        drawing
          base   block 40 by 20 at 0, 0       from -10 to 0
          left   cut block 40 by 3 at 0, 6    from -4 to 0
          right  cut block 40 by 3 at 0, -6   from -4 to 0
        ASKED  others +/-0.1
        stock bar 20 wide, 10 high, 40 long
          x from -20
          z top 0
        holding A in large vise
          zero x on left end of stock by finder
        """;

    // By hand: a groove from end to end of the plate has no ends of its own, so neither is long.
    [Theory]
    [InlineData("", 0)]
    [InlineData("  size left long 40 +/-0.1\n", 1)]
    public void They_are_told_together(string asked, int own)
    {
        var job = JobReader.Read("grooved.handwheel", Text.Replace("ASKED", asked, StringComparison.Ordinal), CrankCourse.Example).Value!;
        var b = new CourseBuilder().Holding("A", PlateCourse.Setup());
        b.Step("A1", "zero x on left end").Touch(PlateCourse.Side(Handwheel.Jobs.Moves.Axis.X, -25, 1));
        var sizes = Prover.Prove(b.Build(null), job.Drawing, job.Stock, CrankCourse.Shop).Findings.Where(f => f.Message.Contains("no two faces", StringComparison.Ordinal)).ToList();
        var note = Assert.Single(sizes, f => f.Grade == Grade.Note);
        Assert.Contains(own == 0 ? "left long, right long" : "right long", note.Message, StringComparison.Ordinal);
        Assert.Equal(own, sizes.Count(f => f.Grade == Grade.Caution && f.Message.StartsWith("left long", StringComparison.Ordinal)));
    }
}
