using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;

namespace Handwheel.Proof.Questions;

/// <summary>Travel: does every reading lie within the travels as set up? The first beyond each end is told, once a holding.</summary>
internal static class Travel
{
    // A reading rounded to its dial may lie this far beyond an end, millimetres.
    private const double Slack = 1e-6;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Halts <c>travel</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var told = new HashSet<(int, Axis, bool)>();
        foreach (var stroke in subject.Trace.Strokes)
        {
            if (stroke.Move is not { } move || stroke.Stage.Facts.Setup is not { } setup)
            {
                continue;
            }

            foreach (var (axis, reading, facts) in Readings(move.To, setup.Axes))
            {
                var low = reading < facts.Least - Slack;
                var high = reading > facts.Most + Slack;
                if ((low || high) && told.Add((stroke.Stage.Index, axis, low)))
                {
                    yield return FindingCatalogue.Travel(stroke.Place, MachineState.NameOf(axis), subject.Unit, reading, facts.Least, facts.Most);
                }
            }
        }
    }

    private static IEnumerable<(Axis Axis, double Reading, AxisFacts Facts)> Readings(Reading to, AxesFacts axes)
    {
        yield return (Axis.X, to.X, axes.X);
        yield return (Axis.Y, to.Y, axes.Y);
        yield return (Axis.Z, to.Z, axes.Z);
        yield return (Axis.T, to.T, axes.T);
    }
}
