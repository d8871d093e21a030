using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Quantities;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Direction: climb or conventional on each cutting move, from the metal really beside the cutter. Seen from above the spindle turns clockwise; along the
/// feed, metal on the left is conventional, on the right climb, within 5 % of each other a slot. Climb on an axis with backlash is a caution; beside a thin
/// web or with a small cutter a halt. A saw drawn back through its own kerf without the spindle stopped is a caution.
/// </summary>
internal static class Direction
{
    // Less metal than this beside the cutter (square millimetres, mean over stations) is no cut: what rounding leaves.
    private const double Rubs = 0.02;

    // How far inside its edge the cutter's rim is looked at, millimetres.
    private const double Inside = 0.01;

    private static readonly double[] Sides = [0.05, 0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 0.96, 0.985, 0.995, 0.999];

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Cautions and halts <c>direction</c>, the gravest of each step.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var worst = new Dictionary<string, Finding>(StringComparer.Ordinal);
        var order = new List<string>();
        foreach (var stroke in subject.Trace.Strokes)
        {
            if ((Mills(stroke) ? Graded(subject, stroke) : DrawnBack(stroke)) is not { } finding)
            {
                continue;
            }

            if (!worst.TryGetValue(stroke.Step.Id, out var known))
            {
                order.Add(stroke.Step.Id);
                worst[stroke.Step.Id] = finding;
            }
            else if (finding.Grade > known.Grade)
            {
                worst[stroke.Step.Id] = finding;
            }
        }

        return order.Select(step => worst[step]);
    }

    /// <summary>Metal to the left and to the right of the feed over a stroke.</summary>
    /// <param name="stroke">The stroke.</param>
    /// <returns>Square millimetres on each side, mean over stations.</returns>
    public static (double Left, double Right) Beside(Stroke stroke)
    {
        double left = 0, right = 0;
        var count = 0;
        foreach (var station in Station.Along([.. stroke.Legs.Where(l => !l.IsAlongZ)], 2.5, 16))
        {
            count++;
            left += Side(stroke, station, 1);
            right += Side(stroke, station, -1);
        }

        return count == 0 ? (0, 0) : (left / count, right / count);
    }

    private static bool Mills(Stroke stroke) =>
        stroke is { Cutting: true, Move: not null, Shape: not null, Cutter: not null }
        && stroke.Cutter.Kind is CutterKind.EndMill or CutterKind.Ball or CutterKind.BullNose or CutterKind.Saw or CutterKind.TSlot
            or CutterKind.Woodruff or CutterKind.Dovetail or CutterKind.FlyCutter
        && stroke.Legs.Any(l => !l.IsAlongZ);

    // A saw that goes free and level, not stopped, with the bottom of its kerf still at its rim.
    private static Finding? DrawnBack(Stroke stroke)
    {
        if (stroke is not { Cutting: false, Move: not null, Shape: { } shape, Cutter.Kind: CutterKind.Saw } || stroke.Turning == false || shape.Pieces.FirstOrDefault(p => p.Cuts) is not { } edge)
        {
            return null;
        }

        const double Near = 0.1;
        foreach (var station in Station.Along([.. stroke.Legs.Where(l => !l.IsAlongZ && l.From.Z == l.To.Z)], 2.5, 16))
        {
            for (var i = 0; i < 64; i++)
            {
                var (s, c) = Math.SinCos(i * Math.PI / 32);
                var r = Math.Max(edge.Radius0, edge.Radius1) + Near;
                if (stroke.Before.Sound(station.Upright(r * c, r * s)).Any(t => t.From < edge.Z1 - Near && t.To > edge.Z0 + Near))
                {
                    return FindingCatalogue.DirectionInKerf(stroke.Place, stroke.CutterName);
                }
            }
        }

        return null;
    }

    private static Finding? Graded(Subject subject, Stroke stroke)
    {
        var (left, right) = Beside(stroke);
        if (right < Rubs || right <= left * 1.05)
        {
            return null;
        }

        var cutter = stroke.Cutter!;
        if (cutter.TrueAcross < subject.Shop.SmallUnder)
        {
            return FindingCatalogue.Direction(stroke.Place, cutter.Name, $"a small cutter of {subject.Unit.Told(cutter.TrueAcross)}", Grade.Halt);
        }

        if (Thin.Beside(stroke, subject.Shop.ThinUnder) is { } web)
        {
            return FindingCatalogue.Direction(stroke.Place, cutter.Name, $"a web of {subject.Unit.Told(web.Thick)} beside it", Grade.Halt);
        }

        if (Slack(stroke) is not { } slack)
        {
            return null;
        }

        var told = slack.Axis == Axis.T ? "backlash in the rotary's worm" : $"{subject.Unit.Told(slack.Amount)} of backlash on {MachineState.NameOf(slack.Axis)}";
        return FindingCatalogue.Direction(stroke.Place, cutter.Name, told, Grade.Caution);
    }

    // Area of metal that the rim meets on one side: weights are shares of the radius between neighbouring places.
    private static double Side(Stroke stroke, Station station, int sign)
    {
        var area = 0.0;
        foreach (var piece in stroke.Shape!.Pieces.Where(p => p.Cuts))
        {
            var radius = Math.Max(piece.Radius0, piece.Radius1) - Inside;
            for (var i = 0; i < Sides.Length && radius > 0; i++)
            {
                var low = i == 0 ? 0 : (Sides[i - 1] + Sides[i]) / 2;
                var high = i == Sides.Length - 1 ? 1 : (Sides[i] + Sides[i + 1]) / 2;
                var line = station.Upright(radius * Math.Sqrt(1 - (Sides[i] * Sides[i])), sign * radius * Sides[i]);
                area += Within(stroke.Before.Sound(line), piece) * (high - low) * radius;
            }
        }

        return area;
    }

    private static double Within(Spans spans, ProfilePiece piece)
    {
        var length = 0.0;
        foreach (var span in spans)
        {
            length += Math.Max(0, Math.Min(span.To, piece.Z1) - Math.Max(span.From, piece.Z0));
        }

        return length;
    }

    private static (Axis Axis, double Amount)? Slack(Stroke stroke)
    {
        var axes = stroke.Stage.Facts.Setup!.Axes;
        var (says, to) = (stroke.SaysBefore, stroke.Move!.To);
        foreach (var (axis, moved, facts) in new[] { (Axis.X, says.X != to.X, axes.X), (Axis.Y, says.Y != to.Y, axes.Y), (Axis.T, says.T != to.T, axes.T) })
        {
            if (moved && facts.Backlash > 0)
            {
                return (axis, facts.Backlash);
            }
        }

        return null;
    }
}
