namespace Handwheel.Solids.Grids;

// The intervals along X of sixteen neighbouring lines at one height, gathered into local pieces, and how these are joined to those of the cell to the right
// (further along Y) and of the cell above. What it refers to is never written over: a copy stays as it is.
internal struct PieceCell
{
    internal static readonly int[] NoPairs = [];
    internal static readonly int[] FirstPair = [0, 0];

    // How many local pieces there are.
    internal int Count;

    // The local piece of each interval, in the order of rays; null when all are of piece 0.
    internal int[]? Labels;

    internal LocalPiece First;

    // The pieces from 1 on.
    internal LocalPiece[]? Others;

    // A stretch along X that every line from First.FirstLine to First.LastLine has metal on, where there is just one interval a line; else nothing.
    internal double CoreLo;

    internal double CoreHi;

    // Pairs (own piece, the other cell's piece) that are joined.
    internal int[] Right;

    internal int[] Up;

    internal readonly LocalPiece Piece(int index) => index == 0 ? First : Others![index - 1];
}
