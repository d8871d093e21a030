using System.Globalization;
using Handwheel.Jobs.Shops;
using Handwheel.Quantities;
using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;

namespace Handwheel.Plan.Cranking;

// A drill is fed no faster than what the quill can push: thrust grows with the chip to the power 1 - mc. Half of it from the solid is the chisel edge's, and none of
// that is left where a hole goes down all the way already; the lips' is as wide as what they still cut.
internal sealed class QuillFeed(Cutter cutter, Mill mill, Metal metal, double bored, LengthUnit unit)
{
    // The finest chip at each lip that a hand on a quill holds, millimetres (common practice, no source).
    private const double Finest = 0.005;

    // Millimetres at each lip: as wished, or what the push allows, but not finer than a hand holds.
    internal double Chip(double wished)
    {
        if (cutter.Kind is not (CutterKind.Drill or CutterKind.SpottingDrill or CutterKind.CentreDrill) || mill.QuillPush <= 0)
        {
            return wished;
        }

        var thrust = Thrust(wished);
        return thrust <= mill.QuillPush ? wished : Math.Min(wished, Math.Max(Finest, wished * Math.Pow(mill.QuillPush / thrust, 1 / (1 - metal.Mc))));
    }

    // Why the chip is less than wished.
    internal string Told(double wished, string wishedTold) => string.Create(
        CultureInfo.InvariantCulture,
        $"at {wishedTold}, common practice, {cutter.Name} asks about {Both(Thrust(wished))} {(bored > 0 ? $"to open a hole of {unit.Said(bored)}" : "from the solid")} in {metal.Name} and the quill pushes {Both(mill.QuillPush)}: times ({One(mill.QuillPush)} / {One(Thrust(wished))})^(1 / (1 - {metal.Mc:0.##})), not under a hundredth of a millimetre a turn ({Kienzle.Basis.Source})");

    // The sum as printed; the quill's push and the push asked stand in newtons, or in pounds in an inch job.
    internal string PutIn(double wished, string wishedTold) => string.Create(
        CultureInfo.InvariantCulture,
        $"{wishedTold} x ({One(mill.QuillPush)} / {One(Thrust(wished))})^(1 / (1 - {metal.Mc:0.##}))");

    private double Thrust(double chip)
    {
        var solid = Kienzle.Drilling(metal.Kc11, metal.Mc, cutter.TrueAcross, 2 * chip, (cutter.PointAngle > 0 ? cutter.PointAngle : CutterShapes.UsualPoint) * 180 / Math.PI, 1).ThrustN;
        return bored > 0 ? solid / 2 * Math.Max(0, 1 - (bored / cutter.TrueAcross)) : solid;
    }

    private string Both(double newtons) => unit == LengthUnit.Inch ? $"{One(newtons)} ({Rounded(newtons)} N)" : One(newtons);

    private string One(double newtons) => unit == LengthUnit.Inch ? $"{Rounded(ForceText.Pounds(newtons))} lbf" : $"{Rounded(newtons)} N";

    private static string Rounded(double newtons) => newtons.ToString("0", CultureInfo.InvariantCulture);
}
