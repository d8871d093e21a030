using Handwheel.Trade.Asking.Topics;
using static Handwheel.Trade.Asking.TopicList;

namespace Handwheel.Trade.Asking;

/// <summary>Topics of bolts, friction and wedges.</summary>
internal static class JointTopics
{
    /// <summary>The topics.</summary>
    internal static readonly Topic[] All =
    [
        new("bolt", "preload, torque and proof load of a screw",
            Words("torque:5 preload:6 tighten:6 tightening:6 tightness:4 tight:3 bolt:3 bolts:3 screw:1 screws:1 proof:5 grade:2 clampload:5 stretch:3 nm:2"),
            ["torque M6 8.8", "torque 1/4-20 grade 5", "preload M8 from 20 N m", "proof load M10 8.8"], "ISO 898-1; Shigley; VDI 2230", BoltTopic.Work),
        new("friction", "coefficients of friction", Words("friction:4 coefficient:4 mu:4 slippery:4"), ["friction steel on steel", "coefficient of friction"], "Marks' Standard Handbook", FrictionTopic.Work),
        new("wedge", "force to drive and to draw a wedge", Words("wedge:7 cotter:6 gib:4 jib:4"), ["wedge 5 deg load 1000 N", "wedge 7 deg 500 N friction 0.1"], "statics of the wedge", WedgeTopic.Work),
    ];
}
