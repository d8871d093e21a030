using Handwheel.Jobs.Designs;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Solids.Geometry;
using Handwheel.Trade;
using static Handwheel.Proof.Designs.DesignAnswers;

namespace Handwheel.Proof.Designs;

/// <summary>What is left between two features with every limit at its worst; a tapped hole counts with its thread&#39;s major diameter.</summary>
internal static class WallCheck
{
    private static readonly Basis Measured = new("plane geometry, on the drawing at its least metal", Evidence.StandardFormula);
    private static readonly Basis Lame = new("Lame thick cylinder, Shigley 9th ed. Eq. 3-50", Evidence.StandardFormula);

    /// <summary>Works it out.</summary>
    /// <param name="site">What it is checked on.</param>
    /// <param name="line">The line.</param>
    /// <returns>The result.</returns>
    public static DesignResult Of(DesignSite site, WallDesign line)
    {
        var answers = new DesignAnswers(site.Unit);
        if (site.Least.Find(line.Feature) is not { } first || site.Least.Find(line.Other) is not { } second)
        {
            return Verdicts.Unworkable(line, answers, "one of the two is not there");
        }

        var crossed = first.Feature.View != second.Feature.View;
        var wall = Math.Max(0, crossed ? CrossedWall.Thinnest(first, second, site.Least.Solid.Bounds) - Grown(first) - Grown(second) : Thinnest(first, second));
        if (!double.IsFinite(wall))
        {
            return Verdicts.Unworkable(line, answers, "the one does not lie in the other");
        }

        var halfway = crossed && first.Feature.IsCut != second.Feature.IsCut ? ", half way along it" : string.Empty;
        answers.Add("thinnest", wall, "mm", Measured, string.Empty, $"between {line.Feature} and {line.Other} at their worst limits{halfway}{Threaded(first)}{Threaded(second)}");
        if (line.Holds is { } pressure && first.Across is { } bore)
        {
            var (ri, ro) = (bore / 2, (bore / 2) + wall);
            var hoop = wall > 0 ? pressure.Value * ((ro * ro) + (ri * ri)) / ((ro * ro) - (ri * ri)) : double.PositiveInfinity;
            var strength = DesignSite.Strength(site.Metal);
            answers.Add("hoop stress in it", hoop, "MPa", Lame, "15 %", $"p (ro^2 + ri^2) / (ro^2 - ri^2) = {N(pressure.Value)} MPa, ri {answers.L(ri)}, ro {answers.L(ro)}");
            if (line.AtLeast is null || wall >= line.AtLeast.Value)
            {
                return Verdicts.Margin(line, answers, strength / hoop, $"{N(hoop)} MPa against {N(strength)} MPa of {site.Metal.Name}", "More metal there; what holds pressure is proved by who is licensed to.");
            }
        }

        if (line.AtLeast is not { } least)
        {
            return Verdicts.Unworkable(line, answers, "only a round bore holds pressure by this rule");
        }

        var stands = wall >= least.Value - 1e-9;
        return Verdicts.Said(line, answers, stands ? null : Grade.Halt, $"{answers.L(wall)} is left at the worst limits, {answers.L(least.Value)} needed", "Move the two apart, make one smaller, or narrow their limits.");
    }

    private static string Threaded(DrawnFeature f) => f.Feature.Thread is { } thread ? $"; {f.Feature.Name} counts with its {thread} thread" : string.Empty;

    private static double Grown(DrawnFeature f) =>
        f.Feature.Thread is { } written && DesignThread.Of(written) is { } thread && f.Across is { } across ? Math.Max(0, (thread.Major - across) / 2) : 0;

    private static double Thinnest(DrawnFeature first, DrawnFeature second)
    {
        var least = double.PositiveInfinity;
        foreach (var a in first.Outlines)
        {
            foreach (var b in second.Outlines.Where(b => !ReferenceEquals(a, b)))
            {
                least = Math.Min(least, Between(first, a, second, b));
            }
        }

        return least;
    }

    private static double Between(DrawnFeature first, Outline a, DrawnFeature second, Outline b)
    {
        var beside = Apart(a, b) - Grown(first) - Grown(second);
        var over = Math.Max(0, Math.Max(second.From - first.To, first.From - second.To));
        var inside = b.Contains(a.Pieces[0].From) || a.Contains(b.Pieces[0].From);
        if (first.Feature.IsCut == second.Feature.IsCut)
        {
            // Two cuts (or two solids): apart in plan, along their axis, or both.
            var plan = inside ? 0 : Math.Max(0, beside);
            return over > 0 ? Math.Sqrt((plan * plan) + (over * over)) : plan;
        }

        // A cut in a solid: to its outside, and under a bottom that is no way through.
        var (cut, solid) = first.Feature.IsCut ? (first, second) : (second, first);
        var under = cut.From > solid.From && cut.From < solid.To ? cut.From - solid.From : double.PositiveInfinity;
        var above = cut.To < solid.To && cut.To > solid.From ? solid.To - cut.To : double.PositiveInfinity;
        return Math.Min(over > 0 ? over : beside, Math.Min(under, above));
    }

    // The least distance of two curves: from places all round one, going to the nearest of the other and back until nothing changes.
    private static double Apart(Outline a, Outline b)
    {
        var centre = new Point2((a.Min.X + a.Max.X) / 2, (a.Min.Y + a.Max.Y) / 2);
        var reach = a.Min.DistanceTo(a.Max);
        var least = double.PositiveInfinity;
        for (var i = 0; i < 48; i++)
        {
            var p = a.Nearest(Point2.Polar(centre, reach, i * Math.PI / 24)).Place;
            for (var n = 0; n < 60; n++)
            {
                p = a.Nearest(b.Nearest(p).Place).Place;
            }

            least = Math.Min(least, b.DistanceTo(p));
        }

        return least;
    }
}
