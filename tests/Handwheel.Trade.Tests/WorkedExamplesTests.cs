using Handwheel.Trade.Cutting;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Metals;

namespace Handwheel.Trade.Tests;

/// <summary>Mechanics against examples that others worked out.</summary>
public sealed class WorkedExamplesTests
{
    // machinecalcs.com, press fit: 50 mm shaft, 80 mm hub, 0.04 mm, 40 mm long, E = 200 GPa, mu = 0.15: 48.75 MPa, 45.95 kN, 1149 N m, 111.3 MPa of hoop stress.
    // aionlinecalculator.com: the same joint with E = 210 GPa, mu = 0.12: 51.2 MPa, 38.6 kN, 965 N m, 117 MPa.
    [Theory]
    [InlineData(200_000, 0.15, 48.75, 45_950, 1149, 111.3)]
    [InlineData(210_000, 0.12, 51.2, 38_600, 965, 117)]
    public void A_press_fit_is_the_published_example(double modulus, double friction, double pressure, double push, double torque, double hoop)
    {
        var fit = PressFits.Solve(50, 0.04, 80, 0, modulus, modulus, 0.3, 0.3, 40, friction);
        Assert.InRange(fit.PressureMPa / pressure, 0.998, 1.002);
        Assert.InRange(fit.PushN / push, 0.998, 1.002);
        Assert.InRange(fit.TorqueNmm / 1000 / torque, 0.998, 1.002);
        Assert.InRange(fit.HubHoopMPa / hoop, 0.998, 1.002);
    }

    // myshopmetrics.com, radial chip thinning: the feed for a wanted chip, as a multiple, by the width of cut as a share of the diameter.
    [Theory]
    [InlineData(0.5, 1.00)]
    [InlineData(0.25, 1.15)]
    [InlineData(0.10, 1.67)]
    [InlineData(0.05, 2.29)]
    public void Chip_thinning_is_the_published_factor(double share, double factor) => Assert.InRange(Speeds.FeedForChip(1, share * 10, 10), factor - 0.01, factor + 0.01);

    // A tap maker's equation (Yamawa 2016-2017, p. 781): tan 30 deg x kc x K (D - Do)^2 (D + 2 Do) / 24000, kc 3700 (St44), 3600 (42CrMo4), 1300 (cast aluminium),
    // K 1.35 for a plug hand tap in steel, 1.25 in aluminium; ours claims a factor of two.
    [Theory]
    [InlineData("mild steel", 4, 0.7, 3.3, 3700, 1.35)]
    [InlineData("mild steel", 8, 1.25, 6.8, 3700, 1.35)]
    [InlineData("mild steel", 12, 1.75, 10.2, 3700, 1.35)]
    [InlineData("mild steel", 20, 2.5, 17.5, 3700, 1.35)]
    [InlineData("42CrMo4", 10, 1.5, 8.5, 3600, 1.35)]
    [InlineData("6061", 6, 1, 5, 1300, 1.25)]
    public void Tap_torque_is_a_makers_within_a_factor_of_two(string name, double major, double pitch, double hole, double kc, double k)
    {
        var metal = MetalTable.Find(name)!;
        var makers = Math.Tan(Math.PI / 6) * kc * k * (major - hole) * (major - hole) * (major + (2 * hole)) / 24000;
        Assert.InRange(Kienzle.TapTorqueNm(metal.Kc11, metal.Mc, major, pitch) / makers, 0.5, 2);
    }
}
