using Handwheel.Jobs.Designs;
using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;
using Handwheel.Trade;
using Handwheel.Trade.Strength;
using static Handwheel.Proof.Designs.DesignAnswers;

namespace Handwheel.Proof.Designs;

/// <summary>The part as a beam: bending stress at each section of its least metal between support and load, and how far it gives at the load.</summary>
internal static class BendCheck
{
    private const int Stations = 48;

    private static readonly Basis Sections = new($"M c / I at {Stations} sections of the drawing's least metal; {Beams.Basis.Source}", Evidence.StandardFormula);

    /// <summary>Works it out.</summary>
    /// <param name="site">What it is checked on.</param>
    /// <param name="line">The line.</param>
    /// <returns>The result.</returns>
    public static DesignResult Of(DesignSite site, BendDesign line)
    {
        var answers = new DesignAnswers(site.Unit);
        var load = Middle(site, line.At);
        var from = Middle(site, line.Held ?? line.Rests[0]);
        var to = line.Held is null ? Middle(site, line.Rests[1]) : load;
        var span = to - from;
        if (span.Length < 1e-3)
        {
            return Verdicts.Unworkable(line, answers, "the load stands over what holds it");
        }

        var way = span * (1 / span.Length);
        var start = line.Held is { } held ? Edge(site, held, from, way, span.Length) : 0;
        var at = ((load.X - from.X) * way.X) + ((load.Y - from.Y) * way.Y);
        if (line.Held is null && (at <= 0 || at >= span.Length))
        {
            return Verdicts.Unworkable(line, answers, "the load does not stand between what it rests on");
        }

        return Worked(site, line, answers, (from, way, start, span.Length, at));
    }

    private static DesignResult Worked(DesignSite site, BendDesign line, DesignAnswers answers, (Point2 From, Point2 Way, double Start, double Length, double At) b)
    {
        var (force, modulus) = (line.Load.Value, site.Metal.ModulusGPa * 1000);
        double worst = 0, where = 0, moment = 0, modulusOf = 0, gives = 0, step = (b.Length - b.Start) / Stations;
        for (var i = 0; i < Stations; i++)
        {
            var x = b.Start + ((i + 0.5) * step);
            var unit = line.Held is not null ? b.Length - x : x <= b.At ? (b.Length - b.At) * x / b.Length : b.At * (b.Length - x) / b.Length;
            var section = BeamSection.At(site.Least.Solid, b.From + (b.Way * x), b.Way, line.Across);
            if (!(section.Inertia > 0))
            {
                return Verdicts.Unworkable(line, answers, $"there is no metal {answers.L(x)} from {line.Held ?? line.Rests[0]} towards the load");
            }

            var stress = force * unit * section.Farthest / section.Inertia;
            gives += force * unit * unit / (modulus * section.Inertia) * step;
            if (stress > worst)
            {
                (worst, where, moment, modulusOf) = (stress, x, force * unit, section.Inertia / section.Farthest);
            }
        }

        var strength = DesignSite.Strength(site.Metal);
        var support = line.Held ?? line.Rests[0];
        answers.Add("greatest bending stress", worst, "MPa", Sections, "20 %; a hole's edge sees up to three times as much", $"M / W = {answers.T(moment / 1000)} / {N(modulusOf)} mm3, {answers.L(where)} from the middle of {support}");
        answers.Add("it gives at the load", gives, "mm", Sections, "a third", $"sum of M m / (E I), E {N(site.Metal.ModulusGPa)} GPa");
        return Verdicts.Margin(line, answers, strength / worst, $"{N(worst)} MPa against {N(strength)} MPa of {site.Metal.Name}, {answers.L(where)} from the middle of {support}", "More metal there, a shorter reach, a lighter load or a stronger metal.");
    }

    private static Point2 Middle(DesignSite site, string name)
    {
        var feature = site.Least.Find(name);
        if (feature is null)
        {
            return default;
        }

        var outline = feature.Outlines[0];
        return feature.Feature.Shape is TangentShape or OutlineShape ? new Point2((outline.Min.X + outline.Max.X) / 2, (outline.Min.Y + outline.Max.Y) / 2) : feature.Centres[0];
    }

    // Where what holds it ends towards the load.
    private static double Edge(DesignSite site, string name, Point2 from, Point2 way, double length)
    {
        if (site.Least.Find(name) is not { } feature)
        {
            return 0;
        }

        var edge = 0.0;
        for (var i = 1; i < 200; i++)
        {
            var x = i * length / 200;
            edge = feature.Outlines.Any(o => o.Contains(from + (way * x))) ? x : edge;
        }

        return Math.Min(edge, 0.98 * length);
    }
}
