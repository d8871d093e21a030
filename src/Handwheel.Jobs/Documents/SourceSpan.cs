namespace Handwheel.Jobs.Documents;

/// <summary>A place in a typed document.</summary>
/// <param name="File">The file's name as it was given, without a machine's folders.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column of the first character, from 1, counted in text elements as a person sees them.</param>
/// <param name="Length">How many characters the place covers, at least 1.</param>
public readonly record struct SourceSpan(string File, int Line, int Column, int Length)
{
    /// <summary><c>file:line:column</c>.</summary>
    /// <returns>The place as text.</returns>
    public override string ToString() => FormattableString.Invariant($"{File}:{Line}:{Column}");
}
