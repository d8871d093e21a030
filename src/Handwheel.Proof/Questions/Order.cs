using Handwheel.Jobs.Findings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>Order: is a broach pressed where its chips have no room below it?</summary>
internal static class Order
{
    // Room that chips need under a broach, millimetres (common practice, no source).
    private const double Room = 0.5;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Cautions <c>order</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        foreach (var stroke in subject.Trace.Strokes)
        {
            if (stroke is not { Hand: { Work: "press" } hand })
            {
                continue;
            }

            var way = new Vector3(hand.Direction.X, hand.Direction.Y, hand.Direction.Z).ToUnit();
            var foot = new Point3(hand.At.X, hand.At.Y, hand.At.Z) + (way * hand.Depth);
            if (stroke.Before.Sound(new Line3(foot, way)).Any(s => s.From < Room && s.To > 0))
            {
                yield return FindingCatalogue.Order(
                    stroke.Place with { At = foot }, $"{stroke.CutterName} is pressed to a floor: its chips have no room below it", "Drill the hole deeper, or undercut it, before it is pressed.");
            }
        }
    }
}
