using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Tests.Jobs;

namespace Handwheel.Plan.Tests.Written;

/// <summary>What a size measures while metal is still left on its faces, and where the last pass then goes. By hand: an allowance is a side.</summary>
public sealed class MeasuringTests
{
    private const string Block = """
        job   Block
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          body   block 50 by 24 at 25, 0    from -16 to 0
          DRAWN
          others +/-0.1
        stock bar 24 wide, 17 high, 50 long
          z top 1
        holding A in large vise, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          face to 0 with em16, 0.5 a pass
          CUT
        """;

    // em6 is 5.98: the walls stand at 10.05/2 - 5.98/2 = 2.035; 0.2 left on each, at 1.835. Between them 2 x 1.835 + 5.98 = 9.65.
    [Fact]
    public void A_groove_measures_less_by_what_is_left_on_both_walls()
    {
        var line = Measure("groove cut block 50 by 10 at 25, 0 from -2 to 0\n  size groove wide 10 +0.1 -0", "pocket groove to -2 with em6, 1 a pass, allow 0.2\n  measure groove wide, then last pass at full depth");
        Assert.Equal(9.65, line.Expected, 9);
        Assert.DoesNotContain("micrometer", line.With, StringComparison.Ordinal);
        Holds(line, 9.65, 2.035);
        Holds(line, 9.75, 1.985);
    }

    // The wall behind a shoulder is thicker by what is left on it: 6.2, the cutter at 6 - 10/2 - 0.2 = 0.8; 0.05 too thick is 0.05 nearer.
    [Fact]
    public void A_wall_measures_more_by_what_is_left_on_it()
    {
        var line = Measure("ledge cut block 50 by 18 at 25, -3 from -5 to 0\n  size ledge far to body far along y 6 +/-0.05", "pocket ledge to -5 with em10, 1 a pass, allow 0.2\n  measure ledge far to body far along y, then last pass at full depth");
        Assert.Equal(6.2, line.Expected, 9);
        Holds(line, 6.2, 1.0);
        Holds(line, 6.25, 1.05);
    }

    // An open shoulder's own width grows towards its one wall: 18 - 0.2.
    [Fact]
    public void A_shoulder_measures_less_by_what_is_left_on_its_wall()
    {
        var line = Measure("ledge cut block 50 by 18 at 25, -3 from -5 to 0\n  size ledge wide 18 +/-0.05", "pocket ledge to -5 with em10, 1 a pass, allow 0.2\n  measure ledge wide, then last pass at full depth");
        Assert.Equal(17.8, line.Expected, 9);
        Holds(line, 17.8, 1.0);
        Holds(line, 17.75, 1.05);
    }

    // A slot 10 wide by em6: (10 - 5.98)/2 = 2.01 to each side of its middle; 0.3 left, at 1.71. Between: 2 x 1.71 + 5.98 = 9.4.
    [Fact]
    public void A_slot_measures_less_by_what_is_left_on_both_walls()
    {
        var line = Measure("way cut slot 30 by 10 at 25, 0 from -4 to 0\n  size way wide 10 +/-0.05", "slot way to -4 with em6, 1 a pass, allow 0.3\n  measure way wide, then last pass at full depth");
        Assert.Equal(9.4, line.Expected, 9);
        Holds(line, 9.4, -2.01);
    }

    // With no 'last pass' it is still what the cuts have left: 9.65 between walls that keep 0.2 each (reckoned above), far from its limits, which are told beside it.
    [Fact]
    public void A_measure_alone_expects_what_the_cuts_have_left()
    {
        var line = Measure("groove cut block 50 by 10 at 25, 0 from -2 to 0\n  size groove wide 10 +0.1 -0", "pocket groove to -2 with em6, 1 a pass, allow 0.2\n  measure groove wide\n  pocket groove to -2 with em6");
        Assert.Equal(9.65, line.Expected, 9);
        Assert.Equal((10.0, 10.1), (line.Limits!.Value.Lower, line.Limits.Value.Upper));
        Assert.Empty(line.Strip);
        Assert.EndsWith("Not yet to size (aimed at 10.05). Write it down: by what it measures over or under 9.65 the readings of A7 are put right, half of it where it cuts both faces.", line.Remark, StringComparison.Ordinal);
    }

    // em10 stands at 6 - 10/2 = 1 off the far side for a wall of 6; the readout tells 0.005, so nothing is lost. Nothing cuts it after this.
    [Fact]
    public void A_measure_after_the_last_cut_expects_the_size_itself()
    {
        var line = Measure("ledge cut block 50 by 18 at 25, -3 from -5 to 0\n  size ledge far to body far along y 6 +/-0.05", "pocket ledge to -5 with em10, 1 a pass\n  measure ledge far to body far along y");
        Assert.Equal(6, line.Expected, 9);
        Assert.Contains("Nothing cuts it after this", line.Remark, StringComparison.Ordinal);
    }

    // The stock is 24 wide and so is the body: raw sides measure what the stock does. Its height is 17 less the 1 faced off.
    [Fact]
    public void A_measure_of_raw_faces_expects_the_stock()
    {
        Assert.Equal(16, Measure("size body high 16 +/-0.05", "measure body high").Expected, 9);
        Assert.Equal(24, Measure("size body wide 24 +/-0.3", "measure body wide").Expected, 9);
    }

    [Fact]
    public void A_size_of_other_faces_is_not_told()
    {
        var job = JobReader.Read("block.handwheel", Text("groove cut block 50 by 10 at 25, 0 from -2 to 0\n  size body long 50 +/-0.05", "pocket groove to -2 with em6, 1 a pass, allow 0.2\n  measure body long, then last pass at full depth"), name => PlannedJob.Text(name));
        var finding = Planner.Plan(job.Value!, job.Shop!).Findings.Single(f => f.Grade == Grade.Halt);
        Assert.Contains("What 'body long' measures before the last pass cannot be told", finding.Message, StringComparison.Ordinal);
    }

    private static string Text(string drawn, string cut) => Block.Replace("DRAWN", drawn, StringComparison.Ordinal).Replace("CUT", cut, StringComparison.Ordinal);

    private static MeasureLine Measure(string drawn, string cut)
    {
        var job = JobReader.Read("block.handwheel", Text(drawn, cut), name => PlannedJob.Text(name));
        Assert.True(job.Value is not null, string.Join("; ", job.Findings.Select(f => f.Message)));
        var plan = Planner.Plan(job.Value!, job.Shop!);
        Assert.DoesNotContain(plan.Findings, f => f.Grade == Grade.Halt);
        return plan.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Lines).OfType<MeasureLine>().Single();
    }

    private static void Holds(MeasureLine line, double measures, double crankTo) =>
        Assert.Contains(line.Strip, p => Math.Abs(p.Measures - measures) < 1e-9 && Math.Abs(p.CrankTo - crankTo) < 1e-9);
}
