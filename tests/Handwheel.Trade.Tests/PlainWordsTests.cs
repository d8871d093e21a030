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
    [InlineData("across flats of a m12 nut", "hexagon nut M12: across flats", 18, "mm")]
    [InlineData("small end of jt6", "small end", 0.62409, "in")]
    [InlineData("key 1.4375 shaft 0.375 wide 1.16 long torque 4200 in-lb", "key width", 0.375, "in")]
    [InlineData("Tr20x4", "thread", double.NaN, "")]
    [InlineData("thread 3-4 2A", "thread", double.NaN, "")]
    [InlineData("MK2", "taper", double.NaN, "")]
    [InlineData("how far should an m5 bolt be screwed into cast iron", "engagement for equal strength", 4.01, "mm")]
    [InlineData("pushing a 10mm bush 20 long 16 od into a housing how much force", "greatest push to press it on", double.NaN, "")]
    [InlineData("which fit for a bearing on a 25 mm shaft", "shaft k6: upper deviation", 15, "um")]
    [InlineData("fit 25 j7", "shaft j7: upper deviation", 13, "um")]
    [InlineData("is morse 3 self holding at 0.2", "friction angle", 11.31, "deg")] // atan 0.2
    [InlineData("friction angle 0.12", "friction angle", 6.8428, "deg")] // atan 0.12
    [InlineData("7/24 self holding friction", "friction angle", double.NaN, "")]
    [InlineData("will a 40 taper let go if the drawbar snaps", "holds itself", double.NaN, "")]
    [InlineData("angle 35 deg on 40 circle 18", "angle of one crank turn", 9, "deg")]
    [InlineData("radius chord 3 in height 0.25 in", "radius", 4.625, "in")] // c^2/8h + h/2
    [InlineData("kienzle constants c45", "specific cutting force kc1.1", 2220, "MPa")] // as kc of C45 among the known values
    [InlineData("specific cutting force of 42CrMo4", "specific cutting force kc1.1", 2500, "MPa")]
    [InlineData("turning force 3 mm deep feed 0.3 in c45 120 m/min", "cutting force", 2364.6, "N")] // 3 x 0.3^0.86 x 2220
    [InlineData("milling power ap 2 ae 8 vf 400 kc 1800", "power at the cutter", 0.192, "kW")] // ap ae vf kc / 60e6
    [InlineData("torque for 1275 lb preload 0.19 in K=0.3", "tightening torque", 72.7, "lbf in")] // K F d, NASA-STD example in the known values
    [InlineData("bend cutter carbide 3 stickout 12 force 20 N", "deflection at the tip", 0.0118, "mm")]
    [InlineData("buckle punch 5 long 40 yield 1500 c 1", "slenderness l/k", 32, "")]
    [InlineData("pitch diameter from 10.4117 over wires M10 wire 0.895", "pitch diameter measured", 9.026, "mm")] // M - 3 W + 0.866025 P
    [InlineData("hex nut M8", "hexagon nut M8: across flats", 13, "mm")] // ISO 4032
    [InlineData("how thick is a 3/8 nut", "hexagon nut: thickness", 0.328125, "in")] // B18.2.2: 21/64
    [InlineData("weight 50x10 flat mild steel 200 long", "weight", 0.785, "kg")] // 50 x 10 x 200 mm at 7850 kg/m^3
    [InlineData("how much will 6 inch of aluminum grow at 100 F", "growth", 0.0078667, "in")] // 6 x 23.6e-6 x 55.556
    [InlineData("convert psi 60000", "stress", double.NaN, "")]
    [InlineData("convert 100 C to F", "temperature", 100, "deg C")]
    [InlineData("drill thrust 10 mm c45 0.2", "thrust", 2684, "N")]
    [InlineData("set screw M6 key", "set screw M6: key across flats", 3, "mm")] // DIN 913
    [InlineData("pentagon in circle 40", "across flats (inscribed circle)", 32.3607, "mm")] // 40 cos 36
    [InlineData("blocks for 22 deg 30 on a 5 inch sine bar", "blocks", 1.91342, "in")] // 5 sin 22.5
    [InlineData("stiffness of brass vs steel", "modulus of elasticity", 97, "GPa")]
    [InlineData("biggest end mill shank for r8 collet", "greatest shank in its collet", 0.75, "in")] // common practice
    [InlineData("drawbar 5/8-11 at 30 lbf ft", "preload", 2880, "lbf")] // 360 / (0.2 x 0.625)
    [InlineData("whats the tap size for three eights fine", "hole for 75 % of thread", 0.33441, "in")] // 3/8 - 0.0129904 x 75 / 24
    [InlineData("how big a hole for clearance on a number 8 screw", "close drill", double.NaN, "")]
    [InlineData("min and max of a 7h6 dowel", "shaft h6: upper deviation", double.NaN, "")]
    [InlineData("34H11/c11", "hole H11: upper deviation", 160, "um")]
    [InlineData("taper per foot of b and s 9", "taper per foot", 0.50085, "in/ft")]
    [InlineData("how heavy is 2 ft of 2 inch square steel", "weight", 27.2256, "lb")] // 96 in^3 at 0.2836
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

    [Theory]
    [InlineData("convert 45 HRC", "hardness scales")]
    [InlineData("force to punch 1/2 inch hole in 16 gauge steel", "sheet gauges differ")]
    public void What_would_be_taken_for_a_length_is_refused(string question, string said) =>
        Assert.Contains(said, Asker.Ask(question.Split(' ')).Refusal!.What, StringComparison.Ordinal);

    // End constants of Shigley Table 4-2: fixed and free 1/4, pinned 1, both fixed 1.2 as recommended.
    [Theory]
    [InlineData("buckle column 6 rod 100 long fixed free", "C = 0.25")]
    [InlineData("buckle column 6 rod 100 long pinned", "C = 1,")]
    [InlineData("buckle column 6 rod 100 long guided both ends", "C = 1.2")]
    [InlineData("buckle punch 4 long 50 yield 1500", "Sy = 1500")]
    public void The_ends_and_the_yield_that_were_said_are_taken(string question, string working) =>
        Assert.Contains(Asker.Ask(question.Split(' ')).Answers, a => a.Working.Any(w => w.Contains(working, StringComparison.Ordinal)));

    [Fact]
    public void All_gives_the_whole_list_again()
    {
        Assert.Contains(Asker.Ask(["weight", "of", "titanium"]).Answers, a => a.Asked);
        Assert.DoesNotContain(Asker.Ask(["weight", "of", "titanium", "all"]).Answers, a => a.Asked);
    }
}
