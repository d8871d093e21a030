using System.Globalization;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Loads;
using Handwheel.Quantities;
using Handwheel.Trade.Cutting;
using Handwheel.Trade.Strength;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Load: does each cut stay under what its cutter stands and the machine gives? Side force against breakage and bend, power against the motor, a drill&#39;s
/// thrust against quill and drill, a tap&#39;s torque, a broach&#39;s push. Beyond it a halt, within a factor of two a caution.
/// </summary>
internal static class Load
{
    // Share of a motor's power that comes to the cutter of a belt-driven mill (common practice, no source).
    private const double Efficiency = 0.7;

    // A cutter bent by more than this digs in and leaves a step, millimetres (common practice, no source).
    private const double Bent = 0.1;

    // The finest feed a hand on a quill holds, millimetres a turn (common practice, no source).
    private const double Finest = 0.01;

    // A hand that feels more push than it has feeds lighter by itself; it is told where less than this share of the planned feed is left.
    private const double Left = 0.6;

    // Friction on a broach's flanks adds about a third (common practice, no source).
    private const double Friction = 1.3;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="loads">The forces; null: none are known.</param>
    /// <returns>Findings <c>load</c>, the gravest of each step.</returns>
    public static IEnumerable<Finding> Ask(Subject subject, CutLoads? loads)
    {
        if (loads is null)
        {
            return [];
        }

        var steps = loads.All.GroupBy(l => l.Stroke.Step.Id, StringComparer.Ordinal).SelectMany(g => Milling(subject, loads, [.. g]).Concat(Drilling(subject, loads, [.. g])));
        return steps.Concat(Pressed(subject, loads)).GroupBy(f => f.Step, StringComparer.Ordinal).Select(g => g.MaxBy(f => f.Grade)!);
    }

    /// <summary>The grade of a load against what stands it: over it a halt, within a factor of two a caution.</summary>
    /// <param name="asked">What is asked.</param>
    /// <param name="stands">What stands.</param>
    /// <returns>The grade; null where it is well under.</returns>
    public static Grade? Graded(double asked, double stands) => asked > stands ? Grade.Halt : 2 * asked > stands ? Grade.Caution : null;

    private static IEnumerable<Finding> Milling(Subject subject, CutLoads loads, List<CutLoad> all)
    {
        if (all.Where(l => !l.Plunges).MaxBy(l => l.SideN) is not { } first)
        {
            yield break;
        }

        var load = loads.Closely(first);
        var (cutter, place) = (load.Stroke.Cutter!, Places.Of(load.Stroke, load.At));
        var unit = subject.Unit;
        var cut = $"{unit.Told(load.Depth)} deep, {unit.Told(load.Width)} wide, {unit.Told(load.Chip)} a tooth in {loads.Told(subject)}";
        if (CutterMargins.BreakingN(cutter) is { } breaks && Graded(load.SideN, breaks) is { } grade)
        {
            var far = grade == Grade.Halt ? "it breaks" : "that is within a factor of two, and a dull edge takes half as much again";
            yield return FindingCatalogue.Load(
                place,
                $"This cut ({cut}) puts about {CutLoads.Newtons(subject.Unit, load.SideN)} on the side of {cutter.Name}, which stands about {CutLoads.Newtons(subject.Unit, breaks)} where it sticks out {unit.Told(cutter.Out)}: {far}",
                "Take less depth or width a pass, feed slower, or hold the cutter shorter or take a thicker one.",
                load.SideN,
                "N",
                grade,
                $"{Kienzle.Basis.Source}; {CutterStrength.Basis.Source}");
        }
        else if (CutterMargins.BentMm(cutter, load.SideN) is > Bent and var bent)
        {
            yield return FindingCatalogue.Load(
                place,
                $"This cut ({cut}) bends {cutter.Name} aside by about {unit.Told(bent)} at its tip: the face it leaves is off by as much",
                "Take less depth or width a pass, hold the cutter shorter, and leave metal for a light last pass.",
                bent,
                "mm",
                Grade.Caution,
                CutterStrength.Basis.Source);
        }

        if (subject.Shop.Mill is { Power: > 0 } mill && all.MaxBy(l => l.PowerKw) is { } strong)
        {
            var asked = ReferenceEquals(strong, first) ? load.PowerKw : strong.PowerKw;
            var given = mill.Power * Efficiency / 1000;
            if (asked > 0.7 * given)
            {
                yield return FindingCatalogue.Load(
                    Places.Of(strong.Stroke, strong.At),
                    string.Create(CultureInfo.InvariantCulture, $"This cut asks about {asked:0.00} kW at the cutter; a motor of {mill.Power / 1000:0.00} kW gives some {given:0.00} kW there"),
                    "Take less depth or width a pass, or feed slower.",
                    asked * 1000,
                    "W",
                    asked > given ? Grade.Halt : Grade.Caution,
                    $"{Kienzle.Basis.Source}; 0.7 of the motor's power at the cutter: common practice, no source");
            }
        }
    }

    private static IEnumerable<Finding> Drilling(Subject subject, CutLoads loads, List<CutLoad> all)
    {
        if (all.Where(l => l.Plunges).MaxBy(l => l.AlongN) is not { } load)
        {
            yield break;
        }

        var (cutter, place) = (load.Stroke.Cutter!, Places.Of(load.Stroke, load.At));
        if (cutter.Kind == CutterKind.Tap)
        {
            if (Graded(load.TorqueNm, CutterMargins.TapBreaksNm(cutter)) is { } snaps)
            {
                yield return FindingCatalogue.Load(
                    place,
                    $"{cutter.Name} asks about {subject.Unit.Torque(load.TorqueNm)} in {loads.Told(subject)} and snaps at about {subject.Unit.Torque(CutterMargins.TapBreaksNm(cutter))}",
                    "Drill the hole nearer to the top of its limits, cut with oil, and back the tap off each half turn.",
                    load.TorqueNm,
                    "N m",
                    snaps,
                    Kienzle.Basis.Source);
            }

            yield break;
        }

        if (cutter.Kind == CutterKind.Drill && Graded(load.AlongN, CutterMargins.BucklingN(cutter)) is { } buckles)
        {
            yield return FindingCatalogue.Load(
                place,
                $"At {subject.Unit.Told(load.Chip)} a turn {cutter.Name} is pushed with about {CutLoads.Newtons(subject.Unit, load.AlongN)}; standing out {subject.Unit.Told(cutter.Out)} it buckles at about {CutLoads.Newtons(subject.Unit, CutterMargins.BucklingN(cutter))}",
                "Feed lighter, clear the chips often, or hold the drill shorter.",
                load.AlongN,
                "N",
                buckles,
                $"{Kienzle.Basis.Source}; {Columns.Basis.Source}");
        }

        if (Quill(subject, loads, load, place) is { } pushed)
        {
            yield return pushed;
        }
    }

    // A hand feeds what it can push: what matters is whether a feed remains at which the drill still cuts.
    private static Finding? Quill(Subject subject, CutLoads loads, CutLoad load, FindingPlace place)
    {
        if (subject.Shop.Mill is not { QuillPush: > 0 } mill || load.AlongN <= mill.QuillPush)
        {
            return null;
        }

        var feed = load.Chip * Math.Pow(mill.QuillPush / load.AlongN, 1 / (1 - loads.Metal.Mc));
        if (feed > Left * load.Chip)
        {
            return null;
        }

        var name = load.Stroke.CutterName;
        return FindingCatalogue.Load(
            place,
            $"At {subject.Unit.Told(load.Chip)} a turn {name} asks a push of about {CutLoads.Newtons(subject.Unit, load.AlongN)} in {loads.Told(subject)}; the quill gives {CutLoads.Newtons(subject.Unit, mill.QuillPush)}"
                + (feed < Finest ? ", and lighter than it can push the drill only rubs" : $": it goes in at {subject.Unit.Told(feed)} a turn"),
            feed < Finest ? "Drill a smaller hole first, so that this one has only its rim to cut." : "Feed lighter, or drill a smaller hole first.",
            load.AlongN,
            "N",
            feed < Finest ? Grade.Halt : Grade.Caution,
            Kienzle.Basis.Source);
    }

    private static IEnumerable<Finding> Pressed(Subject subject, CutLoads loads)
    {
        foreach (var stroke in subject.Trace.Strokes.Where(s => s.Cutter is { Kind: CutterKind.Broach } && (s.Hand is { Work: "press" } || s is { Cutting: true, Move: not null })))
        {
            if (Broached.Of(stroke) is not var (area, thick, at) || area < 0.01)
            {
                continue;
            }

            var push = Friction * Kienzle.PushN(loads.Metal.Kc11, loads.Metal.Mc, area, thick);
            var byHand = stroke.Hand is not null;
            var gives = byHand ? subject.Shop.PressPush : subject.Shop.Mill?.QuillPush;
            var cutter = stroke.Cutter!;
            var buckles = Columns.CriticalLoad(cutter.Across * cutter.Across, cutter.Across / Math.Sqrt(12), Math.Max(cutter.Out, 1), 1500, 207_000, 0.25).Load;
            var stands = Math.Min(gives is > 0 ? gives.Value : double.PositiveInfinity, buckles);
            if (Graded(push, stands) is { } grade)
            {
                var weak = stands < buckles ? $"the {(byHand ? "press" : "quill")} gives {CutLoads.Newtons(subject.Unit, stands)}" : $"it buckles at about {CutLoads.Newtons(subject.Unit, buckles)}";
                yield return FindingCatalogue.Load(
                    Places.Of(stroke, at),
                    string.Create(CultureInfo.InvariantCulture, $"Pushing {cutter.Name} through {area:0.00} mm2 of {loads.Told(subject)} asks about {CutLoads.Newtons(subject.Unit, push)} with friction; {weak}"),
                    byHand ? "Open the pilot to the full size across flats, or take the corners out in several broaches." : "Press it in an arbor press, or open the pilot to the full size across flats.",
                    push,
                    "N",
                    grade,
                    $"{Kienzle.Basis.Source}; {Columns.Basis.Source}");
            }
        }
    }
}
