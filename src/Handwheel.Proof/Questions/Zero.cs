using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

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
    /// <param name="gouging">Strokes that gouge: a surface that one of them took is told as a caution, for it follows from the gouge.</param>
    /// <returns>Halts <c>lost-reference</c>, cautions <c>zero</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject, IReadOnlySet<int> gouging)
    {
        foreach (var touched in subject.Trace.Touches)
        {
            var axis = MachineState.NameOf(touched.Touch.Axis);
            var place = new FindingPlace(touched.Step.Id, touched.Step.Where);
            if (touched.Gone)
            {
                var lost = FindingCatalogue.LostReference(place, touched.Touch.Surface, Why(subject, touched, axis));
                yield return TakenBy(subject, touched, gouging) ? lost with { Grade = Grade.Caution } : lost;
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

    /// <summary>Asks whether every cut on turned work rests on a rotary centre that was found: its axis is where the readout says, or nothing turned is.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Halts <c>zero</c>, the first such move of each holding.</returns>
    public static IEnumerable<Finding> Turned(Subject subject)
    {
        var found = false;
        foreach (var stage in subject.Trace.Held.Select(h => h.Stage))
        {
            var setup = stage.Facts.Setup!;
            bool On(Axis axis) => subject.Trace.Touches.Any(t => t.Stage == stage && t.Touch.Axis == axis && t.Touch.On == "rotary centre");
            found = (found && setup.Carried.Contains("x", StringComparer.Ordinal) && setup.Carried.Contains("y", StringComparer.Ordinal)) || (On(Axis.X) && On(Axis.Y));
            var first = found || setup.Rotary is not { Lies: false } ? null : subject.Trace.Strokes.FirstOrDefault(s => s.Stage == stage && s is { Hand: null, Cutting: true } && IsTurned(s));
            if (first is not null)
            {
                yield return FindingCatalogue.CentreUnfound(first.Place);
            }
        }
    }

    // Whether the work stands or goes turned from how it was set up.
    private static bool IsTurned(Stroke stroke) => stroke.Legs.Any(l => l.IsTurning || Math.Abs(Math.IEEERemainder(l.To.T, 360)) > 1e-6);

    // Whether a stroke that gouges took the metal where the surface is meant to be.
    private static bool TakenBy(Subject subject, FollowedTouch touched, IReadOnlySet<int> gouging)
    {
        const double Under = 0.01;
        var touch = touched.Touch;
        var surface = touch.SetTo + (touch.Towards * (touch.Half + touch.Paper + Under));
        var toPart = touched.Stage.Frame!.PartAt(touched.At.T).Inverse();
        bool Taken(Point3 at) => touched.Metal.TakenBy(toPart.Apply(at)) is { } cut && gouging.Contains(touched.Metal.Cut(cut).Stroke);
        if (touch.Axis != Axis.Z)
        {
            return Taken(touch.Axis == Axis.X ? new Point3(surface, touched.At.Y, touched.At.Z) : new Point3(touched.At.X, surface, touched.At.Z));
        }

        var radius = touched.Cutter is { } name && subject.Shop.Cutters.TryGetValue(name, out var cutter) ? cutter.TrueAcross / 2 : 0;
        for (var i = 0; i < 21 * 90; i++)
        {
            var plan = Point2.Polar(new Point2(touched.At.X, touched.At.Y), radius * (i / 90) / 20.001, 2 * Math.PI * i / 90);
            if (Taken(plan.At(surface)))
            {
                return true;
            }
        }

        return false;
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
