namespace Handwheel.Quantities.Tests;

/// <summary>Pounds and newtons: NIST SP 811, appendix B: 1 lbf = 4.448 222 N, 1 lbf in = 0.112 984 8 N m.</summary>
public sealed class ForceTextTests
{
    [Theory]
    [InlineData(444.8222, "100 lbf (445 N)")]
    [InlineData(4.448222, "1 lbf (4.45 N)")]
    [InlineData(0, "0 lbf (0 N)")]
    public void An_inch_job_has_pounds_with_newtons_beside(double newtons, string told) => Assert.Equal(told, LengthUnit.Inch.Force(newtons));

    [Fact]
    public void A_torque_is_told_alike()
    {
        Assert.Equal("12 lbf in (1.36 N m)", LengthUnit.Inch.Torque(12 * 0.1129848));
        Assert.Equal("1.36 N m", LengthUnit.Millimetre.Torque(1.3558));
    }

    [Fact]
    public void A_metric_job_has_newtons_alone() => Assert.Equal("7560 N", LengthUnit.Millimetre.Force(7560));
}
