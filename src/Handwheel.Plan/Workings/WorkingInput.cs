using Handwheel.Jobs.Documents;

namespace Handwheel.Plan.Workings;

/// <summary>One number a working rests on.</summary>
/// <param name="Name">What it is, in words of the job: <c>hub across</c>, <c>em10</c>.</param>
/// <param name="Value">Its value, millimetres or degrees as the working&#39;s unit says.</param>
/// <param name="Text">Its value as printed in the job&#39;s unit.</param>
/// <param name="Kind">Where it comes from.</param>
/// <param name="Says">One phrase: <c>the middle of hub across 10 +0 -0.05</c>, <c>shop: em10&#39;s true size</c>.</param>
/// <param name="Where">The place where it was typed; null for a rule.</param>
/// <param name="From">The working that gave it, for <see cref="InputKind.WorkedOut"/>.</param>
public sealed record WorkingInput(string Name, double Value, string Text, InputKind Kind, string Says, SourceSpan? Where, Working? From);
