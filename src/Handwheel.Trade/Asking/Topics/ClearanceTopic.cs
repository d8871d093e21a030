using Handwheel.Trade.Drills;
using Handwheel.Trade.Threads;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Clearance holes.</summary>
internal static class ClearanceTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var thread = ThreadFinder.Take(q);
        var inch = thread?.Unified?.MajorIn ?? (thread is null ? InchSize(q) : double.NaN);
        if (!double.IsNaN(inch))
        {
            Inch(q, r, inch);
            return;
        }

        q.Inch = false;
        var size = thread?.MajorMm ?? Question.Need(q.Length(), "the screw's size");
        if (ClearanceHoles.OfMetric(size) is not { } holes)
        {
            throw new UnansweredException($"ISO 273 has no clearance hole for M{Question.Plainly(size)}");
        }

        r.Add("fine (close)", holes.Fine, "mm", ClearanceHoles.MetricBasis)
            .Add("medium (normal)", holes.Medium, "mm", ClearanceHoles.MetricBasis)
            .Add("coarse (loose)", holes.Coarse, "mm", ClearanceHoles.MetricBasis)
            .Note("Medium is the usual one; take fine where the screw also locates a little.");
    }

    private static double InchSize(Question q)
    {
        foreach (var token in q.Tokens.Where(t => !t.Used))
        {
            var hash = token.Raw.StartsWith('#');
            if (hash || token.IsFraction || (token.IsNumber && (token.Unit == "in" || q.Inch)))
            {
                var major = hash ? UnifiedTable.MajorOf(token.Raw) : q.Mm(token) / 25.4;
                token.Used = true;
                return major;
            }
        }

        return double.NaN;
    }

    private static void Inch(Question q, ReplyBuilder r, double major)
    {
        q.Inch = true;
        var standard = ClearanceHoles.OfInch(major);
        var shop = ClearanceHoles.OfShop(major);
        if (standard is null && shop is null)
        {
            throw new UnansweredException("no clearance hole is tabulated for that screw");
        }

        if (shop is { } s)
        {
            Drill(r, "close", s.Close, ClearanceHoles.ShopBasis);
            Drill(r, "free", s.Free, ClearanceHoles.ShopBasis);
        }

        if (standard is { } b)
        {
            Drill(r, "B18.2.8 close", b.Close, ClearanceHoles.InchBasis);
            Drill(r, "B18.2.8 normal", b.Normal, ClearanceHoles.InchBasis);
            Drill(r, "B18.2.8 loose", b.Loose, ClearanceHoles.InchBasis);
        }
    }

    private static void Drill(ReplyBuilder r, string name, string drill, Basis basis)
    {
        var found = DrillTable.Find(drill);
        if (found is null)
        {
            var mm = UnifiedTable.MajorOf(drill) * 25.4;
            r.Say(name + " drill", drill, basis).Add(name + " hole", mm, "mm", basis);
            return;
        }

        r.Say(name + " drill", found.Name, basis).Add(name + " hole", found.DiameterMm, "mm", basis);
    }
}
