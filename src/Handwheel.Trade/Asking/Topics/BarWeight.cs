using Handwheel.Trade.Metals;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>What a piece of bar weighs.</summary>
internal static class BarWeight
{
    /// <summary>Adds the weight of a round, square, hexagon or flat bar where the question gives its sizes.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <param name="metal">Of what.</param>
    internal static void Add(Question q, ReplyBuilder r, Metal metal)
    {
        if (!q.HasIn("weigh", "weighs", "weight", "heavy") || !q.Tokens.Any(t => t.IsNumber && !t.Used))
        {
            return;
        }

        var length = Long(q);
        var hex = q.Has("hex", "hexagon", "hexagonal");
        var square = q.Has("square");
        q.Has("round", "bar", "rod", "flat", "plate", "thick", "wide", "diameter", "dia", "by", "block", "piece");
        if (q.Length() is not { } across)
        {
            return;
        }

        var other = square || hex ? null : q.Length();
        var third = other is null ? null : q.Length();
        var (area, formula) = Area(across, hex, square, (third ?? length) is null ? null : other);
        var along = third ?? length ?? other ?? (q.Inch ? 304.8 : 1000);
        var kilograms = metal.Density * area * along * 1e-9;
        r.Add("weight", kilograms, "kg", MetalTable.DensityBasisOf(metal), "2 %", [$"density x {formula} x length = {N(metal.Density, 0)} kg/m^3 x {N(area, 3)} mm^2 x {r.L(along)} = {N(kilograms, 4)} kg = {N(kilograms / 0.45359237, 4)} lb"]);
    }

    private static (double Area, string Formula) Area(double across, bool hex, bool square, double? wide) =>
        hex ? (across * across * Math.Sqrt(3) / 2, "0.866 x flats^2") : square ? (across * across, "side^2") : wide is { } w ? (across * w, "wide x thick") : (Math.PI * across * across / 4, "pi/4 D^2");

    // "a foot", "2 foot", "a metre", "100 long".
    private static double? Long(Question q)
    {
        var named = q.Labelled(("long", ["long", "length"]));
        return named.TryGetValue("long", out var l) ? q.Mm(l)
            : q.Tokens.FirstOrDefault(t => t is { IsNumber: true, Used: false, Unit: "ft" or "m" }) is { } far ? q.Mm(far)
            : q.JustBefore("foot", "feet") * 304.8 ?? q.JustBefore("metre", "meter", "metres", "meters") * 1000
            ?? (q.Has("foot") ? 304.8 : q.Has("metre", "meter") ? 1000 : null);
    }
}
