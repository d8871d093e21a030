using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Quantities;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Zero and lost reference: does every touch-off find the surface it needs, where the readout is then set to say it is? (Moves that rest on no touch-off
/// are found while following.)
/// </summary>
internal static class Zero
{
    // Less than this no one feels with paper, millimetres.
    private const double Felt = 0.02;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Halts <c>lost-reference</c>, cautions <c>zero</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        foreach (var touched in subject.Trace.Touches)
        {
            var axis = MachineState.NameOf(touched.Touch.Axis);
            var place = new FindingPlace(touched.Step.Id, touched.Step.Where);
            if (touched.Gone)
            {
                yield return FindingCatalogue.LostReference(place, touched.Touch.Surface, Why(subject, touched, axis));
                continue;
            }

            var axes = touched.Stage.Facts.Setup!.Axes;
            var step = touched.Touch.Axis switch
            {
                Axis.X => axes.X.Step,
                Axis.Y => axes.Y.Step,
                Axis.Z => axes.Z.Step,
                _ => axes.T.Step,
            };
            if (Math.Abs(touched.Off) > Math.Max(Felt, 1.01 * step))
            {
                yield return FindingCatalogue.ZeroOff(place, axis, subject.Unit, touched.Off);
            }
        }
    }

    private static string Why(Subject subject, FollowedTouch touched, string axis)
    {
        if (touched.Found.True is not { } stands)
        {
            return "nothing stands there";
        }

        var off = stands - touched.Touch.SetTo;
        var way = (touched.Touch.Axis, off > 0) switch
        {
            (Axis.Z, true) => "higher",
            (Axis.Z, false) => "lower",
            (_, true) => $"further towards {axis} plus",
            (_, false) => $"further towards {axis} minus",
        };
        return $"what stands there is {subject.Unit.Told(Math.Abs(off))} {way}";
    }
}
