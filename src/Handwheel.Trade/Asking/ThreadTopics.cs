using Handwheel.Trade.Asking.Topics;
using static Handwheel.Trade.Asking.TopicList;

namespace Handwheel.Trade.Asking;

/// <summary>Topics of threads, drills and screws.</summary>
internal static class ThreadTopics
{
    /// <summary>The topics.</summary>
    internal static readonly Topic[] All =
    [
        new("tap drill", "which drill for a tap, by percentage of thread",
            Words("tap:4 tapping:4 tapped:4 taps:3 drill:1 hole:1 percent:5 % tapdrill:6 tap-drill:6 pilot:1 bore:1 unc:1 unf:1 unef:1"),
            ["tap drill M6", "tap drill 10-32", "tap drill 1/4-20 65 %", "what percent thread 10-32 drill #21"],
            "Machinery's Handbook (percentage of thread)", TapDrillTopic.Work),
        new("clearance", "clearance hole for a screw",
            Words("clearance:6 clear:4 clears:4 pass:3 passing:3 through:3 slip:3 loose:2 free:2 close:2 hole:1 bolt:1 screw:1 normal:1"),
            ["clearance M5", "clearance hole 1/4", "clearance #10"], "ISO 273; ASME B18.2.8; shop charts", ClearanceTopic.Work),
        new("wires", "measuring a screw over three wires",
            Words("wires:6 wire:5 three-wire:6 3-wire:6 three:1 over:1 measure:1 measuring:1 acme:2 best:2 pitch:1 trapezoidal:2"),
            ["wires 1/2-13", "wires M10 with 0.895", "wires acme 0.45 10 tpi"], "ASME B1.2 / NBS H28", WiresTopic.Work),
        new("strip", "how deep a screw must go before it breaks rather than strips",
            Words("strip:6 strips:6 stripping:6 stripped:6 engagement:5 engage:4 deep:1 depth:1 thread:1 threads:1 screw:1 length:1 enough:5 pull:1 hold:1 nut:1 trust:4"),
            ["strip M6 8.8 in 6061", "engagement 1/4-20 in brass", "strip 10-32 6 deep in 6061"], "FED-STD-H28/2; ASME B1.1 appendix", StripTopic.Work),
        new("screw", "heads, keys, counterbores and countersinks of screws",
            Words("screw:3 screws:3 head:4 heads:4 socket:4 cap:3 capscrew:5 shcs:6 counterbore:6 counterbored:5 cbore:6 c'bore:6 spotface:4 allen:4 hex:1 bolt:1 flat:2 csk:3 countersunk:4 countersink:2 wrench:4 spanner:4 key:1 grub:6 setscrew:6 button:4 pan:3 bhcs:6 fhcs:6 headless:4"),
            ["screw M5", "counterbore 1/4 socket cap", "countersunk screw M4"], "ISO 4762, 10642, 7046, 7380-1, 7045, 4017, 4032; DIN 974-1, 913; ASME B18.3, B18.6.3, B18.2.1, B18.2.2", ScrewTopic.Work),
        new("thread", "sizes and limits of a thread",
            Words("thread:3 threads:3 threaded:2 threading:2 screwthread:3 pitch:2 minor:3 major:3 unc:2 unf:2 unef:2 limits:2 diameter:1 class:2 stress:2 area:2 tpi:2 size:1 core:2 root:2 effective:2 stud:1"),
            ["thread 10-32 UNF 2B", "thread M6 6g", "thread 1/4-20", "thread M8x1"], "ASME B1.1, B1.30; ISO 724, ISO 965-1", ThreadTopic.Work),
        new("drill", "size of a named drill, or the drill nearest to a size",
            Words("drill:3 drills:3 number:2 letter:3 nearest:3 closest:3 size:1 diameter:1 gauge:1 gage:1 bit:2 wire:1 no:1"),
            ["drill #7", "drill F", "drill 17/64", "drill nearest 5.2"], "ASME B94.11M; ISO 235", DrillTopic.Work),
    ];
}
