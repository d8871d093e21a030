using System.Globalization;
using Handwheel.Proof.Following;
using Handwheel.Proof.Questions;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Trade.Strength;

namespace Handwheel.Proof.Loads;

/// <summary>
/// How far a thin wall springs from the cut beside it, and whether it stands it: a strip standing on its foot, loaded at the middle of the depth cut, as wide as the wall is
/// long but no wider than the cut spreads (twice the height and the cutter&#39;s half). Of a wide cut only what is taken within the wall&#39;s own thickness bears on it: the rest
/// braces itself. Within a factor of two.
/// </summary>
internal static class WallStrength
{
    /// <summary>Works it out.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="loads">The forces.</param>
    /// <param name="wall">The wall.</param>
    /// <param name="stroke">The stroke beside it.</param>
    /// <returns>How many times over it stands and the sentence; null where no force is known.</returns>
    public static (double Margin, string Told)? Of(Subject subject, CutLoads loads, ThinMetal wall, Stroke stroke)
    {
        if (loads.Find(stroke) is not { SideN: > 0 } coarse)
        {
            return null;
        }

        var load = loads.Narrowed(loads.Closely(coarse), wall.Thick);
        var foot = wall.Leg.Path.To.Z;
        var high = High(wall, stroke, foot);
        var lever = Math.Max(Math.Min(load.Depth, high) / 2, wall.Thick);
        var wide = Math.Min(Math.Max(wall.Long, wall.Thick), (2 * high) + stroke.Shape!.GreatestRadius);
        var (stress, springs) = Beams.Cantilever(wide, wall.Thick, lever, load.SideN, loads.Metal.ModulusGPa * 1000);
        springs *= 1 + (1.5 * Math.Max(0, high - lever) / lever);
        var margin = Designs.DesignSite.Strength(loads.Metal) / stress;
        return (margin, string.Create(
            CultureInfo.InvariantCulture,
            $"It stands {subject.Unit.Told(high)} high; {CutLoads.Newtons(subject.Unit, load.SideN)} of {stroke.CutterName} beside it bends its top aside by about {subject.Unit.Told(springs)}, and it stands that about {Math.Min(margin, 99):0.0} times over in {loads.Told(subject)}"));
    }

    // From the cut's floor to the top of the wall.
    private static double High(ThinMetal wall, Stroke stroke, double foot)
    {
        var at = wall.Leg.ToPart.Inverse().Apply(wall.At);
        var line = new Line3(new Point3(at.X, at.Y, 0), Vector3.UnitZ).Placed(wall.Leg.ToPart);
        var top = stroke.After.Sound(line).Where(s => s.From <= at.Z && s.To >= at.Z).Select(s => s.To).DefaultIfEmpty(at.Z).Max();
        return Math.Max(top - foot, wall.Thick);
    }
}
