using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

/// <summary>Gathers the findings of one reading, and says when there are enough.</summary>
internal sealed class FindingBag
{
    private readonly List<Finding> found = [];

    /// <summary>Whether there are as many as one reading gives.</summary>
    public bool Full => found.Count >= ReadingLimits.Findings - 1;

    /// <summary>How many there are.</summary>
    public int Count => found.Count;

    /// <summary>Whether one of them halts.</summary>
    public bool Halts => found.Exists(f => f.Grade == Grade.Halt);

    public void Add(Finding finding)
    {
        if (!Full)
        {
            found.Add(finding);
        }
    }

    // In order of place; documents in the order given. Where there are as many as one reading gives, the last one says that reading stopped.
    public IReadOnlyList<Finding> InOrder(IReadOnlyList<SourceText> sources)
    {
        var files = sources.Select(s => s.FileName).ToList();
        List<Finding> ordered = [.. found.Select((finding, i) => (finding, i))
            .OrderBy(x => files.IndexOf(x.finding.Where?.File ?? string.Empty))
            .ThenBy(x => x.finding.Where?.Line ?? 0)
            .ThenBy(x => x.finding.Where?.Column ?? 0)
            .ThenBy(x => x.i)
            .Select(x => x.finding)];
        if (Full && ordered[^1].Where is { } where)
        {
            ordered.Add(FindingCatalogue.TooMuch(
                where,
                FormattableString.Invariant($"There are {ordered.Count} findings already; reading stopped here, and more may be wrong."),
                "Mend those shown and read again."));
        }

        return ordered;
    }
}
