using Handwheel.Jobs.Moves;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Cranking;

// One axis brought to one reading. For T: the angle on the rotary, gone to by turning clockwise (theta shrinking) unless told, or a whole turn.
internal sealed record Crank(Axis Axis, Working To, bool Cutting)
{
    internal bool Counterclockwise { get; init; }

    internal bool WholeTurn { get; init; }

    // The way round was asked for: it is gone as told, however far.
    internal bool Told { get; init; }

    // A reading as a person typed it: no slack is reckoned in.
    internal bool AsTyped { get; init; }

    // It goes past a place only to come back to it.
    internal bool IsPast { get; init; }

    internal bool ReadBack { get; init; }

    internal string Remark { get; init; } = string.Empty;

    // Where the axis comes to stand.
    internal double From(double at)
    {
        if (Axis != Axis.T)
        {
            return To.Result;
        }

        var way = Counterclockwise ? 1 : -1;
        if (WholeTurn)
        {
            return at + (360 * way);
        }

        var by = way * (To.Result - at) % 360;
        by = by < -1e-7 ? by + 360 : by;
        by = Math.Abs(by) < 1e-7 || Math.Abs(by - 360) < 1e-7 ? 0 : by;
        return Math.Round(at + (way * by), 9);
    }
}
