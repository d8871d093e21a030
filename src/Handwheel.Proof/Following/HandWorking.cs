using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Following;

/// <summary>
/// What work by hand takes away. A press: a broach&#39;s prism. A cutter run through: its plunge. A web broken: the metal between the saw&#39;s two faces. Filing
/// and rubbing: metal outside most metal within the distance stated. A hand saw: all beyond its cut. Edge breaks and taps take nothing.
/// </summary>
internal static class HandWorking
{
    // A saw's slab is taken this far out from the web broken, millimetres: past any work.
    private const double Past = 500;

    /// <summary>The volume taken.</summary>
    /// <param name="hand">The work.</param>
    /// <param name="used">Its cutter.</param>
    /// <param name="rack">Cutters as solids.</param>
    /// <param name="strokes">What was done before, for the saw whose web is broken.</param>
    /// <param name="most">Most metal.</param>
    /// <param name="why">Why it cannot be followed; null where it takes nothing by its nature.</param>
    /// <returns>The volume, part frame; null for none.</returns>
    public static ISolid? Volume(Handwork hand, Cutter? used, CutterRack rack, IReadOnlyList<Stroke> strokes, DrawnPart most, out string? why)
    {
        why = null;
        switch (hand.Work)
        {
            case "press":
                return Press(hand, used, out why);
            case "run":
                return Run(hand, used, rack, out why);
            case "break web":
                return Web(hand, strokes, out why);
            case "saw":
                return Sawn(hand, out why);
            case "file" or "rub":
                return Filed(hand, most, out why);
            default:
                return null;
        }
    }

    /// <summary>A frame whose -Z looks along a direction and whose origin is a place: how a cutter stands that works that way.</summary>
    /// <param name="at">The place.</param>
    /// <param name="direction">Unit direction.</param>
    /// <returns>From that frame to the part frame.</returns>
    public static Pose Facing(Point3 at, Vector3 direction)
    {
        var turn = (direction.X, direction.Y, direction.Z) switch
        {
            (_, _, < -1 + 1e-12) => Pose.Identity,
            (_, _, > 1 - 1e-12) => Pose.TurnAboutX(Math.PI),
            _ => Tilted(direction),
        };
        return turn.Then(Pose.Translation(at.ToVector()));
    }

    // Sawn by hand: all beyond the cut falls away, the blade's thickness with it.
    private static FilingCut? Sawn(Handwork hand, out string? why)
    {
        var outward = Way(hand.Direction);
        why = outward.Length < 0.5 || !(hand.Depth > 0) ? "Where it is sawn is not told: its direction or how far the waste reaches is missing" : null;
        return why is null ? new FilingCut(Place(hand.At), outward, hand.Depth, null) : null;
    }

    private static FilingCut? Filed(Handwork hand, DrawnPart most, out string? why)
    {
        why = null;
        var outward = Way(hand.Direction);
        if (outward.Length < 0.5)
        {
            why = $"What is worked by {hand.Work} is not told: its direction is missing";
            return null;
        }

        var at = Place(hand.At);
        var depth = hand.Depth > 0 ? hand.Depth : 0.5;
        if (hand.Work != "rub")
        {
            return new FilingCut(at, outward, depth, most.Solid);
        }

        // A plate makes it flat: down to where most metal of what is rubbed ends.
        var kept = (hand.Feature is null ? null : most.Find(hand.Feature))?.Solid ?? most.Solid;
        var spans = kept.Sound(new Line3(at, outward));
        var ends = spans.Where(s => s.From <= 1e-6 && s.To >= -depth).Select(s => s.To).DefaultIfEmpty(0).Max();
        return new FilingCut(at + (outward * ends), outward, Math.Max(depth - ends, 1e-3), null);
    }

    // -Z tilted about Y, then turned about Z, onto the direction.
    private static Pose Tilted(Vector3 direction)
    {
        var tilt = Math.Acos(Math.Clamp(-direction.Z, -1, 1));
        var turn = Math.Atan2(-direction.Y, -direction.X);
        return Pose.TurnAboutY(tilt).Then(Pose.TurnAboutZ(turn));
    }

    private static ISolid? Press(Handwork hand, Cutter? used, out string? why)
    {
        why = null;
        if (used is not { Kind: CutterKind.Broach })
        {
            why = used is null ? "What is pressed is not told" : $"{used.Name} is pressed, but it is no broach or punch";
            return null;
        }

        var direction = Way(hand.Direction);
        if (!(hand.Depth > 0) || direction.Length < 0.5)
        {
            why = "How deep and which way it is pressed is not told";
            return null;
        }

        var outline = CutterShapes.BroachOutline(used, default, 0);
        return new BroachCut(outline, -hand.Depth, hand.Depth, HoldingFrame.Radians(hand.Turn), Facing(Place(hand.At), direction));
    }

    private static ISolid? Run(Handwork hand, Cutter? used, CutterRack rack, out string? why)
    {
        why = null;
        if (rack.Shape(used?.Name) is not { } shape)
        {
            why = "What is run through is not told";
            return null;
        }

        var direction = Way(hand.Direction);
        if (!(hand.Depth > 0) || direction.Length < 0.5)
        {
            why = "How deep and which way it is run is not told";
            return null;
        }

        var path = CutterPath.Straight(new Point3(0, 0, 1), new Point3(0, 0, -hand.Depth));
        return new SweptCut(shape, path, Facing(Place(hand.At), direction));
    }

    private static ISolid? Web(Handwork hand, IReadOnlyList<Stroke> strokes, out string? why)
    {
        if (LastSawn(strokes) is not { } stroke)
        {
            why = "A web is broken, but no saw has left one";
            return null;
        }

        why = null;
        var leg = stroke.Legs[^1];
        var edge = stroke.Shape!.Pieces.First(p => p.Cuts);
        var web = leg.ToPart.Inverse().Apply(Place(hand.At));
        var slab = CutterShape.Of([ProfilePiece.Straight(edge.Z0, Past, edge.Z1, Past)]);
        return new SweptCut(slab, CutterPath.At(new Point3(web.X, web.Y, leg.Path.To.Z)), leg.ToPart);
    }

    /// <summary>What falls away with a web: all beyond the saw&#39;s slab on the side that is not the part. It stays where it is until the work is held anew.</summary>
    /// <param name="strokes">What was done before.</param>
    /// <param name="part">The part.</param>
    /// <returns>The waste&#39;s half space, part frame; null where no saw has cut.</returns>
    public static ISolid? Waste(IReadOnlyList<Stroke> strokes, ISolid part)
    {
        if (LastSawn(strokes) is not { } stroke)
        {
            return null;
        }

        var leg = stroke.Legs[^1];
        var edge = stroke.Shape!.Pieces.First(p => p.Cuts);
        var (low, high) = (leg.Path.To.Z + edge.Z0, leg.Path.To.Z + edge.Z1);
        var middle = leg.ToPart.Inverse().Apply(part.Bounds.Centre);
        var (from, to) = middle.Z > high ? (low - Past, low) : (high, high + Past);
        return new Placed(new Block(new(middle.X - Past, middle.Y - Past, from), new(middle.X + Past, middle.Y + Past, to)), leg.ToPart);
    }

    private static Stroke? LastSawn(IReadOnlyList<Stroke> strokes) =>
        strokes.LastOrDefault(s => s is { Cutting: true, Cutter.Kind: CutterKind.Saw, Shape: not null, Legs.Count: > 0 });

    private static Point3 Place(Place3 p) => new(p.X, p.Y, p.Z);

    private static Vector3 Way(Place3 p) => new Vector3(p.X, p.Y, p.Z).ToUnit();
}
