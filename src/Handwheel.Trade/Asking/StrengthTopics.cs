using Handwheel.Trade.Asking.Topics;
using static Handwheel.Trade.Asking.TopicList;

namespace Handwheel.Trade.Asking;

/// <summary>Topics of bending, buckling, walls and stacks.</summary>
internal static class StrengthTopics
{
    /// <summary>The topics.</summary>
    internal static readonly Topic[] All =
    [
        new("web", "bending and shear of a web or thin wall under a force",
            Words("web:6 wall:3 bend:4 bends:3 bending:3 strip:1 thin:3 cantilever:5 beam:5 plate:1 deflect:3 deflection:3 flex:4 sag:4 thick:2 supported:3 strong:1"),
            ["bend web 0.3 thick 31 long 4 high in brass force 20 N", "thin wall 1 thick 15 high 10 wide 20 N in mild steel", "beam 12 wide 2 thick 60 long 100 N supported"],
            "beam formulas (Shigley Table A-9)", WebTopic.Work),
        new("buckle", "load at which a punch, broach or prop buckles",
            Words("buckle:7 buckles:7 buckling:7 punch:3 column:5 slender:5 euler:5 johnson:5 prop:3 rod:1 collapse:4"),
            ["buckle punch 3 long 20", "buckling 6 rod 60 long pinned mild steel"], "Euler, J. B. Johnson (Shigley)", BuckleTopic.Work),
        new("punch", "force to punch a hole through sheet; shear of a pin",
            Words("punch:4 punching:6 blank:5 blanking:6 shear:5 shearpin:6 pin:2 sheet:5 hole:1"), ["punch hole 6 in 1.5 sheet mild steel", "shear pin 4 load 2000 N double"], "F = pi d t tau; F / (n A)", PunchTopic.Work),
        new("wall between", "metal left between two holes, or a bore and a thread",
            Words("wall:4 between:4 left:2 breaks:1 thickness:2 centres:3 centers:3 apart:3 bore:2 holes:1"), ["wall between bore 10 and M6 centres 12"], "plane geometry", WallTopic.Work),
        new("stack", "how tolerances add up", Words("stack:6 stackup:6 stack-up:6 rss:6 worst:4 add:3 adding:3 accumulate:4 chain:4 tolerances:2"), ["stack 0.1 0.05 0.03 0.05"], "sum and root of squares", StackTopic.Work),
    ];
}
