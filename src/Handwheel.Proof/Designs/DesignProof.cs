using Handwheel.Jobs.Designs;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Stocks;
using Handwheel.Quantities;
using Handwheel.Trade.Metals;

namespace Handwheel.Proof.Designs;

/// <summary>Checks the lines of a design by handbook mechanics, on the drawing at its worst limits. Needs no moves. Estimates.</summary>
public static class DesignProof
{
    /// <summary>To whom strength figures defer.</summary>
    public const string Defers = "Strength is an estimate from typical figures: a certificate or a test, the machine's manual, local codes and a licensed engineer come first.";

    /// <summary>Checks every line.</summary>
    /// <param name="drawing">The drawing with its design.</param>
    /// <param name="stock">The stock: its metal.</param>
    /// <param name="shop">The shop, for its press; null: none.</param>
    /// <param name="unit">The unit lengths are told in.</param>
    /// <returns>One result a line, in the order typed.</returns>
    /// <exception cref="ArgumentNullException">Drawing or stock is null.</exception>
    public static IReadOnlyList<DesignResult> Of(Drawing drawing, Stock stock, Shop? shop, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(stock);
        if (drawing.Designs.Count == 0)
        {
            return [];
        }

        var known = MetalTable.FindSaid(stock.Metal);
        var site = new DesignSite
        {
            Least = DrawnPart.Of(drawing, PartVariant.LeastMetal),
            Metal = known ?? MetalTable.Find("mild steel")!,
            MetalKnown = known is not null,
            Unit = unit,
            PressPush = shop?.PressPush,
        };
        return [.. drawing.Designs.Select(d => One(site, d))];
    }

    private static DesignResult One(DesignSite site, DesignLine line) => line switch
    {
        ScrewDesign screw => ScrewCheck.Of(site, screw),
        TaperDesign taper => TaperCheck.Of(site, taper),
        FitDesign fit => FitCheck.Of(site, fit),
        PressDesign press => PressCheck.Of(site, press),
        WallDesign wall => WallCheck.Of(site, wall),
        DriveDesign drive => DriveCheck.Of(site, drive),
        BendDesign bend => BendCheck.Of(site, bend),
        _ => throw new ArgumentOutOfRangeException(nameof(line), line.GetType().Name, "a kind of design line that has no check"),
    };
}
