using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

/// <summary>Gathers the findings of one reading, and says when there are enough.</summary>
internal sealed class FindingBag
{
    private readonly List<Finding> found = [];
    private bool stopped;

    /// <summary>Whether there are as many as one reading gives.</summary>
    public bool Full => found.Count >= ReadingLimits.Findings - 1;

    /// <summary>How many there are.</summary>
    public int Count => found.Count;

    public void Add(Finding finding)
    {
        if (!Full)
        {
            found.Add(finding);
            return;
        }

        if (!stopped && finding.Where is { } where)
        {
            stopped = true;
            found.Add(FindingCatalogue.TooMuch(
                where,
                FormattableString.Invariant($"There are {ReadingLimits.Findings - 1} findings already; reading stopped, and more may be wrong."),
                "Mend those shown and read again."));
        }
    }

    // In order of place; documents in the order given.
    public IReadOnlyList<Finding> InOrder(IReadOnlyList<SourceText> sources)
    {
        var files = sources.Select(s => s.FileName).ToList();
        return [.. found.Select((finding, i) => (finding, i))
            .OrderBy(x => stopped && x.i == found.Count - 1)
            .ThenBy(x => files.IndexOf(x.finding.Where?.File ?? string.Empty))
            .ThenBy(x => x.finding.Where?.Line ?? 0)
            .ThenBy(x => x.finding.Where?.Column ?? 0)
            .ThenBy(x => x.i)
            .Select(x => x.finding)];
    }
}
