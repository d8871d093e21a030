using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Solids.Cutters;

namespace Handwheel.Proof.Following;

/// <summary>One move as it truly went, or one work by hand that cuts: from which metal to which.</summary>
internal sealed record Stroke
{
    /// <summary>Its place among all strokes, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>The stage it belongs to.</summary>
    public required FollowedStage Stage { get; init; }

    /// <summary>The step.</summary>
    public required CourseStep Step { get; init; }

    /// <summary>The move; null for work by hand.</summary>
    public Move? Move { get; init; }

    /// <summary>The work by hand; null for a move.</summary>
    public Handwork? Hand { get; init; }

    /// <summary>The cutter as the shop has it; null by hand without one.</summary>
    public Cutter? Cutter { get; init; }

    /// <summary>Its solid; null for a broach or where the shop does not have it.</summary>
    public CutterShape? Shape { get; init; }

    /// <summary>The pieces it is made of; none by hand.</summary>
    public required IReadOnlyList<Leg> Legs { get; init; }

    /// <summary>Whether the spindle turns; null where the course has not said.</summary>
    public bool? Turning { get; init; }

    /// <summary>Readings before it.</summary>
    public Reading SaysBefore { get; init; }

    /// <summary>The touch-off of Z it rests on; -1 for none.</summary>
    public int RestsOn { get; init; } = -1;

    /// <summary>The metal before it.</summary>
    public required Metal Before { get; init; }

    /// <summary>The metal after it.</summary>
    public required Metal After { get; init; }

    /// <summary>Whether it is meant to cut.</summary>
    public bool Cutting => Move?.Cutting ?? true;

    /// <summary>The cutter&#39;s name; <c>hand</c> without one.</summary>
    public string CutterName => Cutter?.Name ?? "hand";

    /// <summary>Where it is, for findings.</summary>
    public FindingPlace Place => new(Step.Id, Step.Where, Move?.Number);
}
