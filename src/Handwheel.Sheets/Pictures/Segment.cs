using Handwheel.Jobs.Moves;

namespace Handwheel.Sheets.Pictures;

/// <summary>One move with where it begins.</summary>
/// <param name="From">Readings before.</param>
/// <param name="To">Readings after.</param>
/// <param name="Cuts">Whether it is meant to cut.</param>
/// <param name="Cutter">The cutter in the spindle; null where none is.</param>
internal sealed record Segment(Reading From, Reading To, bool Cuts, string? Cutter)
{
    /// <summary>Whether the rotary turns.</summary>
    public bool Turns => Math.Abs(To.T - From.T) > 1e-9;

    /// <summary>Whether the spindle's place in plan changes.</summary>
    public bool Travels => Math.Abs(To.X - From.X) > 1e-9 || Math.Abs(To.Y - From.Y) > 1e-9;

    /// <summary>Each step's moves, by step id.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>The moves in order.</returns>
    public static IReadOnlyDictionary<string, IReadOnlyList<Segment>> Of(CourseStage stage)
    {
        var steps = new SortedDictionary<string, IReadOnlyList<Segment>>(StringComparer.Ordinal);
        Reading? at = null;
        string? cutter = null;
        foreach (var step in stage.Steps)
        {
            var moves = new List<Segment>();
            foreach (var happening in step.Events)
            {
                if (happening is CutterIn put)
                {
                    cutter = put.Cutter;
                }
                else if (happening is Move move)
                {
                    moves.Add(new(at ?? move.To, move.To, move.Cutting, cutter));
                    at = move.To;
                }
            }

            steps[step.Id] = moves;
        }

        return steps;
    }
}
