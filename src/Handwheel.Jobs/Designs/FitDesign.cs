using Handwheel.Quantities;

namespace Handwheel.Jobs.Designs;

/// <summary>A size of the drawing and what goes in it or on it: the least and greatest clearance.</summary>
public sealed record FitDesign : DesignLine
{
    /// <summary>The size: <c>pin across</c>.</summary>
    public required string Own { get; init; }

    /// <summary>Its limits in the drawing, mm.</summary>
    public required Limits OwnLimits { get; init; }

    /// <summary>Whether it is the hole of the two.</summary>
    public required bool OwnIsHole { get; init; }

    /// <summary>The class the line gives it (<c>H9</c> of <c>H9/f8</c>); null: none.</summary>
    public string? OwnZone { get; init; }

    /// <summary>The other as typed: <c>dowel 3 m6</c>, <c>bolt</c>.</summary>
    public required string Counter { get; init; }

    /// <summary>Its limits, mm.</summary>
    public required Limits CounterLimits { get; init; }

    /// <summary><c>slide</c>, <c>press</c>, or null where clearances were typed or nothing was asked.</summary>
    public string? Wanted { get; init; }

    /// <summary>Least and greatest clearance asked for, mm; negative is tight; null: none typed.</summary>
    public Limits? Clear { get; init; }
}
