using Handwheel.Trade.Asking.Topics;
using static Handwheel.Trade.Asking.TopicList;

namespace Handwheel.Trade.Asking;

/// <summary>Topics of plane geometry.</summary>
internal static class MoreGeometryTopics
{
    private const string Plane = "plane geometry";

    /// <summary>The topics.</summary>
    internal static readonly Topic[] All =
    [
        new("polygon", "corners, flats and sides of squares, hexagons and others", Words("hex:5 hexagon:6 square:4 octagon:6 pentagon:6 polygon:6 triangle:5 flats:4 across:3 corners:5 points:3 nut:3 sided:4 sides:3 af:4"), ["hex 13 across flats", "square from 20 bar", "polygon 5 flats 10"], Plane, GeometryTopics.Polygon),
        new("radius", "radius of an arc from chord and height, or over rolls", Words("radius:5 chord:3 sagitta:6 height:2 arc:4 curve:3 rolls:3"), ["radius chord 60 height 8", "radius over rolls 2.22 in rolls 0.5 in"], Plane, GeometryTopics.Radius),
        new("sine bar", "blocks under a sine bar", Words("sine:7 sinebar:7 bar:1 blocks:2 stack:1 slips:2 angle:1"), ["sine bar 5 in 23 deg 41 min", "sine bar 100 mm 8.3 deg"], Plane, GeometryTopics.Sine),
        new("dovetail", "a dovetail over pins", Words("dovetail:8 dovetails:8 pins:2 male:2 female:2 over:1 between:1"), ["dovetail male 60 deg pins 0.25 in width 1.5 in", "dovetail female pins 6 width 40"], Plane, GeometryTopics.Dovetail),
        new("countersink", "depth of a countersink, chamfer or spot for a diameter", Words("countersink:5 countersinking:5 csk:4 chamfer:4 spot:3 depth:2 deep:2 spotting:4"), ["countersink 82 deg to 0.385 in", "countersink 90 deg to 10 from 5"], Plane, GeometryTopics.Countersink),
        new("point", "length of a drill's point", Words("point:6 tip:5 drill:2 cone:2 length:1 allowance:1"), ["drill point 10", "point 135 deg 1/2"], Plane, GeometryTopics.Point),
        new("tangent", "outer tangent of two bosses", Words("tangent:7 tangents:7 bosses:4 boss:4 rounds:3"), ["tangent radius 25 and 12 centres 80"], Plane, GeometryTopics.Tangent),
        new("fillet", "where an arm meets a round boss", Words("fillet:7 arm:4 boss:2 into:1"), ["fillet arm 16 into boss radius 20 fillet 3"], Plane, GeometryTopics.Fillet),
        new("vee", "a round in a V-block", Words("vee:6 v-block:7 vblock:7 v:3 block:2 round:1"), ["v-block 90 deg round 20"], Plane, GeometryTopics.Vee),
        new("cusp", "ridges left by a ball or by turning in steps", Words("cusp:7 scallop:6 ball:3 ballnose:4 ballend:4 rough:1 roughness:3 finish:2 nose:3 stepover:4 step-over:4 step:2 ridge:5 flats:1 ridges:5"), ["cusp ball radius 3 step 0.5", "ridge radius 10 step 5 deg"], Plane, GeometryTopics.Cusp),
        new("chip", "chip thinning in a narrow cut", Words("thinning:7 chip:4 thin:1 thickness:2"), ["chip thinning 10 cutter 1 wide 0.05 a tooth"], Plane, GeometryTopics.Chip),
        new("convert", "inches and millimetres, forces, torques, stresses, temperatures", Words("convert:6 conversion:6 mm:1 inch:2 inches:2 decimal:5 fraction:4 thou:1 metric:2"), ["convert 3/8", "convert 0.25 in", "convert 12.7 mm"], "1 in = 25.4 mm exactly", GeometryTopics.Convert),
    ];
}
