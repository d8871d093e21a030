using Handwheel.Solids.Grids;

namespace Handwheel.Proof.Nets;

/// <summary>
/// Which of the rays that show something are looked at closely: every fourth of every fourth row, and any other that shows it where none of those near it does.
/// So nothing that any ray shows is passed over, and what many rays show is not asked of each.
/// </summary>
internal static class Picked
{
    private const int Every = 4;

    /// <summary>Whether a ray is one of those always looked at.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="axis">Its axis.</param>
    /// <param name="ray">Its index.</param>
    /// <returns>Whether it is.</returns>
    public static bool Always(RayGrid grid, int axis, int ray)
    {
        var columns = grid.RaysInRow(axis);
        return ray / columns % Every == Every / 2 && ray % columns % Every == Every / 2;
    }

    /// <summary>The rays of an axis to look at closely.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <param name="shows">Whether a ray shows it.</param>
    /// <returns>Their indices, rising.</returns>
    public static IReadOnlyList<int> Of(RayGrid grid, int axis, Func<int, bool> shows)
    {
        var columns = grid.RaysInRow(axis);
        var showing = new List<int>();
        var cells = new HashSet<(int Row, int Column)>();
        for (var ray = 0; ray < grid.RaysAlong(axis); ray++)
        {
            if (shows(ray))
            {
                showing.Add(ray);
                if (Always(grid, axis, ray))
                {
                    cells.Add((ray / columns / Every, ray % columns / Every));
                }
            }
        }

        return [.. showing.Where(r => Always(grid, axis, r) || cells.Add((r / columns / Every, r % columns / Every)))];
    }
}
