using Handwheel.Jobs.Designs;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Trade;
using Handwheel.Trade.Fits;

namespace Handwheel.Proof.Designs;

/// <summary>A size and what goes in it: least and greatest clearance, and whether the drawing&#39;s limits are those of the class.</summary>
internal static class FitCheck
{
    private const double Same = 5e-7;

    private static readonly Basis Difference = new("limits of the two, worst against worst", Evidence.StandardFormula);

    /// <summary>Works it out.</summary>
    /// <param name="site">What it is checked on.</param>
    /// <param name="line">The line.</param>
    /// <returns>The result.</returns>
    public static DesignResult Of(DesignSite site, FitDesign line)
    {
        var answers = new DesignAnswers(site.Unit);
        var (least, most) = Clearances(line.OwnIsHole, line.OwnLimits, line.CounterLimits, answers);
        if (line.OwnZone is { } zone && Iso286.TryLimits(line.OwnLimits.Nominal, zone, out var limits, out _))
        {
            var of = Limits.FromDeviations(line.OwnLimits.Nominal, limits.LowerMm, limits.UpperMm);
            var told = $"{zone} is {site.Unit.Bare(of.Lower)} to {site.Unit.Told(of.Upper)}; the drawing has {site.Unit.Bare(line.OwnLimits.Lower)} to {site.Unit.Told(line.OwnLimits.Upper)}";
            var agree = line.OwnLimits.Lower >= of.Lower - Same && line.OwnLimits.Upper <= of.Upper + Same;
            answers.Say($"{line.Own} in the drawing", agree ? $"lies within {zone}" : $"is not {zone}", Iso286.Basis, told);
            if (!agree)
            {
                return Verdicts.Said(line, answers, Grade.Halt, told, $"Give {line.Own} the class in the drawing ('{zone}'), or write the fit with the limits it has.");
            }
        }

        return Judged(line, answers, least, most);
    }

    /// <summary>Least and greatest clearance of a pair, told.</summary>
    /// <param name="ownIsHole">Whether the first is the hole.</param>
    /// <param name="own">Limits of the first.</param>
    /// <param name="other">Limits of the second.</param>
    /// <param name="answers">Where they are told.</param>
    /// <returns>mm; negative is tight.</returns>
    public static (double Least, double Most) Clearances(bool ownIsHole, Limits own, Limits other, DesignAnswers answers)
    {
        var (hole, shaft) = ownIsHole ? (own, other) : (other, own);
        double least = Clean(hole.Lower - shaft.Upper), most = Clean(hole.Upper - shaft.Lower);
        answers.Add("least clearance", least, "mm", Difference, string.Empty, $"least hole {answers.L(hole.Lower)} - greatest shaft {answers.L(shaft.Upper)}{(least < 0 ? ": tight" : string.Empty)}");
        answers.Add("greatest clearance", most, "mm", Difference, string.Empty, $"greatest hole {answers.L(hole.Upper)} - least shaft {answers.L(shaft.Lower)}{(most < 0 ? ": tight" : string.Empty)}");
        return (least, most);
    }

    private static DesignResult Judged(FitDesign line, DesignAnswers answers, double least, double most)
    {
        var kind = least >= 0 ? "always loose" : most <= 0 ? "always tight" : "loose or tight as it comes";
        var range = $"{kind}: clearance {answers.L(least)} to {answers.L(most)}";
        if (line.Clear is { } clear)
        {
            var inside = least >= clear.Lower - Same && most <= clear.Upper + Same;
            return Verdicts.Said(line, answers, inside ? null : Grade.Halt, $"{range}, asked {answers.L(clear.Lower)} to {answers.L(clear.Upper)}", "Change the limits of one of the two so that the worst pairs lie within what is asked.");
        }

        var fails = (line.Wanted, least, most) switch
        {
            ("slide", < 0, <= 0) or ("press", >= 0, _) => Grade.Halt,
            ("slide", < 0, _) => Grade.Halt,
            ("press", _, > 0) => Grade.Caution,
            _ => (Grade?)null,
        };
        return Verdicts.Said(line, answers, fails, line.Wanted is null ? range : $"it is to {line.Wanted}, and is {range}", line.Wanted == "press" ? "Take a class with more interference (p6, s6 in H7), select the pair, or fix it with retaining compound." : "Take a looser class (g6, f7 in H7), or ream the hole a size over.");
    }

    // The noise of the last bits is no clearance.
    private static double Clean(double value) => Math.Round(value, 9) is var r && r == 0 ? 0 : r;
}
