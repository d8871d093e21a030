using Handwheel.Trade.Strength;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Stacks of tolerances.</summary>
internal static class StackTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var all = new List<double>();
        while (q.Length() is { } t)
        {
            all.Add(t);
        }

        if (all.Count == 0)
        {
            throw new UnansweredException("the tolerances are missing (plus and minus of each size)");
        }

        var basis = new Basis("sum (worst case) and root of squares (independent sizes)", Evidence.StandardFormula);
        r.Add("worst case, plus and minus", Stack.Worst(all), "mm", basis, string.Join(" + ", all.Select(a => N(a))))
            .Add("root of squares, plus and minus", Stack.RootSquares(all), "mm", basis, "likely, where each is independent and centred")
            .Note("Enter each size's plus and minus.");
    }
}
