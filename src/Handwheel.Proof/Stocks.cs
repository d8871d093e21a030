using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof;

/// <summary>The stock before and after each step, as pictures ask for it.</summary>
internal static class Stocks
{
    /// <summary>One step&#39;s stock.</summary>
    /// <param name="step">The step as followed.</param>
    /// <returns>The two answers.</returns>
    public static StepStock Of(FollowedStep step)
    {
        var toPart = step.Stage.Frame?.WorkToPart ?? Pose.Identity;
        double? Top(Metal metal, Point2 p)
        {
            var spans = metal.Sound(Line3.AlongZ(p.X, p.Y).Placed(toPart));
            return spans.Count == 0 ? null : spans[^1].To;
        }

        return new StepStock(step.Step.Id, p => Top(step.Before, p), p => Top(step.After, p));
    }
}
