using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;

namespace Handwheel.Cases.Tests.Written;

/// <summary>A slit to a depth, sawn from the side it opens to: a split clamp for a lamp's stem.</summary>
public sealed class SlitTests
{
    private const string Job = """
        job   Stem clamp
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          body   block 60 by 20 at -15, 0     from -16 to 0
          bore   hole 6.6 at -6, 0           through
          split  cut block SIZE at 6, 0      from -16 to 0
          others +/-0.1
        stock bar 20 wide, 16 high, 60 long
          x from -45
        holding A in large vise, bar along jaws on parallels 20
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          spot bore
          drill bore through with d6.6
        by hand
          break all edges 0.2
        holding B in large vise, UP, on parallels 14
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          SAW
        """;

    private static Whole Cut(string size, string saw, string up = "front up, bar along jaws, middle of jaws at -60") => new(Job.Replace("SIZE", size, StringComparison.Ordinal).Replace("SAW", saw, StringComparison.Ordinal).Replace("UP", up, StringComparison.Ordinal));

    private static double[] At(Whole job, Axis axis) => [.. job.Lines("B4").OfType<MoveLine>().Where(m => m.Axis == axis && !m.Cutting).Select(m => m.To)];

    // Front up: X as drawn, Z the part's -Y. The slit runs in from the right to X -6: the rim there, the spindle at -6 + 63/2; the saw's lower face half of its 1.0 below the middle.
    [Fact]
    public void The_rim_goes_to_the_bottom_along_the_middle()
    {
        var job = Cut("24 by 1", "saw split with saw1, from right end");
        Assert.Empty(job.Halts);
        Assert.Contains(At(job, Axis.X), x => Math.Abs(x - (-6 + 31.5)) < 1e-9);
        Assert.Contains(At(job, Axis.Z), z => Math.Abs(z + 0.5) < 1e-9);
        Assert.Single(job.Lines("B4").OfType<MoveLine>(), m => m is { Cutting: true, Axis: Axis.Y });
        Assert.All(job.Proof!.Sizes, z => Assert.True(z.Ok, z.Name));
        Assert.DoesNotContain(job.All, f => f.Code == "direction" && f.Grade == Grade.Halt);
    }

    // 1.6 wide, the saw 1.0: the upper face first, from 0.8 - 1 = -0.2, then the lower at -0.8.
    [Fact]
    public void A_wider_slit_is_sawn_along_each_face()
    {
        var job = Cut("24 by 1.6", "saw split with saw1, from right end");
        Assert.Empty(job.Halts);
        var z = At(job, Axis.Z);
        Assert.Contains(z, v => Math.Abs(v + 0.2) < 1e-9);
        Assert.Contains(z, v => Math.Abs(v + 0.8) < 1e-9);
        Assert.Equal(1.6, job.Proof!.Sizes.Single(s => s.Name == "split wide").Greatest!.Value, 3);
    }

    // From the other end it would saw through the bore and the body's other half.
    [Fact]
    public void From_the_wrong_end_it_halts() =>
        Assert.Contains(Cut("24 by 1", "saw split with saw1, from left end").All, f => f is { Grade: Grade.Halt, Code: "gouge", Step: "B4" });

    [Fact]
    public void A_thicker_saw_is_refused() =>
        Assert.Contains(Cut("24 by 1", "saw split with saw2, from right end").All, f => f.Code == "cannot-plan" && f.Message.Contains("1.2 mm thick, and 'split' 1 mm wide", StringComparison.Ordinal));

    // Standing as drawn the slit's narrow way lies level: a saw on an upright spindle does not get into it.
    [Fact]
    public void A_slit_on_edge_is_refused()
    {
        var job = Cut("24 by 1", "saw split with saw1, from right end", "bar along jaws, middle of jaws at -60");
        Assert.Contains(job.All, f => f.Grade == Grade.Halt && f.Code == "cannot-plan" && f.Mend.Contains("right end up", StringComparison.Ordinal));
    }
}
