using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>
/// A tap in its hole: does it reach the floor, is its core larger than the hole, is there a hole at all? A tap takes nothing: it stands for its core, and is
/// looked at where it is driven lowest, on its axis and at two radii.
/// </summary>
internal static class Tapping
{
    // What a tap's end squeezes aside, millimetres.
    private const double Little = 0.02;

    private const int Spokes = 16;

    /// <summary>Asks of one stroke.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="stroke">A stroke of a tap.</param>
    /// <returns>The finding <c>strike</c> or <c>plunge</c>; null where it goes in freely.</returns>
    public static Finding? Look(Subject subject, Stroke stroke)
    {
        if (stroke is not { Cutter: { Kind: CutterKind.Tap } tap, Shape: { } shape } || stroke.Legs.Where(l => l.IsAlongZ && l.Path.To.Z < l.Path.From.Z).MinBy(l => l.Path.To.Z) is not { } leg)
        {
            return null;
        }

        var core = shape.Pieces.Where(p => p.Part == CutterPart.Neck).Select(p => p.Radius0).DefaultIfEmpty(0).Max();
        var radius = core - Little;
        var driven = leg.Path.From.Z - leg.Path.To.Z;
        var floor = Highest(stroke, leg, new(0, 0), driven);
        var side = 0.0;
        for (var i = 0; i < 2 * Spokes; i++)
        {
            var high = Highest(stroke, leg, Point2.Polar(default, radius * (i < Spokes ? 1 : 0.5), 2 * Math.PI * i / Spokes), driven);
            side = Math.Max(side, high);
        }

        if (Math.Max(floor, side) <= Little)
        {
            return null;
        }

        var place = Places.Of(stroke, new Line3(leg.Path.To, Vector3.UnitZ).Placed(leg.ToPart).Origin);
        var mouth = Mouth(stroke, leg, driven);
        // What a spot leaves is no hole yet.
        if (floor >= mouth - (tap.Across / 2))
        {
            return FindingCatalogue.TapWithoutHole(place, tap.Name);
        }

        // A wall stands nearly to the mouth (less what a countersink takes), far above what is met on the axis; all else is met at the bottom.
        return side >= mouth - radius && side > floor + radius
            ? FindingCatalogue.TapTooBig(place, tap.Name, subject.Unit, 2 * core)
            : FindingCatalogue.TapAtFloor(place, tap.Name, subject.Unit, tap.Lead, Math.Max(floor, side));
    }

    // How high metal stands above the tap's end on an upright line, within what it is driven through; 0 where there is none.
    private static double Highest(Stroke stroke, Leg leg, Point2 off, double driven) =>
        stroke.Before.Sound(new Line3(leg.Path.To + new Vector3(off.X, off.Y, 0), Vector3.UnitZ).Placed(leg.ToPart))
            .Where(s => s.To > 0 && s.From < driven).Select(s => Math.Min(s.To, driven)).DefaultIfEmpty(0).Max();

    // How high the metal round the hole stands above the tap's end.
    private static double Mouth(Stroke stroke, Leg leg, double driven)
    {
        var round = stroke.Cutter!.TrueAcross * 0.75;
        var tops = Enumerable.Range(0, Spokes).Select(i => Highest(stroke, leg, Point2.Polar(default, round, 2 * Math.PI * i / Spokes), driven)).Where(h => h > 0).Order().ToList();
        return tops.Count == 0 ? double.PositiveInfinity : tops[tops.Count / 2];
    }
}
