using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Reading;

/// <summary>Limits as they stood in a line, before they are worked out.</summary>
/// <param name="Where">Their place.</param>
/// <param name="Form">How they were written.</param>
/// <param name="First">The first deviation, or the least value of a range (the nominal place then holds the least).</param>
/// <param name="Second">The second deviation, or the greatest value of a range.</param>
/// <param name="Zone">The tolerance class of a fit.</param>
internal sealed record LimitsDraft(SourceSpan Where, LimitsForm Form, TypedNumber? First, TypedNumber? Second, string? Zone);
