namespace Handwheel.Jobs.Moves;

/// <summary>The axes a person cranks.</summary>
public enum Axis
{
    /// <summary>Long travel.</summary>
    X,

    /// <summary>Cross travel.</summary>
    Y,

    /// <summary>Depth.</summary>
    Z,

    /// <summary>Rotary (or indexer).</summary>
    T,
}
