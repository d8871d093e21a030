using System.Globalization;

namespace Handwheel.Quantities;

/// <summary>How readings are printed: exactly the decimals of the readout or dial they are meant for, sign always shown.</summary>
public static class ReadingText
{
    /// <summary>A linear reading with its sign, at the decimals of the step: <c>+9.845</c>, <c>-0.1250</c>, <c>0.000</c>.</summary>
    /// <param name="millimetres">The reading, millimetres.</param>
    /// <param name="unit">The unit it is told in.</param>
    /// <param name="stepMillimetres">The step of the readout or dial, millimetres.</param>
    /// <returns>The text, with a plain hyphen as minus.</returns>
    public static string Signed(double millimetres, LengthUnit unit, double stepMillimetres)
    {
        var text = Plain(millimetres, unit, stepMillimetres);
        return text[0] == '-' || IsZero(text) ? text : "+" + text;
    }

    /// <summary>A length without a plus sign, at the decimals of the step.</summary>
    /// <param name="millimetres">The length, millimetres.</param>
    /// <param name="unit">The unit it is told in.</param>
    /// <param name="stepMillimetres">The step, millimetres.</param>
    /// <returns>The text, with a plain hyphen as minus.</returns>
    public static string Plain(double millimetres, LengthUnit unit, double stepMillimetres)
    {
        var decimals = Decimals(unit.FromMillimetres(stepMillimetres));
        var text = unit.FromMillimetres(millimetres).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return IsZero(text) ? text.TrimStart('-') : text;
    }

    /// <summary>A rotary's reading in degrees and minutes as on its rim and dial: <c>357 deg 59'</c>; seconds where the dial has them.</summary>
    /// <param name="degrees">The reading, degrees.</param>
    /// <param name="stepDegrees">The dial's step, degrees.</param>
    /// <returns>The text.</returns>
    public static string Rotary(double degrees, double stepDegrees)
    {
        var seconds = stepDegrees * 60 < 0.999;
        var parts = (long)Math.Round(Math.Abs(degrees) * (seconds ? 3600 : 60), MidpointRounding.AwayFromZero);
        var perDegree = seconds ? 3600 : 60;
        var whole = parts / perDegree;
        var rest = parts % perDegree;
        var sign = degrees < 0 && parts > 0 ? "-" : string.Empty;
        return seconds
            ? string.Create(CultureInfo.InvariantCulture, $"{sign}{whole} deg {rest / 60:00}' {rest % 60:00}\"")
            : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole} deg {rest:00}'");
    }

    /// <summary>How many decimals a step needs: 3 for 0.005, 4 for 0.0005, 0 for 1.</summary>
    /// <param name="step">The step, in the unit shown.</param>
    /// <returns>0 to 6.</returns>
    public static int Decimals(double step)
    {
        for (var decimals = 0; decimals < 6; decimals++)
        {
            var scaled = step * Math.Pow(10, decimals);
            if (Math.Abs(scaled - Math.Round(scaled)) < 1e-6 && Math.Round(scaled) >= 1)
            {
                return decimals;
            }
        }

        return 6;
    }

    private static bool IsZero(string text) => text.All(c => c is '0' or '.' or '-');
}
