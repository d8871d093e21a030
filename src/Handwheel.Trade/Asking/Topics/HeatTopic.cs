using Handwheel.Trade.Cutting;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Temper colours.</summary>
internal static class HeatTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        q.Has("cutter", "drill", "turned", "turns", "turning", "goes", "mill", "end", "temper", "colours", "colors", "colour", "color", "means", "mean", "chart", "steel", "why");
        foreach (var (colour, celsius, meaning) in Heat.Colours)
        {
            r.Add(colour, celsius, "deg C", Heat.Basis, "20 K", [$"{N((celsius * 1.8) + 32, 0)} deg F; {meaning}"]);
        }

        r.Note("High-speed steel keeps its edge to about 600 deg C, carbide further; plain carbon steel is spoilt from blue (295) on: grind back behind the colour.")
            .Caution("A small cutter that turns blue is rubbing or too fast: stop, slow down, feed it a real chip, fluid. Blue chips of steel are hot: brush, not hand.");
    }
}
