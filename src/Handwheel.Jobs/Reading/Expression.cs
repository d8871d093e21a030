using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Reading;

/// <summary>A typed number or a sum, before it is worked out.</summary>
/// <param name="Where">Its place.</param>
internal abstract record Expression(SourceSpan Where)
{
    // A number, converted where it carries a unit.
    internal sealed record Literal(SourceSpan Where, Quantity Value) : Expression(Where);

    // A feature's measure.
    internal sealed record Reference(SourceSpan Where, FeatureDraft Feature, Measure Measure) : Expression(Where);

    // Two values joined by a sign.
    internal sealed record Joined(SourceSpan Where, char Sign, Expression Left, Expression Right) : Expression(Where);

    // A value turned over.
    internal sealed record Minus(SourceSpan Where, Expression Of) : Expression(Where);

    // A root or a function of an angle.
    internal sealed record Called(SourceSpan Where, string Name, Expression Of) : Expression(Where);
}
