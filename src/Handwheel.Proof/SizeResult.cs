namespace Handwheel.Proof;

/// <summary>A size as the proof found it on the part cut. Millimetres (angles: radians).</summary>
/// <param name="Name">The size&#39;s name.</param>
/// <param name="Least">The least two-point value found.</param>
/// <param name="Greatest">The greatest two-point value found.</param>
/// <param name="Lower">Least allowed.</param>
/// <param name="Upper">Greatest allowed.</param>
/// <param name="Ok">Whether both lie within the limits.</param>
/// <param name="ByHand">Whether it is left to hand work (rubbed, filed) and so not decided by moves.</param>
public sealed record SizeResult(string Name, double? Least, double? Greatest, double Lower, double Upper, bool Ok, bool ByHand)
{
    /// <summary>The middle of what was found; null where it could not be measured.</summary>
    public double? Planned => (Least + Greatest) / 2;
}
