using Handwheel.Trade.Asking.Topics;
using static Handwheel.Trade.Asking.TopicList;

namespace Handwheel.Trade.Asking;

/// <summary>Topics of cutting and metals.</summary>
internal static class CuttingTopics
{
    /// <summary>The topics.</summary>
    internal static readonly Topic[] All =
    [
        new("speed", "spindle speed and feed for a cutter in a metal",
            Words("speed:6 speeds:6 rpm:6 revs:5 feed:4 feeds:4 spindle:4 fast:5 sfm:4 surface:3 end:1 mill:2 endmill:2 drill:1 ream:2 reamer:3 turn:1 turning:2 lathe:2 cutter:1 saw:2 carbide:1 hss:1 cutting:1 slotting:2 run:3 milling:2 tapping:0 flycutter:2 facemill:2 slotdrill:2 quick:2"),
            ["speed 6 end mill in 6061", "rpm 1/2 drill in mild steel", "speed 10 carbide end mill in 304", "speed ream 8 in brass"], "US Navy 14345; T.O. 1-1A-9; n = 1000 v / (pi D)", SpeedTopic.Work),
        new("force", "cutting force, power and torque: milling, turning, drilling, tapping",
            Words("force:5 forces:5 power:6 thrust:6 torque:2 cut:1 cutting:2 slotting:2 mill:1 slotdrill:1 milling:1 drilling:2 drill:1 turning:1 horsepower:6 hp:2 load:3 chip:2 removal:4 mrr:5 tap:2 kienzle:5"),
            ["force 6 end mill in brass 1 deep 3 wide", "thrust drill 10 in mild steel", "torque tap M6 in 6061", "power turning 2 deep 0.2 feed 40 dia in 4140"], "Kienzle; Machinery's Handbook", ForceTopic.Work),
        new("cutter", "how far a cutter bends and what breaks it",
            Words("cutter:3 bend:3 bends:3 bending:3 deflect:5 deflects:5 deflection:5 break:4 breaks:4 snap:5 snaps:5 mill:2 endmill:2 end:1 stickout:4 stick-out:4 overhang:3 sticking:3 stick:2 carbide:2 hss:2"),
            ["bend cutter 3 carbide stickout 12 force 20 N", "deflection 6 hss end mill 20 out 50 N"], "cantilever of 0.8 d", CutterTopic.Work),
        new("push", "force to push a broach or punch against quill or press",
            Words("broach:6 broaching:6 push:4 pushing:4 corners:4 square:2 quill:4 arbor:1"),
            ["push broach square 4 in brass", "broach square 1/4 in mild steel"], "area x Kienzle's kc", PushTopic.Work),
        new("clamp", "squeeze that holds the work against a cut",
            Words("clamp:6 clamps:6 clamping:6 vise:5 vice:5 squeeze:5 grip:5 slip:2 hold:1 jaws:4 force:1 clamped:5 clamping:5 bolted:2 move:2 moving:2 lift:1"),
            ["clamp force 500 N", "vise against 100 lbf"], "Coulomb friction", ClampTopic.Work),
        new("heat", "temper colours, and what a blue cutter means",
            Words("blue:6 colour:5 color:5 temper:6 tempering:6 straw:6 heat:2 burnt:4 burned:4 purple:5 turned:1 hot:3"),
            ["temper colours", "my cutter turned blue"], "temper colours", HeatTopic.Work),
        new("metal", "strength, weight, stiffness, cutting constants and cautions of a metal",
            Words("metal:5 material:5 properties:6 strength:4 strong:4 tensile:5 yield:5 density:6 weight:4 weigh:3 heavy:4 modulus:6 kc:6 kc11:6 kc1.1:6 stiffness:5 caution:5 cautions:5 danger:5 dangerous:5 safe:4 safety:5 poison:5 poisonous:6 toxic:6 hazard:5 hazards:5 dust:5 fire:4 burn:3 burns:5 expansion:5 expand:5 expands:5 grow:5 grows:5 growth:5 shear:2 hardens:4 harden:3 grab:4 grabs:4 metals:5 materials:4 weighs:4 young's:4 stiff:4 tell:1 about:1 machine:2 machining:3"),
            ["metal 6061", "density of brass", "cautions magnesium", "kc of C45"], "handbook figures; Kienzle", MetalTopic.Work),
    ];
}
