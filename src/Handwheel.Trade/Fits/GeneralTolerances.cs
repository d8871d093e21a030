namespace Handwheel.Trade.Fits;

/// <summary>General tolerances for sizes without their own.</summary>
/// <remarks>ISO 2768-1:1989 Tables 1 (linear), 2 (broken edges) and 3 (angles). Classes f, m, c, v.</remarks>
public static class GeneralTolerances
{
    /// <summary>The basis of the tables.</summary>
    public static Basis Basis { get; } = new("ISO 2768-1:1989 Tables 1 to 3", Evidence.HandbookTable);

    private const double No = double.NaN;
    private static readonly double[] LinearEnds = [3, 6, 30, 120, 400, 1000, 2000, 4000];
    private static readonly double[] AngleEnds = [10, 50, 120, 400];

    /// <summary>Permissible deviation of a length.</summary>
    /// <param name="sizeMm">Size, mm, 0.5 to 4000.</param>
    /// <param name="className">f, m, c or v.</param>
    /// <returns>Plus and minus, mm; NaN where the table gives none (under 0.5 the tolerance is written beside the size).</returns>
    public static double LinearMm(double sizeMm, char className)
    {
        var band = sizeMm is >= 0.5 and <= 4000 ? Array.FindIndex(LinearEnds, e => sizeMm <= e) : -1;
        return band < 0 ? No : className switch
        {
            'f' => new[] { 0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, No }[band],
            'm' => new[] { 0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2 }[band],
            'c' => new[] { 0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4 }[band],
            'v' => new[] { No, 0.5, 1, 1.5, 2.5, 4, 6, 8 }[band],
            _ => No,
        };
    }

    /// <summary>Permissible deviation of a radius or chamfer.</summary>
    /// <param name="sizeMm">Radius or chamfer height, mm, from 0.5.</param>
    /// <param name="className">f, m, c or v.</param>
    /// <returns>Plus and minus, mm; NaN where the table gives none.</returns>
    public static double EdgeMm(double sizeMm, char className)
    {
        var band = sizeMm is not (>= 0.5 and <= 4000) ? -1 : sizeMm <= 3 ? 0 : sizeMm <= 6 ? 1 : 2;
        return band < 0 ? No : className switch
        {
            'f' or 'm' => new[] { 0.2, 0.5, 1 }[band],
            'c' or 'v' => new[] { 0.4, 1, 2 }[band],
            _ => No,
        };
    }

    /// <summary>Permissible deviation of an angle.</summary>
    /// <param name="shorterLegMm">Length of the shorter leg, mm, over 0.</param>
    /// <param name="className">f, m, c or v.</param>
    /// <returns>Plus and minus, minutes of arc; NaN where the table gives none.</returns>
    public static double AngleMinutes(double shorterLegMm, char className)
    {
        if (!(shorterLegMm > 0) || double.IsInfinity(shorterLegMm))
        {
            return No;
        }

        var band = Array.FindIndex(AngleEnds, e => shorterLegMm <= e);
        band = band < 0 ? 4 : band;
        return className switch
        {
            'f' or 'm' => new double[] { 60, 30, 20, 10, 5 }[band],
            'c' => new double[] { 90, 60, 30, 15, 10 }[band],
            'v' => new double[] { 180, 120, 60, 30, 20 }[band],
            _ => No,
        };
    }
}
