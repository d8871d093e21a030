namespace Handwheel.Jobs.Documents;

/// <summary>A number as a person typed it: what it is worth, how it stood, and where. Workings end at these.</summary>
/// <param name="Value">Millimetres for a length, radians for an angle, else the bare number; always finite.</param>
/// <param name="Text">As typed, with its unit or parentheses.</param>
/// <param name="Where">Its place.</param>
public sealed record Typed(double Value, string Text, SourceSpan Where);
