using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>Knock: is a cutter changed while it still stands in or right over the work, with no room to take it out?</summary>
internal static class Knock
{
    // Room round and under a cutter that is taken out, millimetres (common practice, no source).
    private const double Room = 1;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Cautions <c>knock</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        foreach (var change in subject.Trace.Changes)
        {
            if (change.Stage.Frame is not { } frame)
            {
                continue;
            }

            var toPart = frame.PartAt(change.At.T).Inverse();
            var top = double.NegativeInfinity;
            for (var i = 0; i < 4 * 16; i++)
            {
                var plan = Point2.Polar(new Point2(change.At.X, change.At.Y), (change.Shape.GreatestRadius + Room) * ((i / 16) + 1) / 4, 2 * Math.PI * i / 16);
                var spans = change.Metal.Sound(Line3.AlongZ(plan.X, plan.Y).Placed(toPart));
                top = spans.Count == 0 ? top : Math.Max(top, spans[^1].To);
            }

            if (change.At.Z < top + Room)
            {
                var low = change.At.Z < top ? $"{subject.Unit.Told(top - change.At.Z)} below the top of the work beside it" : $"{subject.Unit.Told(change.At.Z - top)} above the work";
                yield return FindingCatalogue.Knock(new FindingPlace(change.Step.Id, change.Step.Where), $"{change.Cutter} is taken out while it stands {low}");
            }
        }
    }
}
