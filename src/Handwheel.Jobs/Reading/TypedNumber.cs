using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Reading;

/// <summary>A number read from a line and not yet worked out.</summary>
/// <param name="Sum">What it says.</param>
/// <param name="Text">As typed.</param>
/// <param name="Where">Its place.</param>
/// <param name="Unit">The unit typed with it; null bare or a sum.</param>
internal sealed record TypedNumber(Expression Sum, string Text, SourceSpan Where, string? Unit);
