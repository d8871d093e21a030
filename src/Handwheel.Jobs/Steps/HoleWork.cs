namespace Handwheel.Jobs.Steps;

/// <summary>Ways of working a hole.</summary>
public enum HoleWork
{
    /// <summary>Spot for a drill.</summary>
    Spot,

    /// <summary>Drill.</summary>
    Drill,

    /// <summary>Ream.</summary>
    Ream,

    /// <summary>Bore with the boring head.</summary>
    Bore,

    /// <summary>Counterbore or spot face.</summary>
    Counterbore,

    /// <summary>Countersink.</summary>
    Countersink,

    /// <summary>Tap.</summary>
    Tap,
}
