using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// Many cuts made ready at once: layers that are open to the top as columns, lowest floor first; all else as cuts, lowest first.
// A union has no order, so the bits are those of the order given.
internal sealed class GridJob
{
    private GridJob(Column[] columns, GridCut[] others)
    {
        Columns = columns;
        Others = others;
    }

    internal Column[] Columns { get; }

    internal GridCut[] Others { get; }

    // Top: no metal stands higher.
    internal static GridJob Of(IReadOnlyList<ISolid> cuts, double top)
    {
        var columns = new List<Column>(cuts.Count);
        var others = new List<GridCut>();
        foreach (var solid in cuts)
        {
            var cut = GridCut.Of(Solid.From(solid));
            if (cut.Split(top, columns) is { } rest)
            {
                others.Add(rest);
            }
        }

        Column[] sorted = [.. columns];
        Array.Sort(sorted.Select(c => c.Floor).ToArray(), sorted);
        return new(sorted, [.. others.OrderBy(c => c.Bounds.Min.Z)]);
    }
}
