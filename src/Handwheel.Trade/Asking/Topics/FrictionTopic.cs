using Handwheel.Trade.Joints;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Coefficients of friction.</summary>
internal static class FrictionTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        if (q.HasIn("angle") && q.Plain() is { } mu and > 0 and < 10)
        {
            r.Add("friction angle", TaperHolding.FrictionAngleDeg(mu), "deg", TaperHolding.Basis, $"atan({N(mu)}); a cone, wedge or cotter holds itself while its half angle is under that");
        }

        foreach (var token in q.Tokens)
        {
            token.Used = true;
        }

        foreach (var pair in FrictionTable.All)
        {
            r.Add(pair.Pair, pair.Low, string.Empty, pair.Basis, "order of magnitude", [pair.High > pair.Low ? $"{N(pair.Low)} to {N(pair.High)}" : N(pair.Low)]);
        }

        r.Note("A trace of oil halves them; take the low end for holding, the high end for driving.");
    }
}
