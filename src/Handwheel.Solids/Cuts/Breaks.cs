namespace Handwheel.Solids.Cuts;

// Where a line may enter or leave a piece: distances and the faces met. Lives on the stack.
internal ref struct Breaks(Span<(double T, int Face)> room)
{
    private readonly Span<(double T, int Face)> items = room;

    internal int Count { get; private set; }

    internal readonly ReadOnlySpan<(double T, int Face)> Items => items[..Count];

    internal void Add(double t, int face)
    {
        if (double.IsFinite(t))
        {
            items[Count++] = (t, face);
        }
    }

    // Where a stretch is judged: off its middle, where by symmetry a line may graze what it does not cross.
    internal static double Within(double lo, double hi) => lo + (0.4721359549995794 * (hi - lo));

    internal void Sort()
    {
        for (var i = 1; i < Count; i++)
        {
            var item = items[i];
            var j = i;
            while (j > 0 && (item.T < items[j - 1].T || (item.T == items[j - 1].T && item.Face < items[j - 1].Face)))
            {
                items[j] = items[j - 1];
                j--;
            }

            items[j] = item;
        }
    }
}
