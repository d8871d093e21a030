namespace Handwheel.Jobs.Reading;

/// <summary>One corner of an outline as typed.</summary>
/// <param name="X">Plan X.</param>
/// <param name="Y">Plan Y.</param>
/// <param name="Fillet">Radius; null sharp.</param>
/// <param name="Chamfer">Leg; null none.</param>
/// <param name="ArcX">Centre of the arc by which the corner is reached.</param>
/// <param name="ArcY">Centre of that arc.</param>
/// <param name="Clockwise">The way round.</param>
internal sealed record CornerDraft(TypedNumber X, TypedNumber Y, TypedNumber? Fillet, TypedNumber? Chamfer, TypedNumber? ArcX, TypedNumber? ArcY, bool Clockwise);
