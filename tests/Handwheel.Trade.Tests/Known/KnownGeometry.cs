using Handwheel.Trade.Geometry;
using Handwheel.Trade.Keys;

namespace Handwheel.Trade.Tests.Known;

internal static class KnownGeometry
{
    public static object? Work(KnownValue k)
    {
        if (k.Says("Arm of width"))
        {
            var a = Circles.ArmIntoBoss(k.In("R"), k.In("w"), k.In("r"));
            return new Dictionary<string, object>
            {
                ["x_sharp"] = a.Sharp, ["fillet_centre"] = Pair(a.Centre), ["tangent_on_boss"] = Pair(a.OnBoss), ["tangent_on_edge"] = Pair(a.OnEdge),
            };
        }

        if (k.Says("Common outer tangent"))
        {
            var t = Circles.OuterTangent(k.In("R1"), k.In("R2"), k.In("C"));
            return new Dictionary<string, object> { ["t1"] = Pair(t.First), ["t2"] = Pair(t.Second), ["angle_deg"] = t.SlopeDeg, ["tangent_length"] = t.Length };
        }

        if (k.Says("Dovetail"))
        {
            return k.Word("type") == "male"
                ? Shapes.DovetailOver(k.In("width"), k.In("angle_deg"), k.In("pin"))
                : Shapes.DovetailBetween(k.In("width"), k.In("angle_deg"), k.In("pin"));
        }

        if (k.Says("V-block"))
        {
            var v = Shapes.Vee(k.In("d"), k.In("angle"));
            return new Dictionary<string, object> { ["centre"] = v.Centre, ["top"] = v.Top, ["contact_width"] = v.Contact };
        }

        if (k.Says("Square key"))
        {
            var key = KeyTable.OfInch(k.In("shaft_in"))!;
            Assert.Equal(k.In("key_in"), key.Width / 25.4, 1e-9);
            return new Dictionary<string, object>
            {
                ["S"] = key.Bottom / 25.4, ["T"] = key.Top / 25.4, ["chordal_height_Y"] = Shapes.KeyseatArc(k.In("shaft_in"), k.In("key_in")),
            };
        }

        return k.Says("gon") ? Polygon(k) : Depth(k);
    }

    private static object? Polygon(KnownValue k)
    {
        if (k.Inputs.ContainsKey("across_flats_m"))
        {
            return Circles.PolygonFromFlats(k.Whole("n"), k.In("across_flats_m")).Corners;
        }

        var flats = k.Inputs.ContainsKey("across_flats") ? k.In("across_flats") : k.In("inscribed-circle_diameter");
        var p = Circles.PolygonFromFlats(k.Whole("n"), flats);
        return new Dictionary<string, object> { ["across_corners"] = p.Corners, ["circum_dia"] = p.Corners, ["side"] = p.Side };
    }

    private static object? Depth(KnownValue k) => k switch
    {
        _ when k.Says("Radius from chord") => Circles.RadiusFromChord(k.In("chord"), k.In("height")),
        _ when k.Says("between two rolls") => Circles.RadiusOverRolls(k.In("L"), k.In("D")),
        _ when k.Says("Hexagon across corners") => Circles.PolygonFromFlats(6, k.In("across_flats_m")).Corners,
        _ when k.Says("Countersink") => Shapes.CountersinkDepth(k.In("angle"), k.In("D"), k.In("tip_flat")),
        _ when k.Says("Drill point") => Shapes.DrillPoint(k.In("angle"), k.In("D")),
        _ when k.Says("Cusp height") => Shapes.Cusp(k.In("R"), k.In("step")),
        _ when k.Says("approximated by flats") => Shapes.Ridge(k.In("R"), k.In("step_deg")),
        _ => null,
    };

    private static double[] Pair((double X, double Y) p) => [p.X, p.Y];
}
