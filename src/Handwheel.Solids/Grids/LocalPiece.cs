namespace Handwheel.Solids.Grids;

// Joined intervals along X of one cell, measured. Lines are the cell's, counted from 0.
internal struct LocalPiece
{
    // Sum of the intervals' lengths.
    internal double Length;

    internal double Lo;

    internal double Hi;

    internal int FirstLine;

    internal int LastLine;

    // The longest interval, of equals the first.
    internal double LongestLo;

    internal double LongestHi;

    internal int LongestLine;

    internal static LocalPiece None => new()
    {
        Lo = double.PositiveInfinity,
        Hi = double.NegativeInfinity,
        FirstLine = int.MaxValue,
        LastLine = -1,
        LongestLo = 0,
        LongestHi = -1,
    };

    // Intervals come line by line, along each line rising.
    internal void Add(int line, double lo, double hi)
    {
        Length += hi - lo;
        Lo = Math.Min(Lo, lo);
        Hi = Math.Max(Hi, hi);
        FirstLine = Math.Min(FirstLine, line);
        LastLine = line;
        if (hi - lo > LongestHi - LongestLo)
        {
            (LongestLo, LongestHi, LongestLine) = (lo, hi, line);
        }
    }
}
