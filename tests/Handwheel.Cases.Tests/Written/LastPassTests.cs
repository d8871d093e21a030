using Handwheel.Plan.Lines;

namespace Handwheel.Cases.Tests.Written;

/// <summary>A size measured with metal left on one of its faces: whether cutting makes it less or more, worked out by hand; what is read, and what is then cranked to.</summary>
public sealed class LastPassTests
{
    private const string Job = """
        job   Step
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          body   block 60 by 24 at 30, 0    from -16 to 0
          boss   block 30 by 24 at 15, 0    from 0 to 6
          eye    hole 5 at 45, 0            through
          SIZE
          others +/-0.2
        stock bar 24 wide, 22 high, 60 long
          x from 0
          z top 6
        holding A in large vise, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          STEPS
        """;

    private static Whole Cut(string size, string steps, Func<string, string>? shop = null) =>
        new(Job.Replace("SIZE", size, StringComparison.Ordinal).Replace("STEPS", steps, StringComparison.Ordinal), shop);

    private static MeasureLine Measured(Whole job) => job.Plan!.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Lines).OfType<MeasureLine>().Single();

    private const string Floor = "face body to 0 with em10, 2 a pass, 0.5 clear of boss, allow 0.3\n  ";

    // 0.3 left on the floor: the step is 5.7 high, not 6.3; measured 5.6, the floor goes 0.4 lower than where it stood, 0.3: to -0.1.
    [Fact]
    public void A_floor_left_high_makes_a_step_too_low()
    {
        var line = Measured(Cut("size boss top to body top 6 +/-0.05", Floor + "measure boss top to body top, then last pass"));
        Assert.Equal(5.7, line.Expected, 6);
        Assert.Equal(-0.1, line.Strip.Single(s => Math.Abs(s.Measures - 5.6) < 1e-9).CrankTo, 6);
    }

    // The boss's right end at 30 with 0.3 left: it stands at 30.3, em10 at 35.3. From the left end the boss is 0.3 too long; to the body's right end there are 0.3 too little.
    [Theory]
    [InlineData("size body left to boss right 30 +/-0.05", 30.3, 30.4, 35.3 - 0.4)]
    [InlineData("size boss right to body right 30 +/-0.05", 29.7, 29.6, 35.3 - 0.4)]
    public void A_shoulder_is_measured_from_either_end(string size, double expected, double measures, double crankTo)
    {
        var name = size["size ".Length..size.IndexOf(" 30", StringComparison.Ordinal)];
        var line = Measured(Cut(size, $"side boss, right end, to 0 with em10, 2 a pass, allow 0.3\n  measure {name}, then last pass"));
        Assert.Equal(expected, line.Expected, 6);
        Assert.Equal(crankTo, line.Strip.MinBy(s => Math.Abs(s.Measures - measures)).CrankTo, 0.011);
    }

    // The same on dials, come to that place from the other side by the facing before: the slack of that is no slack of this.
    [Fact]
    public void The_slack_of_a_step_before_is_not_counted()
    {
        var line = Measured(Cut(
            "size body left to boss right 30 +/-0.05",
            "face body to 0 with em10, 2 a pass, 0.3 clear of boss\n  side boss, right end, to 0 with em10, 2 a pass, allow 0.3\n  measure body left to boss right, then last pass",
            shop => string.Join('\n', shop.Split('\n').Where(l => !l.TrimStart().StartsWith("readout", StringComparison.Ordinal)))));
        Assert.Equal(line.Expected - 30, 35.3 - line.Strip[2].CrankTo, 0.051);
    }

    // A face that is none of the size's ends changes nothing: that is said.
    [Fact]
    public void A_face_that_is_none_of_its_ends_is_refused() =>
        Assert.Contains(Cut("size body long 60 +/-0.05", "side boss, right end, to 0 with em10, 2 a pass, allow 0.3\n  measure body long, then last pass").All, f => f.Code == "cannot-plan" && f.Message.StartsWith("What 'body long' measures", StringComparison.Ordinal));

    // The middle of a bar from 0 to 60 is 30.
    [Fact]
    public void The_middle_is_told_where_it_is() =>
        Assert.Contains("half way between is the middle, X +30.000", new Whole(Job.Replace("SIZE", "size body long 60 +/-0.05", StringComparison.Ordinal).Replace("zero x on left end", "zero x on middle", StringComparison.Ordinal).Replace("STEPS", "spot eye", StringComparison.Ordinal)).Said("A1"), StringComparison.Ordinal);

    [Fact]
    public void A_jaw_that_lies_along_the_axis_gives_no_zero() =>
        Assert.Contains(new Whole(Job.Replace("SIZE", "size body long 60 +/-0.05", StringComparison.Ordinal).Replace("zero x on left end of stock by finder 10", "zero x on fixed jaw by finder 10", StringComparison.Ordinal).Replace("STEPS", "spot eye", StringComparison.Ordinal)).All, f => f is { Code: "cannot-plan", Step: "A1" });

    [Fact]
    public void A_finder_of_another_size_is_told() =>
        Assert.Contains(new Whole(Job.Replace("SIZE", "size body long 60 +/-0.05", StringComparison.Ordinal).Replace("by finder 10", "by finder 4", StringComparison.Ordinal).Replace("STEPS", "spot eye", StringComparison.Ordinal)).All, f => f.Code == "on-hand" && f.Message.StartsWith("The finder 4.000 mm", StringComparison.Ordinal));
}
