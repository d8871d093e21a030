using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Jobs.Measuring;
using Handwheel.Quantities;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>The reading that would have left a feature whole, where drawing and cutter give it: a round about the rotary, a flank along an axis.</summary>
internal static class RightReading
{
    /// <summary>The mend as a sentence with its working.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="stroke">The stroke that gouges.</param>
    /// <param name="feature">The feature hurt.</param>
    /// <param name="inside">A place that was lost, part frame.</param>
    /// <param name="normal">Out of the surface the cut left there, part frame; nothing where no such surface is left.</param>
    /// <returns>The sentence; null where none can be worked out.</returns>
    public static string? For(Subject subject, Stroke stroke, DrawnFeature? feature, Point3 inside, Vector3 normal)
    {
        if (feature is null || stroke is not { Cutter: { } cutter, Legs.Count: > 0, Stage.Frame: { } frame, Stage.Facts.Setup: { } setup })
        {
            return null;
        }

        var aimed = subject.Aimed.Find(feature.Feature.Name) ?? feature;
        var leg = stroke.Legs[^1];
        if (leg.IsTurning && Round(subject, aimed, frame, setup, leg, cutter.TrueAcross) is { } round)
        {
            return round;
        }

        var up = frame.PartAt(leg.To.T).ApplyDirection(normal).Z;
        if (normal.Length > 0.5 && Math.Abs(up) < 0.3)
        {
            return Flank(subject, aimed, frame, setup, leg, cutter.TrueAcross, inside);
        }

        return Level(subject, aimed, frame, leg, stroke.Shape, up, setup.Axes.Z, cutter.Kind is CutterKind.Saw or CutterKind.TSlot or CutterKind.Woodruff);
    }

    private static string? Round(Subject subject, DrawnFeature feature, HoldingFrame frame, SetupFacts setup, Leg leg, double cutter)
    {
        if (feature.Across is not { } across || feature.Feature.View != View.Top || frame.Lies)
        {
            return null;
        }

        var axis = frame.PartAt(leg.To.T).Apply(feature.Centres[0].At(0));
        if (new Point2(axis.X, axis.Y).DistanceTo(frame.Centre) > 0.05)
        {
            return null;
        }

        double dx = leg.To.X - frame.Centre.X, dy = leg.To.Y - frame.Centre.Y;
        var alongX = Math.Abs(dx) >= Math.Abs(dy);
        var sign = (alongX ? dx : dy) < 0 ? -1 : 1;
        var reach = feature.Feature.IsCut ? (across - cutter) / 2 : (across + cutter) / 2;
        if (reach <= 0)
        {
            return null;
        }

        var facts = alongX ? setup.Axes.X : setup.Axes.Y;
        var reading = (alongX ? frame.Centre.X : frame.Centre.Y) + (sign * reach);
        var u = subject.Unit;
        return $"To leave a round of {u.Bare(across)} a cutter of {u.Bare(cutter)} stands at {(alongX ? "X" : "Y")} {Rounded(u, reading, facts, sign * (feature.Feature.IsCut ? -1 : 1))} "
            + $"({u.Bare(across)}/2 {(feature.Feature.IsCut ? "-" : "+")} {u.Bare(cutter)}/2).";
    }

    // An end of the feature: the cutter stands on its top, or a saw or T-slot cutter hangs with its upper face under its underside (no other has one that cuts).
    private static string? Level(Subject subject, DrawnFeature feature, HoldingFrame frame, Leg leg, CutterShape? shape, double up, AxisFacts axis, bool isUnder)
    {
        var upright = frame.PartAt(leg.To.T).ApplyDirection(Vector3.UnitZ).Z;
        if (feature.Feature.View != View.Top || upright < 0.999999 || shape?.Pieces.FirstOrDefault(p => p.Cuts) is not { } edge)
        {
            return null;
        }

        var pose = frame.PartAt(leg.To.T);
        double Height(double z) => pose.Apply(feature.Centres[0].At(z)).Z;
        var u = subject.Unit;
        if (up < -0.3)
        {
            if (!isUnder)
            {
                return null;
            }

            var under = Height(Math.Min(feature.From, feature.To));
            var thick = edge.Z1 - edge.Z0;
            return $"To leave its underside at Z {u.Signed(under)} the cutter stands at Z {Rounded(u, under - thick, axis, -1)} or lower ({u.Bare(under)} - {u.Bare(thick)}).";
        }

        var top = Height(feature.Feature.IsCut ? Math.Min(feature.From, feature.To) : Math.Max(feature.From, feature.To));
        return leg.To.Z < top ? $"To leave it at Z {u.Signed(top)} the cutter stands no lower than Z {u.Signed(top)} over it." : null;
    }

    private static string? Flank(Subject subject, DrawnFeature feature, HoldingFrame frame, SetupFacts setup, Leg leg, double cutter, Point3 inside)
    {
        var alongX = leg.From.Y == leg.To.Y && leg.From.X != leg.To.X;
        var alongY = leg.From.X == leg.To.X && leg.From.Y != leg.To.Y;
        if (feature.Feature.View != View.Top || alongX == alongY || leg.From.Z != leg.To.Z)
        {
            return null;
        }

        var stands = alongX ? leg.To.Y : leg.To.X;
        if (Nearest(feature, frame.PartAt(leg.To.T), alongX, stands, inside.Z) is not { } b || Math.Abs(stands - b.Face) > cutter)
        {
            return null;
        }

        var facts = alongX ? setup.Axes.Y : setup.Axes.X;
        var u = subject.Unit;
        return $"To leave that side at {(alongX ? "Y" : "X")} {u.Signed(b.Face)} a cutter of {u.Bare(cutter)} stands at "
            + $"{(alongX ? "Y" : "X")} {Rounded(u, b.Face + (b.Sign * cutter / 2), facts, b.Sign)} ({u.Bare(b.Face)} {(b.Sign > 0 ? "+" : "-")} {u.Bare(cutter)}/2).";
    }

    // The straight side square to the axis that stands nearest the cutter's axis.
    private static (double Face, double Sign)? Nearest(DrawnFeature feature, Pose pose, bool alongX, double stands, double height)
    {
        (double Face, double Sign)? best = null;
        foreach (var plane in FeatureFaces.Of(feature, 0).Planes)
        {
            var normal = pose.ApplyDirection(new Vector3(plane.Normal.X, plane.Normal.Y, 0));
            var facing = alongX ? normal.Y : normal.X;
            if (Math.Abs(facing) < 0.99999)
            {
                continue;
            }

            var at = pose.Apply(plane.Middle.At(height));
            var face = alongX ? at.Y : at.X;
            if (best is null || Math.Abs(face - stands) < Math.Abs(best.Value.Face - stands))
            {
                best = (face, Math.Sign(facing) * (feature.Feature.IsCut ? -1 : 1));
            }
        }

        return best;
    }

    private static string Rounded(LengthUnit unit, double reading, AxisFacts facts, double side) =>
        facts.Step > 0
            ? ReadingText.Signed(Rounding.ToStep(reading, facts.Step, side > 0 ? Toward.Plus : Toward.Minus), unit, facts.Step)
            : unit.Signed(reading);
}
