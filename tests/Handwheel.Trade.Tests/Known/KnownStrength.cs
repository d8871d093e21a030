using Handwheel.Trade.Strength;

namespace Handwheel.Trade.Tests.Known;

internal static class KnownStrength
{
    public static object? Work(KnownValue k)
    {
        if (k.Inputs.ContainsKey("C"))
        {
            return Column(k);
        }

        if (k.Says("Solid round"))
        {
            var (stress, bend) = Beams.Round(k.In("d"), k.In("L"), k.In("F"), k.In("E_MPa"));
            return new Dictionary<string, object>
            {
                ["delta_mm"] = bend, ["delta_0.8d_mm"] = Beams.Round(0.8 * k.In("d"), k.In("L"), k.In("F"), k.In("E_MPa")).Deflection, ["stress_MPa"] = stress,
            };
        }

        if (k.Inputs.ContainsKey("b"))
        {
            var (stress, bend) = k.Says("cantilever")
                ? Beams.Cantilever(k.In("b"), k.In("t"), k.In("L"), k.In("F"), k.In("E"))
                : Beams.Supported(k.In("b"), k.In("t"), k.In("L"), k.In("F"), k.In("E"));
            return new Dictionary<string, object> { ["sigma"] = stress, ["delta"] = bend };
        }

        if (k.Inputs.ContainsKey("tau"))
        {
            var (force, stress) = Beams.Punching(k.In("d"), k.In("t"), k.In("tau"));
            return new Dictionary<string, object> { ["F_N"] = force, ["sigma_punch"] = stress };
        }

        return k.Inputs.ContainsKey("planes") ? Beams.PinShear(k.In("d"), k.In("F"), k.Whole("planes")) : null;
    }

    public static object? Stack(KnownValue k)
    {
        if (k.Inputs.ContainsKey("t"))
        {
            return new Dictionary<string, object> { ["worst"] = Strength.Stack.Worst(k.Numbers("t")), ["rss"] = Strength.Stack.RootSquares(k.Numbers("t")) };
        }

        if (k.Inputs.ContainsKey("c"))
        {
            double[] a = k.Numbers("a"), b = k.Numbers("b"), c = k.Numbers("c"), d = k.Numbers("d");
            var gap = a[0] - b[0] - c[0] - d[0];
            var t = Strength.Stack.Worst([a[1], b[1], c[1], d[1]]);
            return new Dictionary<string, object> { ["w"] = gap, ["t"] = t, ["wmax"] = gap + t, ["wmin"] = gap - t, ["d_for_wmin_0.003"] = a[0] - b[0] - c[0] - t - 0.003 };
        }

        if (k.Inputs.ContainsKey("uS_mg"))
        {
            var root = Math.Sqrt(3);
            var u = Strength.Stack.RootSquares([k.In("uS_mg"), k.In("drift_rect_mg") / root, k.In("obs_u_mg"), k.In("ecc_rect_mg") / root, k.In("buoy_rect_mg") / root]);
            return new Dictionary<string, object> { ["u_mg"] = u, ["U_mg"] = 2 * u };
        }

        if (!k.Inputs.ContainsKey("L"))
        {
            return null;
        }

        double[] dia = k.Numbers("d"), len = k.Numbers("L");
        var (volume, uncertainty) = Strength.Stack.Cylinder(dia[0], dia[1], len[0], len[1]);
        return new Dictionary<string, object> { ["V"] = volume, ["u"] = uncertainty };
    }

    private static Dictionary<string, object> Column(KnownValue k)
    {
        if (k.Inputs.ContainsKey("P_kN"))
        {
            return new Dictionary<string, object>
            {
                ["d_mm"] = Columns.EulerDiameter(k.In("P_kN") * 1000 * k.In("nd"), k.In("L_mm"), k.In("E_GPa") * 1000, k.In("C")),
                ["lk_40"] = k.In("L_mm") / (40 / 4.0), ["lk_transition"] = Columns.Transition(k.In("Sy"), k.In("E_GPa") * 1000, k.In("C")),
            };
        }

        if (k.Inputs.ContainsKey("h"))
        {
            var width = Columns.JohnsonWidth(k.In("Pcr"), k.In("h"), k.In("l"), k.In("Sy"), k.In("E"), k.In("C"));
            var check = Columns.CriticalLoad(width * k.In("h"), k.In("h") / Math.Sqrt(12), k.In("l"), k.In("Sy"), k.In("E"), k.In("C"));
            Assert.Equal(k.In("Pcr"), check.Load, 1e-6);
            return new Dictionary<string, object> { ["b_in"] = width, ["regime"] = check.Euler ? "Euler" : "Johnson" };
        }

        var d = k.In("d");
        var (load, euler) = Columns.CriticalLoad(Math.PI * d * d / 4, d / 4, k.In("L"), k.In("Sy"), k.In("E_MPa"), k.In("C"));
        return new Dictionary<string, object>
        {
            ["l_over_k"] = k.In("L") / (d / 4), ["transition"] = Columns.Transition(k.In("Sy"), k.In("E_MPa"), k.In("C")), ["regime"] = euler ? "Euler" : "Johnson", ["Pcr_N"] = load,
        };
    }
}
