namespace Handwheel.Solids.Cuts;

/// <summary>What a cutter's path is.</summary>
public enum PathKind
{
    /// <summary>One place.</summary>
    Place,

    /// <summary>A straight line of any direction.</summary>
    Straight,

    /// <summary>A circular arc at constant Z.</summary>
    Arc,
}
