using Handwheel.Jobs.Documents;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Reading;

// What the clauses of a design's line said.
internal sealed class DesignClauses
{
    /// <summary>The clauses that stood in the line, with their places.</summary>
    public Dictionary<string, SourceSpan> Said { get; } = new(StringComparer.Ordinal);

    /// <summary>Values by clause, in N, N mm, MPa or mm.</summary>
    public Dictionary<string, Typed> Values { get; } = new(StringComparer.Ordinal);

    /// <summary>Words by clause.</summary>
    public Dictionary<string, string> Words { get; } = new(StringComparer.Ordinal);

    /// <summary>The features a beam rests on.</summary>
    public List<string> Rests { get; } = [];

    /// <summary>Clearances asked for.</summary>
    public Limits? Clear { get; set; }

    public Typed? Value(string clause) => Values.GetValueOrDefault(clause);

    public string? Word(string clause) => Words.GetValueOrDefault(clause);
}
