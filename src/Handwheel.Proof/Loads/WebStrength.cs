using System.Globalization;
using Handwheel.Proof.Following;
using Handwheel.Proof.Questions;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Trade.Strength;

namespace Handwheel.Proof.Loads;

/// <summary>
/// Whether a saw&#39;s web stands the cuts that come while it holds the part: the saw&#39;s own, and every later one of the holding on the part&#39;s side.
/// </summary>
/// <remarks>
/// The web is a strip as high as the saw is thick, held along both edges (its two ends do not turn). A force F across it, a twist T that F makes about its middle,
/// and a tilt M by forces above it stress it with 3 (F/L + 6 T/L^2) h / t^2 + 6 M / (L t^2) + P / (L t), and shear it with 1.5 F / (L t) (Shigley Table A-9, a strip fixed at both edges).
/// The force is taken the worst way round. Right within a factor of two.
/// </remarks>
internal static class WebStrength
{
    /// <summary>Works it out.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="loads">The forces.</param>
    /// <param name="web">The web.</param>
    /// <param name="saw">The stroke that left it.</param>
    /// <returns>How many times over it stands and the sentence; null where nothing is known to load it.</returns>
    public static (double Margin, string Told)? Of(Subject subject, CutLoads loads, ThinMetal web, Stroke saw)
    {
        var back = web.Leg.ToPart.Inverse();
        var edge = saw.Shape!.Pieces.First(p => p.Cuts);
        var (low, high) = (web.Leg.Path.To.Z + edge.Z0, web.Leg.Path.To.Z + edge.Z1);
        var middle = back.Apply(web.At) with { Z = (low + high) / 2 };
        var strength = Designs.DesignSite.Strength(loads.Metal);
        (double Margin, CutLoad Load, bool Own)? worst = null;
        void Take(CutLoad load, double stress, bool own)
        {
            if (stress > 0 && (worst is null || strength / stress < worst.Value.Margin))
            {
                worst = (strength / stress, load, own);
            }
        }

        // Until the saw is nearly through, uncut metal holds the part beside the web.
        if (loads.LastBite(saw, web.Thick * web.Long) is { } bite)
        {
            Take(bite, Own(web, high - low, bite), true);
        }

        foreach (var load in loads.All.Where(l => l.Stroke.Stage.Index == saw.Stage.Index && l.Stroke.Index > saw.Index && l.Stroke.Step.Id != saw.Step.Id))
        {
            var at = back.Apply(load.At);
            if (at.Z >= low)
            {
                Take(load, Later(web, high - low, load, at - middle), false);
            }
        }

        if (worst is not var (margin, w, isOwn))
        {
            return null;
        }

        var by = isOwn ? "the saw's last bites" : string.Create(CultureInfo.InvariantCulture, $"move {w.Stroke.Move!.Number} ({w.Stroke.CutterName})");
        return (margin, string.Create(
            CultureInfo.InvariantCulture,
            $"It is about {subject.Unit.Told(web.Long)} long; {by} {(isOwn ? "put" : "puts")} {CutLoads.Newtons(subject.Unit, Math.Max(w.SideN, w.AlongN))} on it, and it stands that about {Math.Min(margin, 99):0.0} times over in {loads.Told(subject)}"));
    }

    // The saw's own last bite: along the web, its radial share across it, at the web's end.
    private static double Own(ThinMetal web, double high, CutLoad bite)
    {
        var across = 0.4 * bite.SideN;
        return Mises(web, high, bite.SideN, (across, 0, 0), (bite.SideN * bite.Width / 2) + (across * Math.Max(web.Long, web.Thick) / 2));
    }

    // A later cut, above the web and out along it, the worst way round.
    private static double Later(ThinMetal web, double high, CutLoad load, Vector3 from)
    {
        var aside = Math.Sqrt((from.X * from.X) + (from.Y * from.Y));
        var lift = Math.Max(0, from.Z - (high / 2));
        return Mises(web, high, load.SideN, (load.SideN, load.AlongN, (load.SideN * lift) + (load.AlongN * aside)), load.SideN * aside);
    }

    private static double Mises(ThinMetal web, double high, double sheared, (double Across, double Push, double Tilt) by, double twist)
    {
        double t = web.Thick, l = Math.Max(web.Long, web.Thick);
        var bending = (3 * ((by.Across / l) + (6 * twist / (l * l))) * high / (t * t)) + (6 * by.Tilt / (l * t * t)) + (by.Push / (l * t));
        var shear = Beams.Shear(l, t, sheared).Greatest;
        return Math.Sqrt((bending * bending) + (3 * shear * shear));
    }
}
