using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Reading;

// Whether the edge of a feature's end can carry a chamfer.
internal sealed class ChamferCheck(FindingBag bag, LengthUnit unit)
{
    // False, with a finding made, where it cannot.
    public bool Sound(FeatureDraft draft, FeatureShape shape, double leg, double high)
    {
        if (draft.IsCut)
        {
            bag.Add(FindingCatalogue.NotThere(draft.Where, $"'{draft.Name}' is cut away: its rim is drawn as a cut of its own.", $"Write 'rim countersink 8 by 90 deg at {draft.Name} down from 0': the hole's diameter and twice the leg."));
            return false;
        }

        if (Half(shape) is not { } half)
        {
            bag.Add(FindingCatalogue.NotThere(draft.Where, $"The end of '{draft.Name}' cannot be drawn chamfered.", "A round, ring, block, polygon, slot or tangent outline can; write it as a cut of its own, such as 'cut outline ..., seen from front'."));
            return false;
        }

        var ends = draft.Chamfered is { Above: true, Below: true } ? 2 : 1;
        if (leg < half && leg * ends < high)
        {
            return true;
        }

        bag.Add(FindingCatalogue.Contradiction(draft.Where, $"A chamfer of {unit.Said(leg)} leaves nothing of the end of '{draft.Name}'.", "Write a smaller leg."));
        return false;
    }

    // Half of what is narrowest; null where a shape carries none. A tangent outline's rounds are asked for themselves.
    private static double? Half(FeatureShape shape) => shape switch
    {
        RoundShape s => s.Across.Middle / 2,
        RingShape s => (s.Across.Middle - s.Bore.Middle) / 2,
        BlockShape s => Math.Min(s.Wide.Middle, s.Deep.Middle) / 2,
        PolygonShape s => s.AcrossFlats.Middle / 2,
        SlotShape s => s.Wide.Middle / 2,
        TangentShape => double.PositiveInfinity,
        _ => null,
    };
}
