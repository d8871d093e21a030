using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

/// <summary>What came of reading a document: what could be read, and everything there is to say about the rest.</summary>
/// <typeparam name="T">What the document describes.</typeparam>
public sealed record Read<T>
    where T : class
{
    /// <summary>What was read; null only where nothing useful could be. With a <see cref="Grade.Halt"/> among the findings it is not to be planned.</summary>
    public T? Value { get; init; }

    /// <summary>The shop that was opened (or is the value); null where it could not be.</summary>
    public Shop? Shop { get; init; }

    /// <summary>Every finding, in order of place, the job's own document first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The documents read: the job, then its shop.</summary>
    public required IReadOnlyList<SourceText> Sources { get; init; }

    /// <summary>Whether a finding halts, so that nothing further is to be made of the value.</summary>
    public bool Halted => Findings.Any(f => f.Grade == Grade.Halt);
}
