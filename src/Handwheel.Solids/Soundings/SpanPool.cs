namespace Handwheel.Solids.Soundings;

// Interval lists kept per thread and handed out like a stack.
internal static class SpanPool
{
    [ThreadStatic]
    private static List<SpanList>? free;

    internal static Rental Rent(out SpanList list)
    {
        free ??= [];
        if (free.Count == 0)
        {
            list = new SpanList();
        }
        else
        {
            list = free[^1];
            free.RemoveAt(free.Count - 1);
            list.Clear();
        }

        return new Rental(list);
    }

    internal readonly ref struct Rental(SpanList list)
    {
        private readonly SpanList list = list;

        public void Dispose() => free!.Add(list);
    }
}
