using Handwheel.Jobs.Findings;
using Handwheel.Plan.Lines;

namespace Handwheel.Cases.Tests.Written;

/// <summary>Holes drilled in steps: what a drill meets is the hole that is there, not the one drawn.</summary>
public sealed class PilotTests
{
    private const string Job = """
        job   Foot
        unit  mm
        metal steel 12L14
        shop  home.handwheel
        drawing
          base   block 50 by 40 at 0, 0     from -20 to 0
          screw  hole 6.6 at 0, 0           through
          head   counterbore 10 at screw    6 deep from 0
          others +/-0.1
        stock bar 40 wide, 20 high, 50 long
          x middle 0
        holding A in large vise, bar along jaws on parallels 14
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          spot screw
          STEPS
        """;

    private static Whole Cut(string steps) => new(Job.Replace("STEPS", steps, StringComparison.Ordinal));

    private static string Says(Whole job, string step) =>
        job.Plan!.Stages.SelectMany(s => s.Steps).Single(s => s.Step.Id == step).Workings.First(w => w.Name == "feed of d6.6").Inputs.Single(i => i.Name == "chip a tooth").Says;

    // From the solid the quill's 500 N do not push 0.066 at each lip of 6.6 in this steel. Down a hole of 5 the chisel edge, half the thrust, meets nothing, and
    // the lips cut (6.6 - 5) / 6.6 of their width: an eighth of it (Kienzle; the chisel's half is common practice).
    [Fact]
    public void A_drill_that_opens_a_hole_is_not_held_back_as_from_the_solid()
    {
        Assert.Contains("from the solid", Says(Cut("drill screw through with d6.6"), "A5"), StringComparison.Ordinal);
        var job = Cut("drill screw through with d5\n  drill screw through with d6.6\n  counterbore head with em10");
        Assert.Empty(job.Halts);
        Assert.Equal("common practice for a cutter fed by hand", Says(job, "A6"));
        Assert.DoesNotContain(job.All, f => f.Code is "plunge" && f.Grade != Grade.Note);
    }

    // A pilot that stops short leaves the solid under it.
    [Fact]
    public void A_pilot_that_stops_short_does_not_count() =>
        Assert.Contains("from the solid", Says(Cut("drill screw to -8 with d5\n  drill screw through with d6.6"), "A6"), StringComparison.Ordinal);

    // To one depth both, the wider drill's point goes deeper by (6.6 - 5)/2 / tan(59 deg): there it cuts the solid.
    [Fact]
    public void A_blind_pilot_leaves_the_solid_under_the_point() =>
        Assert.Contains("from the solid", Says(Cut("drill screw to -14 with d5\n  drill screw to -14 with d6.6"), "A6"), StringComparison.Ordinal);

    // The counterbore's floor is 6 down: the first peck of 2 goes to -8, each further 2 deeper.
    [Fact]
    public void Pecks_begin_where_metal_begins()
    {
        var job = Cut("drill screw through with d5\n  counterbore head with em10\n  drill screw through with d6.6, peck 2");
        Assert.Empty(job.Halts);
        var pecks = job.Lines("A7").OfType<PassBracket>().Single();
        Assert.Equal(-8, pecks.Depths[0], 9);
        Assert.Equal(-10, pecks.Depths[1], 9);
        Assert.Equal("-6 - 2 - 1 x 2", pecks.DepthWorkings[1].PutIn);
    }
}
