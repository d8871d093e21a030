using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>An outline as points, close enough together that paper shows no corner where there is none.</summary>
internal static class OutlinePoints
{
    // No chord stands further off its arc than this, millimetres, and no arc has fewer chords to a whole turn.
    private const double Sagitta = 0.001;
    private const int Fewest = 144;

    /// <summary>An outline as a closed loop.</summary>
    /// <param name="outline">The outline.</param>
    /// <returns>Its points in order, the first not repeated.</returns>
    public static IReadOnlyList<Point2> Of(Outline outline) => [.. outline.Pieces.SelectMany(p => Along(p).SkipLast(1))];

    /// <summary>An arc as points, both ends among them.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radius">Its radius.</param>
    /// <param name="from">Where it begins, radians.</param>
    /// <param name="sweep">How far it goes, radians, counterclockwise positive.</param>
    /// <returns>Points.</returns>
    public static IEnumerable<Point2> Arc(Point2 centre, double radius, double from, double sweep) => Along(OutlinePiece.Arc(centre, radius, from, sweep));

    private static IEnumerable<Point2> Along(OutlinePiece piece)
    {
        var count = 1;
        if (piece.IsArc)
        {
            var whole = Math.Max(Fewest, Math.PI / Math.Acos(Math.Max(0, 1 - (Sagitta / piece.Radius))));
            count = Math.Max(2, (int)Math.Ceiling(Math.Abs(piece.Sweep) / (2 * Math.PI) * Math.Min(whole, 4096)));
        }

        for (var i = 0; i <= count; i++)
        {
            yield return piece.At((double)i / count);
        }
    }
}
