namespace Handwheel.Trade.Tapers;

/// <summary>A named taper.</summary>
/// <param name="Family">Morse, Jacobs, Brown &amp; Sharpe, Jarno, 7/24, R8, pin.</param>
/// <param name="Number">Its number as spoken: <c>2</c>, <c>33</c>, <c>2 short</c>, <c>7/0</c>.</param>
/// <param name="PerFootIn">Taper on the diameter, inches a foot.</param>
/// <param name="LargeIn">Diameter at the gauge line or large end, in.</param>
/// <param name="SmallIn">Diameter at the small end of the plug, in; NaN where it depends on the length.</param>
/// <param name="LengthIn">Length between the two, in; NaN where it depends on the part.</param>
/// <param name="Basis">Where the numbers come from.</param>
public sealed record Taper(string Family, string Number, double PerFootIn, double LargeIn, double SmallIn, double LengthIn, Basis Basis)
{
    /// <summary>Family and number.</summary>
    public string Name => $"{Family} {Number}".Trim();

    /// <summary>Change of diameter per unit of length (1 in <c>Ratio</c>).</summary>
    public double Ratio => 12 / PerFootIn;

    /// <summary>Half of the included angle, degrees: atan(taper per foot / 24).</summary>
    public double HalfAngleDeg => Math.Atan(PerFootIn / 24) * 180 / Math.PI;

    /// <summary>Included angle, degrees.</summary>
    public double IncludedAngleDeg => 2 * HalfAngleDeg;

    /// <summary>Diameter at a distance from the large end.</summary>
    /// <param name="fromLargeIn">Distance toward the small end, in.</param>
    /// <returns>Diameter, in.</returns>
    public double DiameterIn(double fromLargeIn) => LargeIn - (fromLargeIn * PerFootIn / 12);

    /// <summary>How it is driven and pulled in: tang, slot, thread; empty where nothing is known.</summary>
    public IReadOnlyList<TaperDetail> Details { get; init; } = [];
}
