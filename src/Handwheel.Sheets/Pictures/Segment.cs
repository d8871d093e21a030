using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;

namespace Handwheel.Sheets.Pictures;

/// <summary>One move with where it begins.</summary>
/// <param name="From">Readings before.</param>
/// <param name="To">Readings after.</param>
/// <param name="Cuts">Whether it is meant to cut.</param>
/// <param name="Cutter">The cutter in the spindle; null where none is.</param>
internal sealed record Segment(Reading From, Reading To, bool Cuts, string? Cutter)
{
    /// <summary>Its number; 0 where it has none.</summary>
    public int Number { get; init; }

    /// <summary>Half of what touches metal here to find a zero; 0: no touch-off.</summary>
    public double Touches { get; init; }

    /// <summary>Whether the rotary turns.</summary>
    public bool Turns => Math.Abs(To.T - From.T) > 1e-9;

    /// <summary>Whether the spindle's place in plan changes.</summary>
    public bool Travels => Math.Abs(To.X - From.X) > 1e-9 || Math.Abs(To.Y - From.Y) > 1e-9;

    /// <summary>Each step's moves, by step id.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="shop">The shop, for what a cutter measures.</param>
    /// <returns>The moves and touch-offs in order.</returns>
    public static IReadOnlyDictionary<string, IReadOnlyList<Segment>> Of(CourseStage stage, Shop shop)
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
                    moves.Add(new(at ?? move.To, move.To, move.Cutting, cutter) { Number = move.Number });
                    at = move.To;
                }
                else if (happening is TouchOff { Axis: not Axis.T } touch)
                {
                    var place = Place(touch, at);
                    var half = touch.Half > 0 ? touch.Half : shop.Cutters.TryGetValue(touch.With, out var c) ? c.TrueAcross / 2 : 1.5;
                    moves.Add(new(place, place, false, cutter) { Touches = half });
                }
            }

            steps[step.Id] = moves;
        }

        return steps;
    }

    // Where the spindle stands as it touches: what it is set to along the axis found, else where it was sent.
    private static Reading Place(TouchOff touch, Reading? at) => new(
        touch.Axis == Axis.X ? touch.SetTo : touch.At.X,
        touch.Axis == Axis.Y ? touch.SetTo : touch.At.Y,
        touch.At.Z,
        at?.T ?? 0);
}
