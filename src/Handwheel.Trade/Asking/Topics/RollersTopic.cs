using Handwheel.Trade.Tapers;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Tapers over rollers and balls.</summary>
internal static class RollersTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        if (q.Has("ball", "balls"))
        {
            Balls(q, r);
            return;
        }

        var taper = TaperFinder.Take(q);
        if (taper is not null)
        {
            q.Inch = taper.Family != "metric taper pin" && q.Tokens.All(t => t.Unit != "mm");
        }

        var named = q.Labelled(("roller", ["roller", "rollers", "rolls", "pins"]), ("block", ["block", "blocks", "slips", "height", "high", "gauge"]), ("small", ["small", "end"]));
        if (taper is not null && !double.IsNaN(taper.SmallIn))
        {
            var roller = q.Mm(named.GetValueOrDefault("roller") ?? throw new UnansweredException("the roller's diameter is missing"));
            var block = named.TryGetValue("block", out var b) ? q.Mm(b) : 0;
            Over(r, taper.SmallIn * 25.4, taper.HalfAngleDeg, roller, block);
            return;
        }

        if (named.TryGetValue("roller", out var unused) && !named.ContainsKey("small"))
        {
            unused.Used = false;
        }

        var height = named.TryGetValue("block", out var h) ? q.Mm(h) : double.NaN;
        var low = Question.Need(q.Length(), "the reading on the plate");
        var high = Question.Need(q.Length(), "the reading on the blocks");
        height = double.IsNaN(height) ? Question.Need(q.Length(), "the height of the blocks") : height;
        var angle = TaperMeasuring.IncludedAngleDeg(Math.Min(low, high), Math.Max(low, high), height);
        r.Add("included angle", angle, "deg", TaperMeasuring.Basis, $"2 atan((M2 - M1) / 2H) = 2 atan({r.L(Math.Abs(high - low))} / {r.L(2 * height)}) = {N(angle, 5)} deg")
            .Add("half angle", angle / 2, "deg", TaperMeasuring.Basis)
            .Add("taper per foot", Math.Abs(high - low) / height * 12, "in/ft", TaperMeasuring.Basis, $"12 (M2 - M1) / H");
    }

    private static void Over(ReplyBuilder r, double small, double half, double roller, double block)
    {
        var low = TaperMeasuring.OverRollers(small, half, roller, 0);
        r.Add("over rollers on the plate", low, "mm", TaperMeasuring.Basis, $"d + 2 r tan a + 2 r / cos a + 2 r, d = {r.L(small)}, r = {r.L(roller / 2)}, a = {N(half, 4)} deg: {r.L(low)}");
        if (block > 0)
        {
            var high = TaperMeasuring.OverRollers(small, half, roller, block);
            r.Add("over rollers on the blocks", high, "mm", TaperMeasuring.Basis, $"+ 2 H tan a = {r.L(low)} + {r.L(high - low)} = {r.L(high)}")
                .Add("difference", high - low, "mm", TaperMeasuring.Basis);
        }
    }

    private static void Balls(Question q, ReplyBuilder r)
    {
        var named = q.Labelled(("proud", ["proud", "above"]), ("depth", ["deep", "depth", "down"]));
        var proud = named.TryGetValue("proud", out var p) ? q.Mm(p) : 0;
        var depth = q.Mm(named.GetValueOrDefault("depth") ?? throw new UnansweredException("the depth from the face to the top of the small ball is missing"));
        var first = Question.Need(q.Length(), "the large ball's diameter");
        var second = Question.Need(q.Length(), "the small ball's diameter");
        var (large, small) = (Math.Max(first, second), Math.Min(first, second));
        var angle = TaperMeasuring.FromBallsDeg(large, small, proud, depth);
        var distance = depth + (small / 2) - ((large / 2) - proud);
        r.Add("distance of centres", distance, "mm", TaperMeasuring.Basis, $"{r.L(depth)} + {r.L(small / 2)} - ({r.L(large / 2)} - {r.L(proud)}) = {r.L(distance)}")
            .Add("included angle", angle, "deg", TaperMeasuring.Basis, $"2 asin((R - r) / distance) = 2 asin({r.L((large - small) / 2)} / {r.L(distance)}) = {N(angle, 4)} deg");
    }
}
