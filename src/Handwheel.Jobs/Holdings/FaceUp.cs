namespace Handwheel.Jobs.Holdings;

/// <summary>Which side of the part (in its drawing) looks up at the spindle. The part is brought there by one right-handed quarter or half turn, see <see cref="Holding"/>.</summary>
public enum FaceUp
{
    /// <summary>As drawn: part Z up.</summary>
    Top,

    /// <summary>Turned over about part X: part -Z up, part Y towards holding -Y.</summary>
    Underside,

    /// <summary>Part -Y up: turned about part X by -90 deg (front looks up).</summary>
    Front,

    /// <summary>Part +Y up: turned about part X by +90 deg.</summary>
    Back,

    /// <summary>Part +X up: turned about part Y by -90 deg (stood on its left end).</summary>
    Right,

    /// <summary>Part -X up: turned about part Y by +90 deg (stood on its right end).</summary>
    Left,
}
