using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;

namespace Handwheel.Proof.Questions;

/// <summary>Lock: does an axis stand free while another cuts? One note a step.</summary>
internal static class Lock
{
    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Notes <c>lock</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var stroke in subject.Trace.Strokes)
        {
            if (stroke.Move is not { Cutting: true } move || stroke.Stage.Frame is not { } frame || told.Contains(stroke.Step.Id))
            {
                continue;
            }

            var free = Free(stroke, move, frame).ToList();
            if (free.Count > 0)
            {
                told.Add(stroke.Step.Id);
                yield return FindingCatalogue.Lock(stroke.Place, string.Join(" and ", free));
            }
        }
    }

    private static IEnumerable<string> Free(Stroke stroke, Move move, HoldingFrame frame)
    {
        var says = stroke.SaysBefore;
        foreach (var (axis, moved) in new[] { (Axis.X, says.X != move.To.X), (Axis.Y, says.Y != move.To.Y), (Axis.T, says.T != move.To.T) })
        {
            if (!moved && !move.Locked.Contains(axis) && (axis != Axis.T || frame.Turns))
            {
                yield return MachineState.NameOf(axis);
            }
        }
    }
}
