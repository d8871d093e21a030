using Handwheel.Jobs.Moves;
using Handwheel.Solids.Cutters;

namespace Handwheel.Proof.Following;

/// <summary>A cutter taken out while the quill is not up.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Step">The step.</param>
/// <param name="At">Where the axes truly stand.</param>
/// <param name="Shape">The cutter taken out.</param>
/// <param name="Cutter">Its name.</param>
/// <param name="Metal">The metal then.</param>
internal sealed record FollowedChange(FollowedStage Stage, CourseStep Step, TrueReading At, CutterShape Shape, string Cutter, Metal Metal);
