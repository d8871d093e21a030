using Handwheel.Trade.Asking;

namespace Handwheel.Trade.Tests;

/// <summary>Questions as they were put at a bench, in words unlike the documentation's, and the value that must come first.</summary>
public sealed class PlainWordsTests
{
    // Values: the tables and formulas that the other tests hold; here the words must lead there.
    [Theory]
    [InlineData("drawbar thread for R8", "drawbar thread", double.NaN, "")]
    [InlineData("weight of titanium", "density", 4510, "kg/m^3")]
    [InlineData("whats the tapping size for a 5 mill thread", "hole for 75 % of thread", 4.2206, "mm")]
    [InlineData("countrsink size for m6 csk", "flat socket M6: head, sharp edge", double.NaN, "")]
    [InlineData("how many holes for 11 sides on a forty to one head", "angle of one crank turn", double.NaN, "")]
    [InlineData("how wide across points is a 17 mm nut", "across corners (corner circle)", 19.63, "mm")]
    [InlineData("setover of tailstock for taper 1 in 20 250 long", "tailstock set over, for a bar of that length", 6.25, "mm")]
    [InlineData("whats the biggest a 3/8-16 stud can measure and still be class 3a", "major max, 3A", 0.375, "in")]
    [InlineData("how small can the bore of a tapped m12 hole be before its scrap", "least hole, 6H", 10.106, "mm")]
    [InlineData("will a 2b gage accept .4510 pitch dia on half thirteen", "pitch diameter", 0.45, "in")]
    [InlineData("what does m16 x 1.5 run on the pitch line 6g", "pitch diameter", 15.026, "mm")]
    [InlineData("what rev should i spin a 20mm hss drill in brass", "spindle speed, start", 970.2, "rpm")]
    [InlineData("how many thou per tooth for a 1/4 endmill in aluminium", "feed to start with", 0.0015, "in/tooth")]
    [InlineData("how much does a foot of 1 inch steel round weigh", "weight", 2.673, "lb")]
    [InlineData("weight of 20 x 50 flat 300 long aluminium", "weight", 0.81, "kg")]
    [InlineData("torqe for grade 8 3/8 fine bolt", "tightening torque", 592.8, "lbf in")]
    [InlineData("how tight should i do up an m8 12.9 in ft lb", "tightening torque", 42.61, "N m")]
    [InlineData("tailstock offset 1/2 inch per foot over 8 inch", "tailstock set over, for a bar of that length", 0.16667, "in")]
    [InlineData("decimal of a size w drill", "drill", double.NaN, "")]
    [InlineData("between what sizes is a 19/64 drill", "drill", double.NaN, "")]
    [InlineData("ball nose 10 mm stepover .4 how rough", "cusp", 0.0040016, "mm")]
    [InlineData("25 mm h7 hole", "hole H7: upper deviation", 21, "um")]
    [InlineData("i need to put a 3/8 coarse thread in ally what do i drill", "hole for 75 % of thread", 0.31411, "in")]
    [InlineData("thread depth of m10 fine 1.25", "depth of thread, screw", 0.7668, "mm")]
    [InlineData("lead of a 1/2-10 acme", "lead", 0.1, "in")]
    [InlineData("how much horsepower to take 1/8 deep .010 feed off 2 inch 1018 bar", "power at the tool", double.NaN, "")]
    [InlineData("interference for a bronze bush 20 bore in cast iron", "least interference", 0.014, "mm")]
    [InlineData("tolerance on a 100mm dim with nothing stated", "length, fine (f), plus and minus", 0.15, "mm")]
    [InlineData("across flats of a m12 nut", "hexagon M12: across flats", 18, "mm")]
    [InlineData("small end of jt6", "small end", 0.62409, "in")]
    [InlineData("key 1.4375 shaft 0.375 wide 1.16 long torque 4200 in-lb", "key width", 0.375, "in")]
    [InlineData("Tr20x4", "thread", double.NaN, "")]
    [InlineData("thread 3-4 2A", "thread", double.NaN, "")]
    [InlineData("MK2", "taper", double.NaN, "")]
    [InlineData("how far should an m5 bolt be screwed into cast iron", "engagement for equal strength", 4.01, "mm")]
    [InlineData("pushing a 10mm bush 20 long 16 od into a housing how much force", "greatest push to press it on", double.NaN, "")]
    [InlineData("which fit for a bearing on a 25 mm shaft", "shaft k6: upper deviation", 15, "um")]
    [InlineData("fit 25 j7", "shaft j7: upper deviation", 13, "um")]
    public void The_value_meant_comes_first(string question, string name, double value, string unit)
    {
        var reply = Asker.Ask(question.Split(' '));
        Assert.True(reply.Refusal is null, reply.Refusal?.What);
        var first = reply.Answers[0];
        Assert.StartsWith(name, first.Name, StringComparison.Ordinal);
        if (!double.IsNaN(value))
        {
            Assert.Equal(unit, first.Unit);
            Assert.InRange(first.Number!.Value / value, 0.999, 1.001);
        }
    }

    // Acme, trapezoidal and 55 degree threads named by their size: the pitch diameter is worked out from it (1/4 BSW 0.2180, 1/2-10 Acme 0.4500, Tr 20 x 4 18).
    [Theory]
    [InlineData("wires whitworth 1/4 20 tpi", 0.2180 * 25.4)]
    [InlineData("wires acme 1/2-10", 0.45 * 25.4)]
    [InlineData("wires Tr20x4", 18)]
    public void A_size_is_no_pitch_diameter(string question, double pitchDiameterMm) =>
        Assert.Equal(pitchDiameterMm, Asker.Ask(question.Split(' ')).Answers.Single(a => a.Name == "pitch diameter (basic)").Metric!.Value.Value, 1e-3);

    [Theory]
    [InlineData("thread 1/4 BSP")]
    [InlineData("ER32")]
    [InlineData("HSK63")]
    public void What_is_not_carried_is_said(string question) => Assert.Contains("not carried", Asker.Ask(question.Split(' ')).Refusal!.What, StringComparison.Ordinal);

    // A depth of 1/8 in at 0.010 in a turn is 3.175 mm x 0.254 mm: about 2 kN in mild steel.
    [Fact]
    public void A_number_before_its_label_is_not_taken_by_the_label_before()
    {
        var reply = Asker.Ask("power to take 1/8 deep .010 feed off 2 inch 1018 bar".Split(' '));
        Assert.InRange(reply.Answers.Single(a => a.Name == "cutting force").Metric!.Value.Value, 1200, 2600);
    }

    [Fact]
    public void All_gives_the_whole_list_again()
    {
        Assert.Contains(Asker.Ask(["weight", "of", "titanium"]).Answers, a => a.Asked);
        Assert.DoesNotContain(Asker.Ask(["weight", "of", "titanium", "all"]).Answers, a => a.Asked);
    }
}
