using System.Globalization;
using Handwheel.Quantities;

namespace Handwheel.Plan.Workings;

// Numbers as they stand in workings: the job's unit, at most four decimals (five in inches), nothing trailing.
internal sealed class Figures(LengthUnit unit)
{
    internal LengthUnit Unit => unit;

    internal string Symbol => unit.Symbol();

    // A length held in millimetres.
    internal string L(double millimetres) => Bare(unit.FromMillimetres(millimetres), unit == LengthUnit.Inch ? 5 : 4);

    internal string LU(double millimetres) => L(millimetres) + " " + Symbol;

    // A reading with its sign, at the step's decimals.
    internal string R(double millimetres, double step) => ReadingText.Signed(millimetres, unit, step);

    internal static string Deg(double degrees) => Bare(degrees, 4);

    internal static string Bare(double value, int decimals = 4)
    {
        var text = Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }
}
