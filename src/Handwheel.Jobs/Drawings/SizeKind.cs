namespace Handwheel.Jobs.Drawings;

/// <summary>What a size measures.</summary>
public enum SizeKind
{
    /// <summary>A diameter, two-point through the axis.</summary>
    Across,

    /// <summary>Between opposite flats of a polygon, block or slot.</summary>
    AcrossFlats,

    /// <summary>A feature's height between its two ends.</summary>
    High,

    /// <summary>A cut's depth from the face it starts in.</summary>
    Deep,

    /// <summary>A block's or slot's length along plan X before turning.</summary>
    Long,

    /// <summary>A block's or slot's width along plan Y before turning.</summary>
    Wide,

    /// <summary>The distance between two features' axes or faces.</summary>
    Distance,

    /// <summary>An angle between two features' edges, radians.</summary>
    Angle,

    /// <summary>A radius.</summary>
    Radius,

    /// <summary>How far an axis may lie from its place: the diameter of a disc.</summary>
    Position,

    /// <summary>The inner diameter of a ring, two-point through the axis.</summary>
    Bore,

    /// <summary>Over the corners of a polygon: twice from its middle to one where none is opposite.</summary>
    AcrossCorners,
}
