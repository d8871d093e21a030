using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Lines;

/// <summary>A bracket of passes: its lines are repeated at each depth. The depth move is its first line and carries one number.</summary>
public sealed record PassBracket : SheetLine
{
    /// <summary>Number of the depth move.</summary>
    public required int Number { get; init; }

    /// <summary>Z readings of the passes in order, millimetres.</summary>
    public required IReadOnlyList<double> Depths { get; init; }

    /// <summary>Working of each depth.</summary>
    public required IReadOnlyList<Working> DepthWorkings { get; init; }

    /// <summary>The depth move of each pass as it is made: from where, which way, how many turns; empty where it was not worked out.</summary>
    public IReadOnlyList<MoveLine> DepthMoves { get; init; } = [];

    /// <summary>The lines done at each depth, after the depth move.</summary>
    public required IReadOnlyList<SheetLine> Lines { get; init; }

    /// <summary>How many times the whole bracket is gone through (rows), with <see cref="SheetLine.Remark"/> saying what changes; 1 mostly.</summary>
    public int Times { get; init; } = 1;
}
