using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>
/// A face sawn by hand is followed as a plane, and is none: does a zero rest on it, or does the work stand on it while something is cut? It counts until a cutter
/// or a file has made the face anew.
/// </summary>
internal static class Sawn
{
    // How far a face left by a hacksaw is from flat and from its line, millimetres (common practice, no source).
    private const double Rough = 0.5;

    private const double On = 0.02;
    private const int Net = 12;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Cautions <c>zero</c> and <c>grip</c>, at most one of each a holding.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        foreach (var touches in subject.Trace.Touches.Where(t => t is { Touch.On: "metal", Gone: false }).GroupBy(t => t.Stage.Index))
        {
            if (touches.Select(t => (Touch: t, By: Touched(subject, t))).FirstOrDefault(t => t.By is not null) is { By: { } by } found)
            {
                yield return FindingCatalogue.ZeroOnSawn(
                    new FindingPlace(found.Touch.Step.Id, found.Touch.Step.Where),
                    $"The {found.Touch.Touch.Surface} is touched where it was sawn by hand in {by.Step.Id}: a hacksaw leaves it off its line by up to {subject.Unit.Told(Rough)}, and all that is read from this zero with it");
            }
        }

        foreach (var (stage, metal) in subject.Trace.Held)
        {
            if (stage.Facts.Setup is { Fixtures.Count: > 0, Rotary: not { Lies: true } } && subject.Trace.Strokes.Any(s => s.Stage.Index == stage.Index && s is { Cutting: true, Hand: null }) && Stands(subject, stage, metal) is { } by)
            {
                yield return FindingCatalogue.StandsOnSawn(
                    new FindingPlace(stage.Facts.Steps[0].Id, stage.Facts.Steps[0].Where),
                    $"The work of holding {stage.Facts.Name} stands on the face that was sawn by hand in {by.Step.Id}: a hacksaw leaves it uneven by up to {subject.Unit.Told(Rough)}, and what is cut here comes out so much askew");
            }
        }
    }

    // The saw stroke that made what was touched; null where something else did.
    private static Stroke? Touched(Subject subject, FollowedTouch touch)
    {
        if (touch.Found.Surface is not { } surface || touch.Stage.Frame is not { } frame)
        {
            return null;
        }

        var toPart = frame.PartAt(touch.At.T).Inverse();
        if (touch.Touch.Axis is Axis.X or Axis.Y)
        {
            return At(subject, touch.Metal, (touch.Touch.Axis == Axis.X ? Line3.AlongX(touch.At.Y, touch.At.Z) : Line3.AlongY(touch.At.X, touch.At.Z)).Placed(toPart), surface);
        }

        var radius = touch.Cutter is { } name && subject.Shop.Cutters.TryGetValue(name, out var cutter) ? cutter.TrueAcross / 2 : 0;
        return Enumerable.Range(0, 25)
            .Select(i => Point2.Polar(new(touch.At.X, touch.At.Y), radius * (((i + 7) / 8) / 3.001), Math.Tau * i / 8))
            .Select(p => At(subject, touch.Metal, Line3.AlongZ(p.X, p.Y).Placed(toPart), surface))
            .FirstOrDefault(s => s is not null);
    }

    // The saw stroke that made the lowest face of the work as it is held.
    private static Stroke? Stands(Subject subject, FollowedStage stage, Metal metal)
    {
        var box = metal.Bounds.Placed(stage.Frame!.PartToWork);
        (double Z, SurfaceId Surface)? lowest = null;
        for (var i = 0; i < Net * Net; i++)
        {
            var (x, y) = (box.Min.X + (((i % Net) + 0.5) / Net * box.Size.X), box.Min.Y + (((i / Net) + 0.5) / Net * box.Size.Y));
            foreach (var span in metal.Sound(Line3.AlongZ(x, y).Placed(stage.Frame.WorkToPart)))
            {
                lowest = lowest is { } l && l.Z <= span.From + 1e-9 ? l : (span.From, span.FromSurface);
            }
        }

        return lowest is { } low && metal.StrokeOf(low.Surface) is { } stroke ? ByHand(subject.Trace.Strokes[stroke]) : null;
    }

    private static Stroke? At(Subject subject, Metal metal, Line3 line, double surface)
    {
        foreach (var span in metal.Sound(line))
        {
            foreach (var (end, id) in new[] { (span.From, span.FromSurface), (span.To, span.ToSurface) })
            {
                if (Math.Abs(end - surface) <= On && metal.StrokeOf(id) is { } stroke && ByHand(subject.Trace.Strokes[stroke]) is { } sawn)
                {
                    return sawn;
                }
            }
        }

        return null;
    }

    private static Stroke? ByHand(Stroke stroke) => stroke.Hand is { Work: "saw" } ? stroke : null;
}
