using Handwheel.Trade.Fits;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Limits and fits.</summary>
internal static class FitTopic
{
    // What a fit is called in words, hole and shaft.
    private static readonly (string[] Words, string Hole, string Shaft)[] Spoken =
    [
        (["loose"], "H11", "c11"), (["running", "run"], "H8", "f7"), (["free"], "H9", "d9"), (["sliding", "slide", "slip"], "H7", "g6"),
        (["locating", "location", "snug", "size"], "H7", "h6"), (["push", "transition", "tap"], "H7", "k6"), (["light"], "H7", "n6"),
        (["dowel"], "H7", "m6"), (["ream", "reamed", "reamer"], "H7", ""), (["press", "interference", "tight"], "H7", "p6"), (["drive", "driving"], "H7", "s6"), (["force"], "H7", "u6"),
    ];

    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var (hole, shaft, inch) = FitFinder.Take(q);
        if (hole.Length + shaft.Length + inch.Length == 0)
        {
            (hole, shaft) = Words(q, r);
        }

        q.Has("fit", "fits", "hole", "bore", "shaft", "pin", "limits", "tolerance", "iso", "286", "ream", "reamed", "bearing", "dowel", "class", "dia", "diameter");
        var size = Question.Need(q.Length(), "the nominal size");
        if (inch.Length > 0)
        {
            q.Inch = true;
            Inch(q, r, size, inch);
            return;
        }

        Metric(r, size, hole, shaft);
    }

    private static (string Hole, string Shaft) Words(Question q, ReplyBuilder r)
    {
        if (q.Has("bearing", "bearings"))
        {
            r.Note("'bearing' was taken as k6 on the shaft and H7 in the housing, common for a turning shaft and a light, steady load; the bearing maker's table comes first.");
            return q.Has("housing", "hole", "bore") ? ("H7", string.Empty) : (string.Empty, "k6");
        }

        foreach (var (words, hole, shaft) in Spoken)
        {
            if (q.Has(words))
            {
                r.Note($"'{words[0]}' was taken as {hole}{(shaft.Length > 0 ? "/" + shaft : string.Empty)}.");
                return (hole, shaft);
            }
        }

        throw new UnansweredException("the class is missing, such as H7/g6, H8, m6 or RC4, or a word: running, sliding, locating, press");
    }

    private static void Metric(ReplyBuilder r, double size, string hole, string shaft)
    {
        Deviations? h = hole.Length == 0 ? null : Limits(size, hole);
        Deviations? s = shaft.Length == 0 ? null : Limits(size, shaft);
        if (h is { } hd)
        {
            One(r, $"hole {hole}", size, hd, Iso286.BasisOf(size, hole));
        }

        if (s is { } sd)
        {
            One(r, $"shaft {shaft}", size, sd, Iso286.BasisOf(size, shaft));
        }

        if (h is { } a && s is { } b)
        {
            Together(r, new Fit(size, a, b), Weaker(Iso286.BasisOf(size, hole), Iso286.BasisOf(size, shaft)));
        }
    }

    private static Deviations Limits(double size, string zone) =>
        Iso286.TryLimits(size, zone, out var limits, out var reason) ? limits : throw new UnansweredException(reason);

    private static Basis Weaker(Basis a, Basis b) => a.Evidence >= b.Evidence ? a : b;

    private static void One(ReplyBuilder r, string name, double size, Deviations d, Basis basis)
    {
        r.Add($"{name}: upper deviation", d.UpperMm * 1000, "um", basis)
            .Add($"{name}: lower deviation", d.LowerMm * 1000, "um", basis, $"tolerance {N(d.ToleranceMm * 1000, 1)} um")
            .Add($"{name}: greatest size", size + d.UpperMm, "mm", basis, $"{N(size)} {Signed(d.UpperMm)} = {N(size + d.UpperMm)} mm")
            .Add($"{name}: least size", size + d.LowerMm, "mm", basis, $"{N(size)} {Signed(d.LowerMm)} = {N(size + d.LowerMm)} mm");
    }

    private static string Signed(double value) => (value < 0 ? "- " : "+ ") + N(Math.Abs(value), 5);

    private static void Together(ReplyBuilder r, Fit fit, Basis basis)
    {
        var (least, most) = (fit.LeastClearanceMm, fit.GreatestClearanceMm);
        r.Say("kind of fit", fit.Kind switch { FitKind.Clearance => "clearance", FitKind.Transition => "transition", _ => "interference" }, basis);
        r.Add(least < -1e-12 ? "greatest interference" : "least clearance", Math.Abs(least), "mm", basis, $"hole least - shaft greatest = {r.L(least)}");
        r.Add(most < -1e-12 ? "least interference" : "greatest clearance", Math.Abs(most), "mm", basis, $"hole greatest - shaft least = {r.L(most)}");
    }

    private static void Inch(Question q, ReplyBuilder r, double size, string name)
    {
        if (!InchFits.TryOf(size / 25.4, name, out var fit, out var reason))
        {
            throw new UnansweredException(reason);
        }

        var basis = InchFits.BasisOf(size / 25.4, name);
        r.Say("class", $"{name}: {InchFits.Meaning(name)}", basis);
        foreach (var (what, d) in new[] { ("hole", fit.Hole), ("shaft", fit.Shaft) })
        {
            r.Add($"{what}: upper deviation", d.UpperMm * 1000, "um", basis)
                .Add($"{what}: lower deviation", d.LowerMm * 1000, "um", basis)
                .Add($"{what}: greatest size", size + d.UpperMm, "mm", basis, $"{r.L(size)} {Signed(d.UpperMm / 25.4)} in")
                .Add($"{what}: least size", size + d.LowerMm, "mm", basis, $"{r.L(size)} {Signed(d.LowerMm / 25.4)} in");
        }

        Together(r, fit, basis);
    }
}
