namespace Handwheel.Jobs.Reading;

/// <summary>What of a feature a sum or a size can name.</summary>
internal enum Measure
{
    /// <summary>Diameter.</summary>
    Across,

    /// <summary>Inner diameter of a ring.</summary>
    Bore,

    /// <summary>Across flats of a polygon.</summary>
    Flats,

    /// <summary>Along plan X before turning.</summary>
    Long,

    /// <summary>Along plan Y before turning.</summary>
    Wide,

    /// <summary>Diameter of a cone's lower end.</summary>
    AcrossBottom,

    /// <summary>Diameter of a cone's upper end.</summary>
    AcrossTop,

    /// <summary>The lower end.</summary>
    Bottom,

    /// <summary>The upper end.</summary>
    Top,

    /// <summary>From lower to upper end.</summary>
    High,

    /// <summary>Plan X of the centre.</summary>
    X,

    /// <summary>Plan Y of the centre.</summary>
    Y,
}
