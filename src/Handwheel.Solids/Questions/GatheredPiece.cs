using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;

namespace Handwheel.Solids.Questions;

// Local pieces of many cells added up.
internal struct GatheredPiece
{
    private Box3 box;
    private double length;
    private double longest;
    private int longestRay;
    private double longestLo;
    private double longestHi;

    internal static GatheredPiece None => new() { box = Box3.Empty, longest = -1 };

    internal readonly double Length => length;

    internal void Add(LocalPiece piece, RayGrid grid, int row, int firstLine)
    {
        length += piece.Length;
        var z = grid.Zs[row];
        box = box.Union(new(new(piece.Lo, grid.Ys[firstLine + piece.FirstLine], z), new(piece.Hi, grid.Ys[firstLine + piece.LastLine], z)));
        var far = piece.LongestHi - piece.LongestLo;
        var ray = (row * grid.AlongX.Columns) + firstLine + piece.LongestLine;
        if (far > longest || (far == longest && (ray < longestRay || (ray == longestRay && piece.LongestLo < longestLo))))
        {
            (longest, longestRay, longestLo, longestHi) = (far, ray, piece.LongestLo, piece.LongestHi);
        }
    }

    // Cell: the area one line along X stands for, mm2.
    internal readonly Piece ToPiece(RayGrid grid, double cell) => new(
        new((longestLo + longestHi) / 2, grid.Ys[longestRay % grid.AlongX.Columns], grid.Zs[longestRay / grid.AlongX.Columns]),
        box,
        length * cell);
}
