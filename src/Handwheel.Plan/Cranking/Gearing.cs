using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Plan.Lines;

namespace Handwheel.Plan.Cranking;

// A move as the hand makes it: which way to crank, how many turns, how fast, what is locked.
internal sealed class Gearing(Shop shop, bool indexer)
{
    // A handwheel spun free: turns a minute (common practice, no source).
    private const double FreeTurns = 90;

    internal IReadOnlyList<Axis> Locks(Axis axis, SetupFacts setup)
    {
        var all = setup.Rotary is null ? new[] { Axis.X, Axis.Y, Axis.Z } : [Axis.X, Axis.Y, Axis.Z, Axis.T];
        return [.. all.Where(a => a != axis)];
    }

    internal MoveLine Line(Crank crank, int number, double from, double to, double feed, double radius, IReadOnlyList<Axis> locks)
    {
        var grows = to > from;
        var turns = Math.Abs(to - from) / ATurn(crank.Axis);
        return new()
        {
            Number = number,
            Axis = crank.Axis,
            From = from,
            To = to,
            Cutting = crank.Cutting,
            Arrive = Math.Abs(to - from) < 1e-9 || crank.WholeTurn ? string.Empty : grows ? "from -" : "from +",
            CrankClockwise = Clockwise(crank.Axis, grows),
            Turns = turns,
            Pace = feed > 0 ? Pace(crank.Axis, feed, radius) : 0,
            Lock = locks,
            ReadBack = crank.ReadBack,
            WorkTurns = crank.Axis == Axis.T ? grows ? "counterclockwise" : "clockwise" : string.Empty,
            Remark = crank.Remark,
            Working = crank.To,
        };
    }

    internal double Minutes(MoveLine line, double feed, double radius)
    {
        if (feed <= 0)
        {
            return 0.05 + (line.Turns / FreeTurns);
        }

        return 0.05 + (line.Turns * Pace(line.Axis, feed, radius) / 60);
    }

    // Travel of one turn of the crank: millimetres, for T degrees.
    private double ATurn(Axis axis) => axis switch
    {
        Axis.X => shop.Mill!.X.PerTurn,
        Axis.Y => shop.Mill!.Y.PerTurn,
        Axis.Z => shop.Mill!.Z.PerTurn,
        _ => 360 / Math.Max(1, (indexer ? shop.Indexer?.Worm : shop.Rotary?.Worm) ?? 1),
    };

    private bool Clockwise(Axis axis, bool grows) => axis switch
    {
        Axis.X => Clockwise(shop.Mill!.X, grows),
        Axis.Y => Clockwise(shop.Mill!.Y, grows),
        Axis.Z => Clockwise(shop.Mill!.Z, grows),
        _ => grows != (shop.Rotary?.CrankClockwiseTurnsClockwise ?? true),
    };

    // What grows as the handwheel turns clockwise is the reading the machine shows.
    private static bool Clockwise(MachineAxis axis, bool grows) => (grows != axis.CountsOtherWay) == axis.ClockwiseGrows;

    // Seconds a turn of the crank at a feed at the cutter, millimetres a minute; on the rotary at its radius.
    private double Pace(Axis axis, double feed, double radius)
    {
        var length = axis == Axis.T ? ATurn(axis) * Math.PI / 180 * radius : ATurn(axis);
        return length / feed * 60;
    }
}
