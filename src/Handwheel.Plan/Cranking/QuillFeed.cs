using System.Globalization;
using Handwheel.Jobs.Shops;
using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;

namespace Handwheel.Plan.Cranking;

// A drill is fed no faster than what the quill can push: thrust from the solid grows with the chip to the power 1 - mc.
internal static class QuillFeed
{
    // The finest chip at each lip that a hand on a quill holds, millimetres (common practice, no source).
    private const double Finest = 0.005;

    // Millimetres at each lip: as wished, or what the push allows, but not finer than a hand holds.
    internal static double Chip(Cutter cutter, Mill mill, Metal metal, double wished)
    {
        if (cutter.Kind != CutterKind.Drill || mill.QuillPush <= 0)
        {
            return wished;
        }

        var thrust = Thrust(cutter, metal, wished);
        return thrust <= mill.QuillPush ? wished : Math.Min(wished, Math.Max(Finest, wished * Math.Pow(mill.QuillPush / thrust, 1 / (1 - metal.Mc))));
    }

    // Why the chip is less than wished.
    internal static string Told(Cutter cutter, Mill mill, Metal metal, double wished, string wishedTold) => string.Create(
        CultureInfo.InvariantCulture,
        $"at {wishedTold}, common practice, {cutter.Name} asks about {Rounded(Thrust(cutter, metal, wished))} N from the solid in {metal.Name} and the quill pushes {mill.QuillPush:0} N: times ({mill.QuillPush:0} / {Rounded(Thrust(cutter, metal, wished))})^(1 / (1 - {metal.Mc:0.##})), not under a hundredth of a millimetre a turn ({Kienzle.Basis.Source})");

    // The sum as printed; the quill's push and the push asked stand in newtons.
    internal static string PutIn(Cutter cutter, Mill mill, Metal metal, double wished, string wishedTold) => string.Create(
        CultureInfo.InvariantCulture,
        $"{wishedTold} x ({mill.QuillPush:0} N / {Rounded(Thrust(cutter, metal, wished))} N)^(1 / (1 - {metal.Mc:0.##}))");

    private static double Thrust(Cutter cutter, Metal metal, double chip) =>
        Kienzle.Drilling(metal.Kc11, metal.Mc, cutter.TrueAcross, 2 * chip, (cutter.PointAngle > 0 ? cutter.PointAngle : CutterShapes.UsualPoint) * 180 / Math.PI, 1).ThrustN;

    private static string Rounded(double newtons) => newtons.ToString("0", CultureInfo.InvariantCulture);
}
