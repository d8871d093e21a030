using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;
using Handwheel.Proof;

namespace Handwheel.Cases.Tests.Written;

/// <summary>A hole bored to a fit: from the hole that is there, the head set pass by pass, the last by what is measured.</summary>
public sealed class BoringTests
{
    private const string Job = """
        job   Bearing block
        unit  mm
        metal brass, free-cutting
        shop  home.handwheel
        drawing
          base   block 50 by 40 at 0, 0     from -10 to 0
          seat   hole 12 H7 at 0, 0         through
          others +/-0.1
        stock bar 40 wide, 10 high, 50 long
          x middle 0
        holding A in large vise, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          spot seat
          drill seat through with d6.6
          counterbore seat to -10.5 with cb11
          STEPS
        """;

    private static Whole Cut(string steps) => new(Job.Replace("STEPS", steps, StringComparison.Ordinal));

    private static double[] Heads(Whole job, string step) => [.. job.Plan!.Course.Stages.SelectMany(s => s.Steps).Single(s => s.Id == step).Events.OfType<HeadOpened>().Select(h => h.Across)];

    // ISO 286-1: 12 H7 is 12 to 12.018, aimed at 12.009. The counterbore left 11; 0.125 a side twice at the end, measured between, the rest before.
    [Fact]
    public void A_close_bore_is_measured_before_two_cuts_alike_end()
    {
        var job = Cut("bore seat through with bar8");
        Assert.Empty(job.Halts);
        var heads = Heads(job, "A7");
        Assert.Equal(12.009, heads[^1], 9);
        Assert.Equal(12.009 - 0.25, heads[^2], 0.01);
        Assert.Equal(12.009 - 0.5, heads[^3], 0.01);
        Assert.Equal(11, job.Lines("A7").OfType<HeadLine>().First().Across - job.Lines("A7").OfType<HeadLine>().First().Opens!.Value, 3);
        var lines = job.Lines("A7").ToList();
        var measured = Assert.Single(lines.OfType<MeasureLine>());
        Assert.Equal(heads[^2], measured.Expected, 9);
        Assert.All(measured.Strip, s => Assert.Equal(12.009 - s.Measures, s.CrankTo, 9));
        Assert.True(lines.IndexOf(measured) < lines.FindLastIndex(l => l is HeadLine) && lines.IndexOf(measured) > lines.FindIndex(l => l is HeadLine));
        Assert.Equal(12.009, job.Proof!.Sizes.Single(s => s.Name == "seat across").Greatest!.Value, 3);
    }

    // 12.009 less twice 0.1; then what it measures decides.
    [Fact]
    public void Metal_left_is_taken_by_what_is_measured()
    {
        var job = Cut("bore seat through with bar8, 0.2 a pass, allow 0.1\n  measure seat across, then last pass");
        Assert.Empty(job.Halts);
        var heads = Heads(job, "A7");
        Assert.Equal(12.009 - 0.2, heads[^1], 9);
        Assert.All(heads.Prepend(11).Zip(heads), h => Assert.InRange((h.Second - h.First) / 2, 0, 0.2 + 0.005));
        Assert.Equal(12.009 - 0.2, job.Lines("A8").OfType<MeasureLine>().Single().Expected, 9);
        Assert.Equal([12.009], Heads(job, "A8").Select(h => Math.Round(h, 9)));
    }

    // A head opened a tenth too far: the hole's wall is gone past its limit.
    [Fact]
    public void A_head_set_too_wide_halts()
    {
        var job = Cut("bore seat through with bar8");
        var course = job.Plan!.Course;
        var wide = course with { Stages = [.. course.Stages.Select(s => s with { Steps = [.. s.Steps.Select(t => t with { Events = [.. t.Events.Select(e => e is HeadOpened { Across: > 12 } head ? head with { Across = head.Across + 0.1 } : e)] })] })] };
        var proof = Prover.Prove(wide, job.Plan.Job.Drawing, job.Plan.Job.Stock, job.Plan.Shop);
        Assert.Contains(proof.Findings, f => f is { Grade: Grade.Halt, Code: "size" or "gouge", Step: "A7" });
    }

    // Common practice, no source: a close bore is measured with what the shop has for bores, a caliper's nibs ride on its curve.
    [Fact]
    public void A_bore_gauge_of_the_shop_is_named()
    {
        var job = new Whole(Job.Replace("STEPS", "bore seat through with bar8", StringComparison.Ordinal), shop => shop + "\nbg  bore gauge 10 to 18\n");
        Assert.Equal("bore gauge bg", Assert.Single(job.Lines("A7").OfType<MeasureLine>()).With);
    }

    [Fact]
    public void Nothing_is_left_by_a_drill() =>
        Assert.Contains(Cut("drill seat through with d6.8, allow 0.1").All, f => f.Code == "cannot-plan" && f.Mend.Contains("'bore seat with' a boring bar, 'allow 0.1'", StringComparison.Ordinal));

    [Fact]
    public void The_moves_file_keeps_how_the_head_is_set()
    {
        var job = Cut("bore seat through with bar8");
        var text = CourseFile.Write(job.Plan!.Course);
        Assert.Equal(text, CourseFile.Write(CourseFile.Read("moves.json", text).Course!));
        Assert.Contains(CourseFile.Read("moves.json", text.Replace("\"across\": 12.009", "\"across\": -1", StringComparison.Ordinal)).Findings, f => f.Code == "moves-file" && f.Message.Contains("the boring head is set to -1", StringComparison.Ordinal));
    }
}
