using System.Collections;

namespace Handwheel.Solids.Soundings;

/// <summary>Sorted, disjoint, closed intervals along a line: where a sounding finds metal. Immutable.</summary>
public sealed class Spans : IReadOnlyList<Span>
{
    private readonly Span[] items;

    private Spans(Span[] items) => this.items = items;

    /// <summary>No interval.</summary>
    public static Spans None { get; } = new([]);

    /// <inheritdoc/>
    public int Count => items.Length;

    /// <summary>Sum of the lengths, mm.</summary>
    public double Length
    {
        get
        {
            var sum = 0.0;
            foreach (var span in items)
            {
                sum += span.Length;
            }

            return sum;
        }
    }

    /// <inheritdoc/>
    public Span this[int index] => items[index];

    /// <summary>Intervals in any order, made sorted and disjoint; those that touch become one.</summary>
    /// <param name="spans">The intervals.</param>
    /// <exception cref="ArgumentNullException"><paramref name="spans"/> is null.</exception>
    public static Spans Of(IEnumerable<Span> spans)
    {
        ArgumentNullException.ThrowIfNull(spans);
        var list = new SpanList();
        foreach (var span in spans)
        {
            list.Add(span);
        }

        list.Normalise();
        return list.ToSpans();
    }

    /// <summary>Whether a place along the line lies in an interval or on its end.</summary>
    /// <param name="t">Distance along the line, mm.</param>
    public bool Contains(double t) => IndexAt(t) >= 0;

    /// <summary>Index of the interval that holds a place along the line, or -1.</summary>
    /// <param name="t">Distance along the line, mm.</param>
    public int IndexAt(double t) => Array.FindIndex(items, s => s.From <= t && t <= s.To);

    /// <summary>What lies in either.</summary>
    /// <param name="other">The other intervals.</param>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public Spans Union(Spans other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var list = ToList();
        list.AddAll(other.items);
        list.Normalise();
        return list.ToSpans();
    }

    /// <summary>What lies in both.</summary>
    /// <param name="other">The other intervals.</param>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public Spans Intersection(Spans other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var list = ToList();
        list.Intersect(other.ToList());
        return list.ToSpans();
    }

    /// <summary>What lies in these and not in the others; the others count as open, so the result is closed.</summary>
    /// <param name="other">The intervals taken away.</param>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public Spans Difference(Spans other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var list = ToList();
        list.Subtract(other.ToList());
        return list.ToSpans();
    }

    /// <summary>Intervals of at least a length, gaps below it closed: first thin intervals go, then thin gaps.</summary>
    /// <param name="least">Least length kept, mm.</param>
    public Spans Cleaned(double least)
    {
        var list = ToList();
        list.Clean(least);
        return list.ToSpans();
    }

    /// <inheritdoc/>
    public IEnumerator<Span> GetEnumerator() => ((IEnumerable<Span>)items).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();

    internal static Spans Take(Span[] sorted) => sorted.Length == 0 ? None : new(sorted);

    internal SpanList ToList()
    {
        var list = new SpanList();
        list.AddAll(items);
        return list;
    }
}
