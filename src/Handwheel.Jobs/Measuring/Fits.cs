namespace Handwheel.Jobs.Measuring;

/// <summary>A line through measured places, by least squares.</summary>
internal static class Fits
{
    /// <summary>The slope of a line.</summary>
    /// <param name="places">How far along, and how high.</param>
    /// <param name="spread">The least standard deviation along it that gives a slope.</param>
    /// <returns>Height per length; null for fewer than three places or too short a run.</returns>
    public static double? Slope(IReadOnlyList<(double Along, double High)> places, double spread)
    {
        if (places.Count < 3)
        {
            return null;
        }

        double ma = places.Average(p => p.Along), mh = places.Average(p => p.High);
        var aa = places.Sum(p => (p.Along - ma) * (p.Along - ma));
        return aa <= places.Count * spread * spread ? null : places.Sum(p => (p.Along - ma) * (p.High - mh)) / aa;
    }
}
