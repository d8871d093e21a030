using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>What a broach takes off in one push, seen along the push.</summary>
internal static class Broached
{
    private const int Across = 40;

    /// <summary>Measures it on lines along the push.</summary>
    /// <param name="stroke">The push, by press or by quill.</param>
    /// <returns>Area, mm2; greatest thickness from the axis outwards, mm; the place, part frame; null where it is not told.</returns>
    public static (double Area, double Thick, Point3 At)? Of(Stroke stroke)
    {
        Pose pose;
        double from, to, turn;
        if (stroke.Hand is { } hand)
        {
            var way = new Vector3(hand.Direction.X, hand.Direction.Y, hand.Direction.Z).ToUnit();
            if (way.Length < 0.5 || !(hand.Depth > 0))
            {
                return null;
            }

            pose = HandWorking.Facing(new Point3(hand.At.X, hand.At.Y, hand.At.Z), way);
            (from, to, turn) = (0, -hand.Depth, HoldingFrame.Radians(hand.Turn));
        }
        else if (stroke.Legs.LastOrDefault(l => l.IsAlongZ) is { } leg)
        {
            pose = Pose.Translation(leg.Path.To with { Z = 0 } - default(Point3)).Then(leg.ToPart);
            (from, to, turn) = (leg.Path.From.Z, leg.Path.To.Z, 0);
        }
        else
        {
            return null;
        }

        return Measured(stroke, pose, (from, to), CutterShapes.BroachOutline(stroke.Cutter!, default, turn));
    }

    private static (double Area, double Thick, Point3 At) Measured(Stroke stroke, Pose pose, (double From, double To) run, Outline outline)
    {
        var half = Math.Max(Math.Max(-outline.Min.X, outline.Max.X), Math.Max(-outline.Min.Y, outline.Max.Y));
        var step = 2 * half / Across;
        double area = 0, least = double.PositiveInfinity, most = 0;
        for (var i = 0; i < Across * Across; i++)
        {
            var p = new Point2(-half + (((i / Across) + 0.5) * step), -half + (((i % Across) + 0.5) * step));
            if (outline.Contains(p) && Meets(stroke, new Line3(new Point3(p.X, p.Y, 0), Vector3.UnitZ).Placed(pose), run))
            {
                area += step * step;
                least = Math.Min(least, p.Length);
                most = Math.Max(most, p.Length);
            }
        }

        return (area, area > 0 ? Math.Max(most - least, step) : 0, pose.Apply(new Point3(0, 0, run.To)));
    }

    private static bool Meets(Stroke stroke, Line3 line, (double From, double To) run)
    {
        foreach (var span in stroke.Before.Sound(line))
        {
            if (Math.Min(span.To, run.From) - Math.Max(span.From, run.To) > 0.01)
            {
                return true;
            }
        }

        return false;
    }
}
