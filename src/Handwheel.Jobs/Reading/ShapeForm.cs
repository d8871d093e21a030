namespace Handwheel.Jobs.Reading;

/// <summary>The forms of a feature's plan.</summary>
internal enum ShapeForm
{
    /// <summary>Not read.</summary>
    None,

    /// <summary>A circle.</summary>
    Round,

    /// <summary>A ring.</summary>
    Ring,

    /// <summary>A rectangle.</summary>
    Block,

    /// <summary>A slot with round ends.</summary>
    Slot,

    /// <summary>A regular polygon.</summary>
    Polygon,

    /// <summary>A cone.</summary>
    Cone,

    /// <summary>Tangent to two rounds.</summary>
    Tangent,

    /// <summary>Lines and arcs.</summary>
    Outline,
}
