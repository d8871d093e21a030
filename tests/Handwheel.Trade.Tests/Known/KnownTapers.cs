using System.Globalization;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Tapers;

namespace Handwheel.Trade.Tests.Known;

internal static class KnownTapers
{
    public static object? Work(KnownValue k)
    {
        if (k.Inputs.ContainsKey("MT"))
        {
            var morse = TaperTable.Find("Morse", k.Whole("MT").ToString(CultureInfo.InvariantCulture))!;
            return k.Says("in mm")
                ? morse.LargeIn * 25.4
                : new Dictionary<string, object>
                {
                    ["tpf_in"] = morse.PerFootIn, ["gauge_dia_in"] = morse.LargeIn, ["small_end_in"] = morse.SmallIn, ["half_deg"] = morse.HalfAngleDeg,
                    ["included_deg"] = morse.IncludedAngleDeg, ["ratio_x"] = morse.Ratio,
                };
        }

        if (k.Says("steep taper included angle"))
        {
            return TaperTable.Find("7/24", "40")!.IncludedAngleDeg;
        }

        if (k.Says("7/24 No."))
        {
            var steep = TaperTable.Find("7/24", k.Whole("size").ToString(CultureInfo.InvariantCulture))!;
            return new Dictionary<string, object> { ["in"] = steep.LargeIn, ["mm"] = steep.LargeIn * 25.4 };
        }

        if (k.Says("taper: large end"))
        {
            var name = k.Word("taper");
            var cut = name.LastIndexOf(' ');
            var taper = TaperTable.Find(name[..cut], name[(cut + 1)..])!;
            return new Dictionary<string, object> { ["large_in"] = taper.LargeIn, ["small_in"] = taper.SmallIn, ["tpf"] = taper.PerFootIn, ["half_deg"] = taper.HalfAngleDeg };
        }

        return k.Says("riction") ? Friction(k) : Measure(k);
    }

    private static object? Friction(KnownValue k)
    {
        if (k.Says("Textbook static friction"))
        {
            return new Dictionary<string, object>
            {
                ["hard_dry"] = FrictionTable.Find("hard steel on hard steel, dry")!.Low, ["mild_dry"] = FrictionTable.Find("mild steel on mild steel, dry")!.Low,
                ["greasy_low"] = FrictionTable.Find("hard steel on hard steel, greasy")!.Low, ["greasy_high"] = FrictionTable.Find("hard steel on hard steel, greasy")!.High,
            };
        }

        if (!k.Inputs.ContainsKey("mu"))
        {
            return TaperHolding.ChangeOverFriction(TaperTable.Find("7/24", "40")!.HalfAngleDeg);
        }

        var mu = k.In("mu");
        return new Dictionary<string, object>
        {
            ["friction_angle_deg"] = TaperHolding.FrictionAngleDeg(mu),
            ["MT2_self_holding"] = TaperHolding.HoldsItself(TaperTable.Find("Morse", "2")!.HalfAngleDeg, mu),
            ["7/24_self_holding"] = TaperHolding.HoldsItself(TaperTable.Find("7/24", "40")!.HalfAngleDeg, mu),
        };
    }

    private static object? Measure(KnownValue k)
    {
        if (k.Inputs.ContainsKey("roller_dia"))
        {
            var half = Math.Atan(k.In("tpf") / 24) * 180 / Math.PI;
            var low = TaperMeasuring.OverRollers(k.In("small_in"), half, k.In("roller_dia"), 0);
            var high = TaperMeasuring.OverRollers(k.In("small_in"), half, k.In("roller_dia"), k.In("block"));
            return new Dictionary<string, object> { ["M1"] = low, ["M2"] = high, ["diff"] = high - low };
        }

        if (k.Inputs.ContainsKey("H"))
        {
            return TaperMeasuring.IncludedAngleDeg(k.In("M1"), k.In("M2"), k.In("H"));
        }

        return k.Inputs.ContainsKey("proud") ? TaperMeasuring.FromBallsDeg(k.In("D"), k.In("d"), k.In("proud"), k.In("depth")) : null;
    }
}
