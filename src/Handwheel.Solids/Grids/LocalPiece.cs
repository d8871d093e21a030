using System.Numerics;
using System.Runtime.Intrinsics;

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

    // One interval on each of sixteen lines, and the stretch they all share (which may be none); null when a line has none.
    internal static (LocalPiece Piece, double CoreLo, double CoreHi)? Sixteen(ReadOnlySpan<double> los, ReadOnlySpan<double> his)
    {
        Vector256<double> lo = Vector256.Create(los), hi = Vector256.Create(his), core = lo, end = hi, length = hi - lo, longest = length;
        var all = Vector256.LessThan(lo, hi);
        for (var i = 4; i < RaySet.BlockSize; i += 4)
        {
            Vector256<double> a = Vector256.Create(los[i..]), b = Vector256.Create(his[i..]);
            all &= Vector256.LessThan(a, b);
            (lo, core) = (Vector256.MinNative(lo, a), Vector256.MaxNative(core, a));
            (hi, end) = (Vector256.MaxNative(hi, b), Vector256.MinNative(end, b));
            length += b - a;
            longest = Vector256.MaxNative(longest, b - a);
        }

        if (all.ExtractMostSignificantBits() != 0b1111)
        {
            return null;
        }

        var most = Vector256.Create(Most(longest));
        var line = 0;
        for (uint met = 0; met == 0; line += 4)
        {
            met = Vector256.Equals(Vector256.Create(his[line..]) - Vector256.Create(los[line..]), most).ExtractMostSignificantBits();
            line += met == 0 ? 0 : BitOperations.TrailingZeroCount(met) - 4;
        }

        var piece = new LocalPiece
        {
            Length = Vector256.Sum(length),
            Lo = -Most(-lo),
            Hi = Most(hi),
            LastLine = RaySet.BlockSize - 1,
            LongestLo = los[line],
            LongestHi = his[line],
            LongestLine = line,
        };
        return (piece, Most(core), -Most(-end));
    }

    private static double Most(Vector256<double> v) => Math.Max(Math.Max(v[0], v[1]), Math.Max(v[2], v[3]));

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
