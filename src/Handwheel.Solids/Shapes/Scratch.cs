namespace Handwheel.Solids.Shapes;

// A list of crossings kept per thread.
internal static class Scratch
{
    [ThreadStatic]
    private static List<(double T, int Piece)>? crossings;

    internal static List<(double T, int Piece)> Crossings()
    {
        crossings ??= [];
        crossings.Clear();
        return crossings;
    }

    internal static void Sort(List<(double T, int Piece)> items)
    {
        for (var i = 1; i < items.Count; i++)
        {
            var item = items[i];
            var j = i;
            while (j > 0 && (item.T < items[j - 1].T || (item.T == items[j - 1].T && item.Piece < items[j - 1].Piece)))
            {
                items[j] = items[j - 1];
                j--;
            }

            items[j] = item;
        }
    }
}
