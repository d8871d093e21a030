namespace Handwheel.Proof.Following;

/// <summary>What a touch-off truly met.</summary>
/// <param name="True">Where the axis truly stands as it touches (for Z the cutter&#39;s lowest point); null where nothing is met.</param>
/// <param name="Surface">Where the surface itself is, along the axis; null where nothing is met.</param>
internal readonly record struct Touched(double? True, double? Surface)
{
    /// <summary>Nothing is met.</summary>
    public static Touched Nothing => default;
}
