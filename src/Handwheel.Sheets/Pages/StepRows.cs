using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Workings;

namespace Handwheel.Sheets.Pages;

/// <summary>The right column of a step: its rows, and where each move and each working has its row.</summary>
internal sealed class StepRows
{
    private readonly List<Piece> _pieces = [];
    private readonly Dictionary<int, int> _moves = [];
    private readonly Dictionary<Working, int> _workings = new(ReferenceEqualityComparer.Instance);

    /// <summary>Initializes a new instance of the <see cref="StepRows"/> class.</summary>
    /// <param name="step">The step.</param>
    /// <param name="rows">How its lines are written.</param>
    public StepRows(PlanStep step, MoveRows rows)
    {
        if (step.Lines.Any(l => l is MoveLine or PassBracket or TouchOffLine))
        {
            Heading = rows.Heading();
            _pieces.Add(Heading);
        }

        foreach (var line in step.Lines)
        {
            var row = _pieces.Count;
            _pieces.AddRange(rows.Of([line.Remark == step.Step.Text ? line with { Remark = string.Empty } : line]));
            Mark(line, row);
        }
    }

    /// <summary>What its columns are, to be told again where it goes on; null where it has no rows.</summary>
    public Piece? Heading { get; }

    /// <summary>Its pieces.</summary>
    public IReadOnlyList<Piece> Pieces => _pieces;

    /// <summary>Adds a piece under the rows.</summary>
    /// <param name="piece">The piece.</param>
    public void Under(Piece piece) => _pieces.Add(piece);

    /// <summary>The row of a move.</summary>
    /// <param name="move">Its number.</param>
    /// <returns>Its row; 0 where it has none.</returns>
    public int RowOf(int move) => _moves.GetValueOrDefault(move);

    /// <summary>The row of a working's reading.</summary>
    /// <param name="working">The working.</param>
    /// <returns>Its row; 0 where it has none.</returns>
    public int RowOf(Working working) => _workings.GetValueOrDefault(working);

    private void Mark(SheetLine line, int row)
    {
        switch (line)
        {
            case MoveLine move:
                _moves.TryAdd(move.Number, row);
                _workings.TryAdd(move.Working, row);
                break;
            case TouchOffLine touch:
                _workings.TryAdd(touch.Working, row);
                break;
            case PassBracket bracket:
                _moves.TryAdd(bracket.Number, row);
                foreach (var working in bracket.DepthWorkings)
                {
                    _workings.TryAdd(working, row);
                }

                foreach (var inner in bracket.Lines)
                {
                    Mark(inner, row);
                }

                break;
        }
    }
}
