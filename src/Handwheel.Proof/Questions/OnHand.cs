using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Quantities;

namespace Handwheel.Proof.Questions;

/// <summary>
/// On hand: is what a zero is found with in the shop, and is no drill, reamer or tap asked to cut sideways? (Cutters that the shop does not have are found
/// while following.)
/// </summary>
internal static class OnHand
{
    private static readonly string[] Kinds = ["finder", "pin", "indicator", "block"];

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Findings <c>on-hand</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var touched in subject.Trace.Touches)
        {
            var with = touched.Touch.With;
            var has = subject.Shop.Gauges.ContainsKey(with) || subject.Shop.Cutters.ContainsKey(with)
                || subject.Shop.Gauges.Values.Any(g => string.Equals(g.Kind, with, StringComparison.Ordinal));
            if (has && IsOtherFinder(subject, touched.Touch) && told.Add(with))
            {
                yield return FindingCatalogue.NotOnHand(new FindingPlace(touched.Step.Id, touched.Step.Where), "finder", subject.Unit.Told(2 * touched.Touch.Half), null) with { Grade = Grade.Caution };
            }
            else if (!has && Kinds.Contains(with, StringComparer.Ordinal) && told.Add(with))
            {
                yield return FindingCatalogue.NotOnHand(new FindingPlace(touched.Step.Id, touched.Step.Where), "gauge", with, null) with { Grade = Grade.Caution };
            }
        }

        foreach (var stroke in subject.Trace.Strokes)
        {
            if (Sideways(stroke) && told.Add(stroke.Step.Id))
            {
                yield return FindingCatalogue.WrongKind(stroke.Place, stroke.CutterName, Kind(stroke.Cutter!.Kind), "cut sideways");
            }
        }
    }

    // A finder that is none of the shop's: the zero would stand off by half of what they differ.
    private static bool IsOtherFinder(Subject subject, TouchOff touch) =>
        touch is { With: "finder", Half: > 0 } && !subject.Shop.Gauges.Values.Any(g => g.Kind == "finder" && Math.Abs(g.Size - (2 * touch.Half)) < 0.01);

    private static bool Sideways(Stroke stroke)
    {
        if (stroke is not { Cutting: true, Move: not null, Shape: not null }
            || stroke.Cutter!.Kind is not (CutterKind.Drill or CutterKind.Reamer or CutterKind.SpottingDrill or CutterKind.CentreDrill or CutterKind.Counterbore)
            || !stroke.Legs.Any(l => !l.IsAlongZ))
        {
            return false;
        }

        var (left, right) = Direction.Beside(stroke);
        return left + right > 0.05;
    }

    private static string Kind(CutterKind kind) => kind switch
    {
        CutterKind.Reamer => "reamer",
        CutterKind.SpottingDrill => "spotting drill",
        CutterKind.CentreDrill => "centre drill",
        CutterKind.Counterbore => "counterbore",
        _ => "drill",
    };
}
