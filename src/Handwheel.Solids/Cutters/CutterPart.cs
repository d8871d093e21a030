namespace Handwheel.Solids.Cutters;

/// <summary>Which part of a cutter, or of what drives it, a profile piece belongs to.</summary>
public enum CutterPart
{
    /// <summary>The cutting edges.</summary>
    Edge,

    /// <summary>Reduced neck between edge and shank.</summary>
    Neck,

    /// <summary>Plain shank.</summary>
    Shank,

    /// <summary>Arbor of a saw or a shell cutter.</summary>
    Arbor,

    /// <summary>Screw or nut that holds a saw on its arbor.</summary>
    Screw,

    /// <summary>Chuck, collet or holder.</summary>
    Chuck,

    /// <summary>Nose of the spindle.</summary>
    Nose,
}
