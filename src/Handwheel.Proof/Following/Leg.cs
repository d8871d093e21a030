using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Following;

/// <summary>One plain piece of a move: the cutter goes straight, round the rotary&#39;s axis, or (an indexer) stands while the work is turned a little.</summary>
/// <param name="Path">Its path; the cutter&#39;s axis along Z of <paramref name="ToPart"/>&#39;s first frame.</param>
/// <param name="ToPart">From the path&#39;s frame to the part frame.</param>
/// <param name="From">Where the axes truly stand at its start.</param>
/// <param name="To">Where they truly stand at its end.</param>
internal sealed record Leg(CutterPath Path, Pose ToPart, TrueReading From, TrueReading To)
{
    /// <summary>Whether only T turns.</summary>
    public bool IsTurning => From.T != To.T;

    /// <summary>Whether it goes straight down or up.</summary>
    public bool IsAlongZ => From.X == To.X && From.Y == To.Y && From.T == To.T && From.Z != To.Z;
}
