using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;

namespace Handwheel.Trade.Tests;

public sealed class HelixCutTests
{
    [Fact]
    public void A_helix_has_only_a_length_in_the_cut()
    {
        // Developed helix: a point goes r tan-wise: 5 x (pi/2) / tan 30 = 13.60 mm up over a quarter turn of a 10 mm cutter.
        Assert.Equal(13.603 / 27.2, HelixCut.Share(10, 27.2, 90, 30), 3);
        Assert.Equal(1, HelixCut.Share(10, 5, 90, 30));
        Assert.Equal(1, HelixCut.Share(10, 50, 5, 0));
    }

    [Theory]
    [InlineData("aluminium, 6082", "aluminium 6061")]
    [InlineData("steel, free-cutting", "free-cutting steel")]
    [InlineData("brass, free-cutting", "free-cutting brass")]
    [InlineData("steel, from the scrap box", "mild steel")]
    [InlineData("unobtainium", null)]
    [InlineData("", null)]
    public void A_stock_s_label_finds_its_metal(string said, string? name) => Assert.Equal(name, MetalTable.FindSaid(said)?.Name);
}
