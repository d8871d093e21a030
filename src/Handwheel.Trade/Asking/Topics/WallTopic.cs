using Handwheel.Trade.Strength;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Walls between holes.</summary>
internal static class WallTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var thread = ThreadFinder.Take(q);
        var named = q.Labelled(("centres", ["centres", "centers", "apart", "distance", "centre", "center", "pitch"]));
        q.Has("wall", "between", "bore", "hole", "holes", "thread", "left", "tapped");
        var distance = q.Mm(named.GetValueOrDefault("centres") ?? throw new UnansweredException("the distance of the centres is missing"));
        var first = Question.Need(q.Length(), "the bore's diameter");
        var second = thread?.MajorMm ?? q.Length() ?? first;
        var wall = Beams.WallBetween(distance, first, second);
        var basis = new Basis("plane geometry", Evidence.StandardFormula);
        r.Add("wall left", wall, "mm", basis, $"centres - (D1 + D2)/2 = {r.L(distance)} - ({r.L(first)} + {r.L(second)})/2 = {r.L(wall)}");
        if (thread is not null)
        {
            r.Add("share of the pitch", wall / thread.PitchMm, string.Empty, basis, "under one pitch a tap bulges or breaks through (common practice)");
        }

        if (wall < 0.5)
        {
            r.Caution(wall <= 0 ? "They break into each other." : "Under half a millimetre a drill wanders through: drill the second with the first plugged.");
        }
    }
}
