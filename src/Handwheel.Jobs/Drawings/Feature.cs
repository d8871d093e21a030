using Handwheel.Jobs.Documents;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Drawings;

/// <summary>One solid of the drawing, added or cut, straight along part Z unless <see cref="View"/> says otherwise.</summary>
public sealed record Feature
{
    /// <summary>The name as typed, lower-cased, spaces kept single.</summary>
    public required string Name { get; init; }

    /// <summary>Where its line stands.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Whether it takes metal away.</summary>
    public required bool IsCut { get; init; }

    /// <summary>Its outline's shape, in its own plan (centre at 0, 0).</summary>
    public required FeatureShape Shape { get; init; }

    /// <summary>Its centre in plan, part frame (all the places of a repeat stand in <see cref="Places"/>).</summary>
    public required Point2 Centre { get; init; }

    /// <summary>All its centres: one, or each place of a row, grid, circle or mirror; the first is <see cref="Centre"/>.</summary>
    public required IReadOnlyList<Place> Places { get; init; }

    /// <summary>The lower end along its view's axis, with its limits.</summary>
    public required Limits From { get; init; }

    /// <summary>The upper end along its view's axis, with its limits.</summary>
    public required Limits To { get; init; }

    /// <summary>Whether it was typed <c>through</c>: through the solid at that place.</summary>
    public bool Through { get; init; }

    /// <summary>Which side it is drawn from; its plan X, Y and its depth are taken in that view.</summary>
    public View View { get; init; } = View.Top;

    /// <summary>Whether it is drawn from the far side of its view: from below, from the back, from the left end. Places are the same; it looks the other way.</summary>
    public bool Behind { get; init; }

    /// <summary>Whether the end that looks at the viewer is the upper one along its view's axis: the mouth of a blind hole, the end that is chamfered.</summary>
    public bool LooksUp => (View == View.Front) == Behind;

    /// <summary>The included angle of a drilled hole's bottom, radians; null for a flat bottom.</summary>
    public double? PointAngle { get; init; }

    /// <summary>The thread tapped in it, as typed (<c>M6</c>, <c>1/4-20 UNC</c>); its solid is the drilled hole.</summary>
    public string? Thread { get; init; }

    /// <summary>Leg of the 45-degree chamfer round the end that faces the viewer, millimetres; 0 a sharp edge.</summary>
    public double ChamferAbove { get; init; }

    /// <summary>Leg of the 45-degree chamfer round the end that faces away from the viewer, millimetres; 0 a sharp edge.</summary>
    public double ChamferBelow { get; init; }
}
