using Handwheel.Jobs.Moves;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Loads;

/// <summary>Where one thing that presses on the work bears on it.</summary>
/// <param name="Facts">What presses.</param>
/// <param name="Places">Places of the work it bears on, holding frame, mm; none where it bears on nothing.</param>
/// <param name="Kind">How it meets the work.</param>
/// <param name="Nearest">The place of nearest metal, holding frame; null where none is near.</param>
/// <param name="IsUnderOverhang">Whether it meets the work with its upper edge alone, under metal that leans out over it: pressing squeezes the work up.</param>
/// <param name="Above">How far it reaches above the lowest line it bears along, mm.</param>
internal sealed record Bearing(FixtureFacts Facts, IReadOnlyList<Point3> Places, ContactKind Kind, Point3? Nearest, bool IsUnderOverhang, double Above)
{
    /// <summary>Whether it is one of a vise&#39;s two jaws.</summary>
    public bool IsViseJaw => Facts.Name is "fixed jaw" or "moving jaw";

    /// <summary>Whether it is a hard flat jaw that meets the work along a line or at a point alone: soft ones give, or are cut to the work.</summary>
    public bool IsNarrow => IsViseJaw && !Facts.Soft && Kind is not (ContactKind.None or ContactKind.Face);
}
