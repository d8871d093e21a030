namespace Handwheel.Proof;

/// <summary>How finely a proof looks.</summary>
public sealed record ProofOptions
{
    /// <summary>Spacing of the grid&#39;s rays, millimetres; null: chosen from the size of the work.</summary>
    public double? Spacing { get; init; }

    /// <summary>Threads the engine may use; results do not depend on it.</summary>
    public int Threads { get; init; } = 2;

    /// <summary>The usual options.</summary>
    public static ProofOptions Usual { get; } = new();
}
