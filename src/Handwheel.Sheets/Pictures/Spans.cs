namespace Handwheel.Sheets.Pictures;

/// <summary>Runs of metal along one line, sorted, apart.</summary>
internal static class Spans
{
    /// <summary>Runs with more metal.</summary>
    /// <param name="metal">What is there.</param>
    /// <param name="more">What is added.</param>
    /// <returns>Both.</returns>
    public static IReadOnlyList<Span> Add(IReadOnlyList<Span> metal, Span more)
    {
        if (more.High <= more.Low)
        {
            return metal;
        }

        var joined = more;
        var kept = new List<Span>();
        foreach (var span in metal)
        {
            if (span.High < joined.Low - 1e-9 || span.Low > joined.High + 1e-9)
            {
                kept.Add(span);
            }
            else
            {
                joined = new(Math.Min(joined.Low, span.Low), Math.Max(joined.High, span.High));
            }
        }

        kept.Add(joined);
        kept.Sort((a, b) => a.Low.CompareTo(b.Low));
        return kept;
    }

    /// <summary>Runs with metal taken away.</summary>
    /// <param name="metal">What is there.</param>
    /// <param name="less">What is taken.</param>
    /// <returns>What is left.</returns>
    public static IReadOnlyList<Span> Cut(IReadOnlyList<Span> metal, Span less)
    {
        var kept = new List<Span>();
        foreach (var span in metal)
        {
            if (less.Low > span.Low)
            {
                kept.Add(new(span.Low, Math.Min(span.High, less.Low)));
            }

            if (less.High < span.High)
            {
                kept.Add(new(Math.Max(span.Low, less.High), span.High));
            }
        }

        return [.. kept.Where(s => s.High - s.Low > 1e-9)];
    }
}
