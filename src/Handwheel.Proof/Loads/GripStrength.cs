using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Proof.Questions;
using Handwheel.Quantities;
using Handwheel.Trade.Cutting;

namespace Handwheel.Proof.Loads;

/// <summary>
/// Whether what presses on the work holds it against the heaviest cut of the holding: friction of its faces against side force and lift taken together, and the
/// depth held against the rocking of a cut high above it. Friction 0.15, on lines and points 0.10: there a round turns between the jaws too, with its friction at
/// half its width against the cut at its distance from the middle. Held less than once a halt, less than 2.5 times a caution.
/// </summary>
internal static class GripStrength
{
    /// <summary>Friction along a line or at a point: the tops of the finish give and slide sooner than a face (common practice, no source).</summary>
    public const double LineFriction = 0.10;

    private const double Friction = 0.15;

    // How many times over work is held for a smooth cut (common practice; Clamping's own).
    private const double Times = 2.5;

    /// <summary>Works it out.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="loads">The forces.</param>
    /// <param name="stage">The holding.</param>
    /// <param name="bears">What holds, and the places of the work it bears on, holding frame.</param>
    /// <returns>A halt or caution <c>grip</c>; null where it holds well.</returns>
    public static Finding? Of(Subject subject, CutLoads loads, FollowedStage stage, IReadOnlyList<Bearing> bears)
    {
        var holds = bears.Where(b => b.Places.Count > 0).ToList();
        if (holds.Count == 0)
        {
            return null;
        }

        var (press, faces, told) = Pressing(holds.ConvertAll(h => h.Facts));
        var jaws = holds.Where(h => h.IsViseJaw).ToList();
        var lines = jaws.Count == 2 ? HeldLines.Between(jaws[0], jaws[1]) : null;
        var friction = (lines is null ? Friction : LineFriction) * faces * press;
        var held = new HeldWork(press, friction, holds.Min(h => h.Places.Min(p => p.Z)), holds.Max(h => h.Places.Max(p => p.Z)), holds.TrueForAll(h => h.Facts.Name == "clamp"), lines);
        (double Margin, CutLoad Load, string Way)? worst = null;
        foreach (var load in loads.All.Where(l => l.Stroke.Stage.Index == stage.Index && !l.Plunges))
        {
            var (margin, way) = held.Against(load, stage.Frame!.PartToWork.Apply(load.At));
            worst = worst is null || margin < worst.Value.Margin ? (margin, load, way) : worst;
        }

        if (worst is not { } w || w.Margin >= Times)
        {
            return null;
        }

        var closer = loads.Closely(w.Load);
        var least = w.Margin * Math.Max(1e-9, w.Load.SideN) / Math.Max(1e-9, closer.SideN);
        return least >= Times ? null : Said(subject, stage, (least, closer, w.Way), held, told);
    }

    private static Finding Said(Subject subject, FollowedStage stage, (double Margin, CutLoad Load, string Way) w, HeldWork held, string told)
    {
        var side = CutLoads.Newtons(subject.Unit, w.Load.SideN);
        var why = w.Way switch
        {
            "rocks" => $"{side} that high above the jaws rocks the work, held {subject.Unit.Told(held.High - held.Low)} deep",
            "turns" => $"{side} beside the middle turns the work between jaws that bear on two lines {subject.Unit.Told(2 * held.On!.Half)} apart, with {CutLoads.Newtons(subject.Unit, held.Friction)} of friction",
            "rolls" => $"{side} that high above the lines the jaws bear on rolls the work, {subject.Unit.Told(2 * held.On!.Half)} thick, against {CutLoads.Newtons(subject.Unit, held.Friction)} of friction",
            _ => $"{side} across and {CutLoads.Newtons(subject.Unit, w.Load.AlongN)} of lift against {CutLoads.Newtons(subject.Unit, held.Friction)} of friction",
        };
        return FindingCatalogue.GripForce(
            Places.Of(w.Load.Stroke, w.Load.At),
            $"What holds in holding {stage.Facts.Name} presses with about {CutLoads.Newtons(subject.Unit, held.Press)} ({told}): {why}",
            w.Margin,
            held.On is null ? Friction : LineFriction,
            Clamping.Basis.Source);
    }

    // What presses, over how many faces that rub, and where that is from.
    private static (double Press, int Faces, string Told) Pressing(List<FixtureFacts> holds)
    {
        if (holds.Exists(h => h.Name == "clamp"))
        {
            var each = holds[0].Press > 0 ? holds[0].Press : 5000;
            return (each * holds.Count, 2, holds[0].Press > 0 ? "as the shop says" : "each clamp taken as 5 kN; the shop may say 'grips'");
        }

        if (holds.Exists(h => h.Bore > 0))
        {
            // All jaws together, about 80 N a millimetre of body: half of what a scroll chuck's key gives (common practice, no source).
            var chuck = holds.First(h => h.Bore > 0);
            return (chuck.Press > 0 ? chuck.Press : 80 * chuck.Across, 1, chuck.Press > 0 ? "as the shop says" : "all jaws together, taken by its size; the shop may say 'grips'");
        }

        // A pair of jaws, drawn up by hand: about 60 N a millimetre of jaw (common practice, no source).
        var jaw = holds[0];
        var wide = Math.Max(jaw.Most.X - jaw.Least.X, jaw.Most.Y - jaw.Least.Y);
        return (jaw.Press > 0 ? jaw.Press : Math.Clamp(60 * wide, 1000, 10_000), 2, jaw.Press > 0 ? "as the shop says" : "taken by the width of its jaws, drawn up by hand; the shop may say 'grips'");
    }
}
