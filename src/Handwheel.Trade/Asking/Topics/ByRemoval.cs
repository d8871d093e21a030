using Handwheel.Trade.Cutting;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Power of a milling cut from what it removes: depth, width and the table's feed.</summary>
internal static class ByRemoval
{
    private const double UsualChip = 0.05;

    /// <summary>Works out metal removed and power.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <param name="tableFeed">Feed of the table in its unit as read, where one was said with a unit.</param>
    /// <exception cref="UnansweredException">Something needed is missing.</exception>
    internal static void Work(Question q, ReplyBuilder r, double? tableFeed)
    {
        var inch = q.Inch;
        var named = q.Labelled(("deep", ["deep", "depth", "ap"]), ("wide", ["wide", "width", "ae"]), ("vf", ["vf"]), ("kc", ["kc"]));
        double Of(string name, string what) => named.TryGetValue(name, out var t) ? q.Mm(t) : Question.Need(q.Length(), what);
        var feed = named.TryGetValue("vf", out var vf) ? vf.Value : Question.Need(tableFeed, "the feed of the table");
        feed = Question.Positive(tableFeed is not null && q.Tokens.Any(t => t.Unit == "in/min") ? feed * 25.4 : feed, "the feed");
        double specific;
        if (named.TryGetValue("kc", out var kc))
        {
            specific = Question.Positive(kc.Value, kc.Raw);
        }
        else
        {
            var metal = q.TakeMetal() ?? throw new UnansweredException("the metal (or kc) is missing");
            specific = Kienzle.Specific(metal.Kc11, metal.Mc, UsualChip);
            r.Note($"kc of {metal.Name} at a mean chip of {N(UsualChip)} mm was taken; say the cutter and its feed a tooth for a nearer one.");
        }

        var (deep, wide) = (Of("deep", "the depth of cut"), Of("wide", "the width of cut"));
        q.Has("power", "milling", "mill", "horsepower", "hp", "cut", "cutting", "end", "endmill");
        q.Inch = inch;
        r.Add("power at the cutter", deep * wide * feed * specific / 60e6, "kW", Kienzle.Basis, "30 %; a worn edge adds 30 to 50 %", [$"ap ae vf kc / 60e6 = {N(deep)} x {N(wide)} x {N(feed)} x {N(specific, 0)} / 60e6, mm, mm/min and N/mm^2"])
            .Add("metal removed", deep * wide * feed / 1000, "cm^3/min", Kienzle.Basis, "ap ae vf / 1000")
            .Add("specific cutting force", specific, "MPa", Kienzle.Basis, named.ContainsKey("kc") ? "as given" : "kc1.1 h^-mc");
    }
}
