namespace Handwheel.Proof.Loads;

/// <summary>How what presses on the work meets it.</summary>
internal enum ContactKind
{
    /// <summary>Nowhere.</summary>
    None,

    /// <summary>On a face.</summary>
    Face,

    /// <summary>Along a line that stands up: a round or a corner whose axis is upright.</summary>
    UprightLine,

    /// <summary>Along a line that lies: a round along the jaws, the edge of a chamfer.</summary>
    LyingLine,

    /// <summary>At a point.</summary>
    Point,
}
