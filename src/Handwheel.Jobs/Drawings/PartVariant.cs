namespace Handwheel.Jobs.Drawings;

/// <summary>The four ways to take a drawing&#39;s limits.</summary>
public enum PartVariant
{
    /// <summary>As typed, limits left out of account.</summary>
    Nominal,

    /// <summary>Every size in the middle of its limits: what is aimed at.</summary>
    Aimed,

    /// <summary>Every limit on its side of least metal: adds shrunk, cuts grown.</summary>
    LeastMetal,

    /// <summary>Every limit on its side of most metal: adds grown, cuts shrunk.</summary>
    MostMetal,
}
