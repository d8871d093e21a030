namespace Handwheel.Jobs.Reading;

/// <summary>A repeat as typed.</summary>
/// <param name="Form"><c>circle</c>, <c>row</c> or <c>grid</c>.</param>
/// <param name="Count">How many (along X of a grid).</param>
/// <param name="CountY">How many along Y of a grid.</param>
/// <param name="Pitch">Diameter of a circle, pitch of a row, pitch along X of a grid.</param>
/// <param name="PitchY">Pitch along Y of a grid.</param>
/// <param name="Direction">Direction of a row, or of the first place of a circle; null along X.</param>
internal sealed record RepeatDraft(string Form, int Count, int CountY, TypedNumber Pitch, TypedNumber? PitchY, TypedNumber? Direction);
