using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>Burr: is a side touched off that a cutter has made, with no edge broken since? (What holds on such a face is asked with the grip.)</summary>
internal static class Burr
{
    private const double On = 0.02;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Cautions <c>burr</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        foreach (var touch in subject.Trace.Touches)
        {
            if (touch is not { Touch: { On: "metal", Axis: Axis.X or Axis.Y }, Gone: false, Found.Surface: { } surface, Stage.Frame: { } frame } || CutBy(subject, touch, surface, frame) is not { } cut)
            {
                continue;
            }

            if (!Broken(subject, cut, touch))
            {
                yield return FindingCatalogue.Burr(
                    new FindingPlace(touch.Step.Id, touch.Step.Where),
                    $"{touch.Touch.Surface} is touched where {cut.CutterName} cut it in {cut.Step.Id}, and no edge was broken since: a burr sets the reading off");
            }
        }
    }

    // The stroke that made the side touched; null for a raw one.
    private static Stroke? CutBy(Subject subject, FollowedTouch touch, double surface, HoldingFrame frame)
    {
        var toPart = frame.PartAt(touch.At.T).Inverse();
        var line = touch.Touch.Axis == Axis.X ? Line3.AlongX(touch.At.Y, touch.At.Z) : Line3.AlongY(touch.At.X, touch.At.Z);
        foreach (var span in touch.Metal.Sound(line.Placed(toPart)))
        {
            foreach (var (end, id) in new[] { (span.From, span.FromSurface), (span.To, span.ToSurface) })
            {
                if (Math.Abs(end - surface) <= On && touch.Metal.StrokeOf(id) is { } stroke)
                {
                    return subject.Trace.Strokes[stroke];
                }
            }
        }

        return null;
    }

    private static bool Broken(Subject subject, Stroke cut, FollowedTouch touch)
    {
        var after = false;
        foreach (var step in subject.Trace.Steps)
        {
            if (ReferenceEquals(step.Step, touch.Step))
            {
                return false;
            }

            if (after && step.Step.Events.OfType<Handwork>().Any(h => h.Work is "break edges" or "file" or "rub"))
            {
                return true;
            }

            after = after || ReferenceEquals(step.Step, cut.Step);
        }

        return false;
    }
}
