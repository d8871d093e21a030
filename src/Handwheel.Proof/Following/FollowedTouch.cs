using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Following;

/// <summary>One touch-off as it truly went.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Step">The step.</param>
/// <param name="Touch">What the course says.</param>
/// <param name="Cutter">The cutter in the spindle; null where none is.</param>
/// <param name="At">Where the spindle truly stood.</param>
/// <param name="Found">What it met.</param>
/// <param name="Metal">The metal it met.</param>
/// <param name="Gone">Whether the surface it needs is not there: the readout then goes on as it was meant.</param>
internal sealed record FollowedTouch(FollowedStage Stage, CourseStep Step, TouchOff Touch, string? Cutter, TrueReading At, Touched Found, Metal Metal, bool Gone)
{
    /// <summary>How far the readout then reads short of the truth.</summary>
    public double Off => Gone || Found.True is not { } stands ? 0 : stands - Touch.SetTo;
}
