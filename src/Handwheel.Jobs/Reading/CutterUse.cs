using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Reading;

/// <summary>Which kinds of cutter each step takes. Common practice, no source.</summary>
internal static class CutterUse
{
    private static readonly CutterKind[] Milling =
        [CutterKind.EndMill, CutterKind.BullNose, CutterKind.Ball, CutterKind.TSlot, CutterKind.Woodruff, CutterKind.Dovetail, CutterKind.Chamfer];

    private static readonly CutterKind[] Flat = [CutterKind.EndMill, CutterKind.BullNose];

    // The verb as said, the kinds it takes and what that is in words; null where anything goes.
    public static (string Verb, CutterKind[] Kinds, string Takes)? Of(Step step) => step switch
    {
        FaceStep => ("face", [.. Flat, CutterKind.FlyCutter], "an end mill or a fly cutter"),
        FlatsStep => ("face flats", Flat, "an end mill"),
        RoundStep or SideStep => ("cut a side", Milling, "an end mill"),
        SlotStep => ("cut a slot", [.. Milling, CutterKind.Saw], "an end mill or a saw"),
        PocketStep or BitesStep => ("cut a hollow", [CutterKind.EndMill, CutterKind.BullNose, CutterKind.Ball], "an end mill"),
        SawStep => ("saw", [CutterKind.Saw], "a saw"),
        ChamferStep => ("chamfer", [CutterKind.Chamfer, CutterKind.Countersink, CutterKind.SpottingDrill], "a chamfer cutter"),
        BroachStep => ("broach", [CutterKind.Broach], "a broach"),
        HoleStep hole => Hole(hole.Work),
        HandStep { Work: HandWork.Press } => ("press a hole", [CutterKind.Broach], "a broach or punch"),
        HandStep { Work: HandWork.Tap } => ("tap", [CutterKind.Tap], "a tap"),
        HandStep { Work: HandWork.Run } => ("run through", [CutterKind.Drill, CutterKind.Reamer, CutterKind.Tap], "a drill, a reamer or a tap"),
        _ => null,
    };

    private static (string Verb, CutterKind[] Kinds, string Takes) Hole(HoleWork work) => work switch
    {
        HoleWork.Spot => ("spot", [CutterKind.SpottingDrill, CutterKind.CentreDrill], "a spotting drill or a centre drill"),
        HoleWork.Drill => ("drill", [CutterKind.Drill, CutterKind.CentreDrill, CutterKind.EndMill], "a drill"),
        HoleWork.Ream => ("ream", [CutterKind.Reamer], "a reamer"),
        HoleWork.Bore => ("bore", [CutterKind.BoringBar], "a boring bar"),
        HoleWork.Counterbore => ("counterbore", [CutterKind.Counterbore, CutterKind.EndMill], "a counterbore or an end mill"),
        HoleWork.Countersink => ("countersink", [CutterKind.Countersink, CutterKind.Chamfer, CutterKind.SpottingDrill], "a countersink"),
        _ => ("tap", [CutterKind.Tap], "a tap"),
    };
}
