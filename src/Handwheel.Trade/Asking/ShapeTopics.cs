using Handwheel.Trade.Asking.Topics;
using static Handwheel.Trade.Asking.TopicList;

namespace Handwheel.Trade.Asking;

/// <summary>Topics of tapers and dividing.</summary>
internal static class ShapeTopics
{
    /// <summary>The topics.</summary>
    internal static readonly Topic[] All =
    [
        new("rollers", "a taper over rollers, or from two readings or two balls",
            Words("rollers:6 roller:6 rolls:3 slips:3 balls:6 ball:2 over:1 taper:2 angle:1 plug:2 ring:2 gauge:1"),
            ["taper over rollers Morse 2 rollers 0.5 in blocks 1.5 in", "rollers 30 and 33 on blocks 30"], "plane geometry", RollersTopic.Work),
        new("taper", "a named taper, or one from two diameters; whether it holds",
            Words("taper:4 tapers:4 tapered:3 morse:5 jacobs:5 jarno:5 brown:3 sharpe:5 b&s:5 r8:6 7/24:6 steep:3 pin:1 tang:3 drawbar:5 holds:2 hold:2 holding:3 self-holding:4 release:2 let:2 self:2 snaps:1 socket:1 knock:3 out:0 arbor:2 arbour:2 cone:4 seat:2 slip:2 chuck:1 angle:1 foot:1 nmtb:5 int:2 iso:1 setover:6 offset:2 tailstock:4 tpf:4"),
            ["taper Morse 2", "taper Jacobs 33", "does Morse 2 hold, drawbar 2 kN, friction 0.15", "taper 1 in to 0.75 in over 3 in", "taper 7/24 40"],
            "ASME B5.10; ISO 296, 297, 7388-1; statics of the cone", TaperTopic.Work),
        new("divide", "turns and holes of an indexer or rotary table",
            Words("divide:6 dividing:6 divisions:6 division:5 index:6 indexing:6 indexer:5 plate:3 plates:3 worm:5 rotary:4 crank:3 turns:3 holes:1 circle:1 table:1 ratio:3 head:1 teeth:2 gear:2 sides:2 compound:3 differential:3 spaces:2 equal:1 angle:1 handle:3"),
            ["divide 17 on 40", "divide 14 on 60 plate 21 23 25 26 28", "index 35 deg on 40", "rotary 72 turn 48 deg 40 min dial 1 min"],
            "worm arithmetic; plates of the milling handbooks", DivideTopic.Work),
        new("bolt circle", "places of holes on a circle, chords",
            Words("boltcircle:6 bcd:5 pcd:6 circle:3 bolt:2 holes:2 chord:7 chords:7 spacing:4 spaced:3 equally:3 coordinates:5 flange:3 pitch:1 divisions:1 factor:2 round:1"),
            ["bolt circle 6 holes on 50", "chord 17", "5 holes on 3 in circle starting at 90 deg"], "plane geometry", BoltCircleTopic.Work),
    ];
}
