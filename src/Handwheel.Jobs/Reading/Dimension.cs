namespace Handwheel.Jobs.Reading;

/// <summary>What a worked-out number is: bare, or a power of a length, or an angle.</summary>
internal enum Dimension
{
    /// <summary>A bare number: takes the unit of what it meets.</summary>
    Bare,

    /// <summary>Millimetres.</summary>
    Length,

    /// <summary>Square millimetres.</summary>
    Area,

    /// <summary>Degrees.</summary>
    Angle,
}
