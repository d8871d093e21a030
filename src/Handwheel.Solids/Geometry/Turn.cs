namespace Handwheel.Solids.Geometry;

// Angles whose quarter turns are exact: cos(pi/2) is 0, not 6e-17.
internal static class Turn
{
    internal const double Full = 2 * Math.PI;

    internal static (double Sin, double Cos) SinCos(double angle)
    {
        var quarters = angle / (Math.PI / 2);
        var whole = Math.Round(quarters);
        if (quarters == whole && Math.Abs(whole) < 1e9)
        {
            return ((((long)whole % 4) + 4) % 4) switch
            {
                0 => (0, 1),
                1 => (1, 0),
                2 => (0, -1),
                _ => (-1, 0),
            };
        }

        return Math.SinCos(angle);
    }

    // The angle brought into [0, 2 pi).
    internal static double Positive(double angle)
    {
        var a = Math.IEEERemainder(angle, Full);
        return a < 0 ? a + Full : a;
    }
}
