using Handwheel.Trade.Asking.Topics;
using static Handwheel.Trade.Asking.TopicList;

namespace Handwheel.Trade.Asking;

/// <summary>Topics of fits and keys.</summary>
internal static class FitTopics
{
    /// <summary>The topics.</summary>
    internal static readonly Topic[] All =
    [
        new("press", "pressure, push and grip of a press or shrink fit",
            Words("press:6 pressed:5 pressing:5 shrink:6 shrunk:6 shrinking:6 shrinks:5 collar:2 interference:5 force:1 hub:4 heat:2 heating:2 sleeve:3 bush:3 bushing:3 fit:1 drive:1 arbor:1 liner:3"),
            ["press fit 20 H7/p6 hub 40 long 25", "press 20 interference 0.03 hub 40 long 25 in brass", "shrink 1 in FN2 hub 2 in long 1 in"],
            "Lame (Shigley); ISO 286; ANSI B4.1", PressTopic.Work),
        new("fit", "limits of a hole, a shaft or both",
            Words("fit:5 fits:5 limits:2 tolerance:2 hole:1 shaft:1 running:3 sliding:3 slide:3 slip:3 locating:3 push:1 transition:3 iso:1 286:3 ream:1 reamed:1 clearance:1 bearing:2 dowel:3"),
            ["fit 25 H7/g6", "fit 10 H8", "fit 1/2 RC4", "fit 6 m6"], "ISO 286-1; ANSI/ASME B4.1", FitTopic.Work),
        new("general", "tolerances of sizes that carry none, and standard grades",
            Words("general:4 nothing:5 unstated:5 untolerated:4 dim:1 dimension:1 drawing:1 2768:6 untoleranced:5 unless:3 medium:2 fine:1 coarse:1 grade:2 tolerance:2 tolerances:3 open:2 title:3 block:1 m:0 f:0 angle:1 angular:2"),
            ["general tolerance 25 medium", "ISO 2768 m 75", "grade IT7 25", "general tolerance angle 40"], "ISO 2768-1; ISO 286-1", GeneralTopic.Work),
        new("key", "parallel and Woodruff keys and their keyseats",
            Words("key:5 keys:5 keyway:6 keyseat:6 keyed:4 woodruff:7 shaft:1 slot:1 feather:4 gib:2"),
            ["key 20 shaft", "key 3/4 shaft", "woodruff 404", "keyway 1 in shaft flat"], "ASME B17.1, B17.2; DIN 6885-1", KeyTopic.Work),
    ];
}
