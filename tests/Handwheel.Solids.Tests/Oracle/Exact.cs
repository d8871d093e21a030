namespace Handwheel.Solids.Tests.Oracle;

/// <summary>Square root, sine and cosine in 28-digit decimals, so that the oracle shares neither code nor rounding with the engine.</summary>
internal static class Exact
{
    public const decimal Pi = 3.1415926535897932384626433833m;

    public static decimal Sqrt(decimal v)
    {
        if (v <= 0)
        {
            return 0;
        }

        var x = (decimal)Math.Sqrt((double)v);
        if (x == 0)
        {
            return 0;
        }

        for (var i = 0; i < 3; i++)
        {
            x = (x + (v / x)) / 2;
        }

        return x;
    }

    public static (decimal Sin, decimal Cos) SinCos(double angle)
    {
        var a = (decimal)angle;
        a -= Math.Round(a / (2 * Pi)) * 2 * Pi;
        decimal sin = 0, cos = 0, term = 1;
        for (var n = 0; n < 60; n++)
        {
            switch (n % 4)
            {
                case 0: cos += term; break;
                case 1: sin += term; break;
                case 2: cos -= term; break;
                default: sin -= term; break;
            }

            term *= a / (n + 1);
        }

        return (sin, cos);
    }
}
