using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Following;

/// <summary>
/// A move as the pieces it is made of. Axes cranked together go straight when cutting. A free move goes the way a careful hand does: up first, turn,
/// across, down last. A turn together with anything else is taken in small steps. Under an indexer every turn is taken in chords.
/// </summary>
internal static class Sweeping
{
    /// <summary>How high the quill is taken to stand when it is up, millimetres above the holding&#39;s zero, at least.</summary>
    public const double QuillUp = 400;

    /// <summary>Turn of one step where a turn goes together with something else, or under an indexer, degrees; more where that made over 360 steps.</summary>
    public const double ChordDegrees = 1;

    /// <summary>The pieces of a move.</summary>
    /// <param name="frame">The holding&#39;s frames.</param>
    /// <param name="from">Where the axes truly stood.</param>
    /// <param name="to">Where they truly stand.</param>
    /// <param name="cutting">Whether the move is meant to cut.</param>
    /// <returns>Pieces in order; none where nothing moves.</returns>
    public static IReadOnlyList<Leg> Legs(HoldingFrame frame, TrueReading from, TrueReading to, bool cutting)
    {
        var legs = new List<Leg>();
        if (!cutting)
        {
            var at = from;
            var high = Math.Max(from.Z, to.Z);
            Add(frame, ref at, at with { Z = high }, legs);
            Add(frame, ref at, at with { T = to.T }, legs);
            Add(frame, ref at, to with { Z = high }, legs);
            Add(frame, ref at, to, legs);
        }
        else
        {
            var at = from;
            Add(frame, ref at, to, legs);
        }

        return legs;
    }

    private static void Add(HoldingFrame frame, ref TrueReading at, TrueReading to, List<Leg> legs)
    {
        var turns = at.T != to.T && frame.Turns;
        var moves = at.X != to.X || at.Y != to.Y || at.Z != to.Z;
        if (!turns)
        {
            if (moves)
            {
                legs.Add(Straight(frame, at, to));
            }
        }
        else if (!moves && !frame.Lies)
        {
            legs.Add(Arc(frame, at, to));
        }
        else
        {
            InChords(frame, at, to, legs);
        }

        at = to;
    }

    private static void InChords(HoldingFrame frame, TrueReading from, TrueReading to, List<Leg> legs)
    {
        var count = (int)Math.Clamp(Math.Ceiling(Math.Abs(to.T - from.T) / ChordDegrees), 1, 360);
        var at = from;
        for (var i = 1; i <= count; i++)
        {
            var share = (double)i / count;
            var next = i == count
                ? to
                : new TrueReading(
                    from.X + ((to.X - from.X) * share),
                    from.Y + ((to.Y - from.Y) * share),
                    from.Z + ((to.Z - from.Z) * share),
                    from.T + ((to.T - from.T) * share));
            var turned = at with { T = next.T };
            legs.Add(frame.Lies ? Straight(frame, turned, turned) with { From = at } : Arc(frame, at, turned));
            if (turned != next)
            {
                legs.Add(Straight(frame, turned, next));
            }

            at = next;
        }
    }

    private static Leg Straight(HoldingFrame frame, TrueReading from, TrueReading to)
    {
        var back = frame.Turned(to.T).Inverse();
        if (frame.Lies)
        {
            return new Leg(CutterPath.Straight(Place(from), Place(to)), back.Then(frame.WorkToPart), from, to);
        }

        // Turning about Z keeps heights to the last bit, and an upright move upright.
        var a = back.Apply(Place(from)) with { Z = from.Z };
        var b = from.X == to.X && from.Y == to.Y ? a with { Z = to.Z } : back.Apply(Place(to)) with { Z = to.Z };
        return new Leg(CutterPath.Straight(a, b), frame.WorkToPart, from, to);
    }

    private static Leg Arc(HoldingFrame frame, TrueReading from, TrueReading to)
    {
        var start = frame.Turned(from.T).Inverse().Apply(Place(from)) with { Z = from.Z };
        var path = CutterPath.Arc(frame.Centre, start, HoldingFrame.Radians(from.T - to.T));
        return new Leg(path, frame.WorkToPart, from, to);
    }

    private static Point3 Place(TrueReading at) => new(at.X, at.Y, at.Z);
}
