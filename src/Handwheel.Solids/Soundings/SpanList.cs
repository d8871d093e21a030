namespace Handwheel.Solids.Soundings;

// Growable intervals, reused from sounding to sounding so that none allocates.
internal sealed class SpanList
{
    private Span[] items = new Span[8];
    private Span[] spare = new Span[8];

    internal int Count { get; private set; }

    internal ReadOnlySpan<Span> Items => items.AsSpan(0, Count);

    internal ref Span this[int i] => ref items[i];

    internal void Clear() => Count = 0;

    internal void Add(in Span span)
    {
        if (Count == items.Length)
        {
            Array.Resize(ref items, Count * 2);
        }

        items[Count++] = span;
    }

    // Adds lo..hi unless nothing lies between.
    internal void Add(double lo, double hi, int loFace, int hiFace)
    {
        if (lo < hi)
        {
            Add(new Span(lo, hi, new(0, loFace), new(0, hiFace)));
        }
    }

    internal void AddAll(ReadOnlySpan<Span> spans)
    {
        foreach (ref readonly var span in spans)
        {
            Add(span);
        }
    }

    // Gives the items from an index on another owner and faces that start elsewhere.
    internal void Rename(int start, int owner, int firstFace)
    {
        for (var i = start; i < Count; i++)
        {
            var s = items[i];
            items[i] = new(
                s.From,
                s.To,
                new(owner == 0 ? s.FromSurface.Owner : owner, s.FromSurface.Face + firstFace),
                new(owner == 0 ? s.ToSurface.Owner : owner, s.ToSurface.Face + firstFace));
        }
    }

    // Sorted, overlapping and touching intervals made one, for the items from an index on.
    internal void Normalise(int start = 0)
    {
        Sort(start);
        var n = start;
        for (var i = start; i < Count; i++)
        {
            var next = items[i];
            if (n > start && next.From <= items[n - 1].To)
            {
                var last = items[n - 1];
                if (next.To > last.To)
                {
                    items[n - 1] = last with { To = next.To, ToSurface = next.ToSurface };
                }
            }
            else
            {
                items[n++] = next;
            }
        }

        Count = n;
    }

    // One interval from the least start to the greatest end: what a convex piece answers.
    internal void Hull(int start)
    {
        if (Count - start < 2)
        {
            return;
        }

        var hull = items[start];
        for (var i = start + 1; i < Count; i++)
        {
            var s = items[i];
            hull = new(
                Math.Min(hull.From, s.From),
                Math.Max(hull.To, s.To),
                s.From < hull.From ? s.FromSurface : hull.FromSurface,
                s.To > hull.To ? s.ToSurface : hull.ToSurface);
        }

        items[start] = hull;
        Count = start + 1;
    }

    // Both lists sorted and disjoint. What is taken away counts as open: a touch takes nothing.
    internal void Subtract(SpanList other) => Subtract(other, 0, 0);

    // The same for the items from indices on.
    internal void Subtract(SpanList other, int start, int otherStart)
    {
        var n = start;
        var k = otherStart;
        Reserve(start + (Count - start) + (other.Count - otherStart) + 1);
        items.AsSpan(0, start).CopyTo(spare);
        for (var i = start; i < Count; i++)
        {
            var s = items[i];
            while (k < other.Count && other.items[k].To <= s.From)
            {
                k++;
            }

            var whole = true;
            for (var j = k; j < other.Count && other.items[j].From < s.To; j++)
            {
                ref readonly var cut = ref other.items[j];
                if (cut.From > s.From)
                {
                    spare[n++] = new(s.From, cut.From, s.FromSurface, cut.FromSurface);
                }

                if (cut.To >= s.To)
                {
                    whole = false;
                    break;
                }

                s = s with { From = cut.To, FromSurface = cut.ToSurface };
            }

            if (whole)
            {
                spare[n++] = s;
            }
        }

        (items, spare) = (spare, items);
        Count = n;
    }

    // Both lists sorted and disjoint.
    internal void Intersect(SpanList other) => Intersect(other, 0, 0);

    internal void Intersect(SpanList other, int start, int otherStart)
    {
        Reserve(start + (Count - start) + (other.Count - otherStart) + 1);
        items.AsSpan(0, start).CopyTo(spare);
        var n = start;
        int i = start, j = otherStart;
        while (i < Count && j < other.Count)
        {
            ref readonly var a = ref items[i];
            ref readonly var b = ref other.items[j];
            var lo = Math.Max(a.From, b.From);
            var hi = Math.Min(a.To, b.To);
            if (lo < hi)
            {
                spare[n++] = new(lo, hi, a.From >= b.From ? a.FromSurface : b.FromSurface, a.To <= b.To ? a.ToSurface : b.ToSurface);
            }

            if (a.To < b.To)
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        (items, spare) = (spare, items);
        Count = n;
    }

    // Keeps lo..hi of the items from an index on.
    internal void Clip(int start, double lo, double hi, int loFace, int hiFace)
    {
        var n = start;
        for (var i = start; i < Count; i++)
        {
            var s = items[i];
            if (s.From < lo)
            {
                s = s with { From = lo, FromSurface = new(0, loFace) };
            }

            if (s.To > hi)
            {
                s = s with { To = hi, ToSurface = new(0, hiFace) };
            }

            if (s.From < s.To)
            {
                items[n++] = s;
            }
        }

        Count = n;
    }

    // First intervals thinner than the least go, then gaps thinner than it are closed.
    internal void Clean(double least)
    {
        var n = 0;
        for (var i = 0; i < Count; i++)
        {
            if (items[i].Length >= least)
            {
                items[n++] = items[i];
            }
        }

        Count = n;
        n = 0;
        for (var i = 0; i < Count; i++)
        {
            if (n > 0 && items[i].From - items[n - 1].To < least)
            {
                items[n - 1] = items[n - 1] with { To = items[i].To, ToSurface = items[i].ToSurface };
            }
            else
            {
                items[n++] = items[i];
            }
        }

        Count = n;
    }

    internal Spans ToSpans() => Spans.Take(Items.ToArray());

    private static bool Before(in Span a, in Span b)
    {
        if (a.From != b.From)
        {
            return a.From < b.From;
        }

        if (a.To != b.To)
        {
            return a.To > b.To;
        }

        return a.FromSurface.Owner != b.FromSurface.Owner
            ? a.FromSurface.Owner < b.FromSurface.Owner
            : a.FromSurface.Face < b.FromSurface.Face;
    }

    private void Reserve(int n)
    {
        if (items.Length < n)
        {
            Array.Resize(ref items, n * 2);
        }

        if (spare.Length < items.Length)
        {
            spare = new Span[items.Length];
        }
    }

    // Insertion sort for the usual few; stable order by start, then longest, then surface, so that the result never depends on the order given.
    private void Sort(int start)
    {
        if (Count - start > 64)
        {
            Array.Sort(items, start, Count - start, Comparer<Span>.Create((a, b) => Before(a, b) ? -1 : Before(b, a) ? 1 : 0));
            return;
        }

        for (var i = start + 1; i < Count; i++)
        {
            var s = items[i];
            var j = i;
            while (j > start && Before(s, items[j - 1]))
            {
                items[j] = items[j - 1];
                j--;
            }

            items[j] = s;
        }
    }
}
