using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

/// <summary>The words for kinds of cutter.</summary>
internal static class CutterWords
{
    public static readonly (string Word, CutterKind Kind)[] All =
    [
        ("end mill", CutterKind.EndMill), ("ball end mill", CutterKind.Ball), ("bull nose end mill", CutterKind.BullNose), ("bull nose", CutterKind.BullNose),
        ("spotting drill", CutterKind.SpottingDrill), ("centre drill", CutterKind.CentreDrill), ("center drill", CutterKind.CentreDrill), ("drill", CutterKind.Drill),
        ("reamer", CutterKind.Reamer), ("counterbore", CutterKind.Counterbore), ("countersink", CutterKind.Countersink), ("chamfer cutter", CutterKind.Chamfer),
        ("dovetail cutter", CutterKind.Dovetail), ("saw", CutterKind.Saw), ("T-slot cutter", CutterKind.TSlot), ("woodruff cutter", CutterKind.Woodruff),
        ("boring bar", CutterKind.BoringBar), ("fly cutter", CutterKind.FlyCutter), ("tap", CutterKind.Tap),
        ("square broach", CutterKind.Broach), ("hexagon broach", CutterKind.Broach), ("broach", CutterKind.Broach),
    ];

    // A kind as a person says it.
    public static string Said(CutterKind kind) => Array.Find(All, w => w.Kind == kind).Word;
}
