using Handwheel.Trade.Geometry;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Bolt circles and chords.</summary>
internal static class BoltCircleTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var start = q.Angle() ?? 0;
        var counted = q.JustBefore("holes", "hole", "divisions", "bolts", "points");
        var named = q.Labelled(("holes", counted is null ? ["holes", "hole", "divisions", "bolts", "points", "off"] : []), ("circle", ["circle", "pcd", "bcd", "diameter", "dia", "on"]));
        q.Has("start", "starting", "first", "equally", "spaced", "clockwise", "cw", "ccw", "centre", "center");
        var holes = counted ?? (named.TryGetValue("holes", out var h) ? h.Value : Question.Need(q.Plain(), "the number of holes"));
        if (holes is not (>= 2 and <= 1000) || holes != Math.Floor(holes))
        {
            throw new UnansweredException($"{N(holes)} holes cannot be spaced; a whole number from 2 to 1000 is needed");
        }

        var n = (int)holes;
        var diameter = named.TryGetValue("circle", out var c) ? q.Mm(c) : q.Length();
        r.Add("chord factor", Circles.ChordFactor(n), string.Empty, Circles.Basis, $"sin(180 / {N(n)}) = {N(Circles.ChordFactor(n), 6)}");
        if (diameter is not { } d)
        {
            return;
        }

        r.Add("chord between neighbours", d * Circles.ChordFactor(n), "mm", Circles.Basis, $"{r.L(d)} x {N(Circles.ChordFactor(n), 6)} = {r.L(d * Circles.ChordFactor(n))}");
        var clockwise = q.Tokens.Any(t => t.Low is "clockwise" or "cw");
        var places = Circles.BoltCircle(n, d, start, clockwise);
        for (var i = 0; i < Math.Min(n, 48); i++)
        {
            r.Add($"hole {N(i + 1)} X", Clean(places[i].X), "mm", Circles.Basis, $"R cos({N(start + ((clockwise ? -360.0 : 360.0) * i / n), 4)} deg)")
                .Add($"hole {N(i + 1)} Y", Clean(places[i].Y), "mm", Circles.Basis, $"R sin({N(start + ((clockwise ? -360.0 : 360.0) * i / n), 4)} deg)");
        }

        r.Note(n > 48 ? "The first 48 holes are shown." : $"From the circle's centre; hole 1 at {N(start)} deg from +X, {(clockwise ? "clockwise" : "counterclockwise")} from above.");
    }

    private static double Clean(double value) => Math.Abs(value) < 1e-9 ? 0 : value;
}
