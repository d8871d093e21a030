using Handwheel.Trade.Joints;

namespace Handwheel.Trade.Tests.Known;

internal static class KnownJoints
{
    public static object? Work(KnownValue k)
    {
        if (k.Inputs.ContainsKey("Fi_kip"))
        {
            var share = Bolts.StiffnessShare(k.In("kb"), k.In("km"));
            return new Dictionary<string, object>
            {
                ["sigma_i"] = Bolts.ServiceStress(k.In("Fi_kip"), 0, share, k.In("At")), ["C"] = share,
                ["sigma_b"] = Bolts.ServiceStress(k.In("Fi_kip"), k.In("P_kip"), share, k.In("At")),
            };
        }

        if (k.Inputs.ContainsKey("fc"))
        {
            var d = k.In("d_in");
            var root = Math.Sqrt(4 * 0.351 / Math.PI);
            return Bolts.TorqueByHelix(k.In("Fi_lbf"), (d + root) / 2, 1 / k.In("tpi"), 1.25 * d, k.In("f"), k.In("fc"));
        }

        if (k.Says("Torque factors"))
        {
            double Of(string condition) => Bolts.TorqueFactors.Single(t => t.Condition == condition).K;
            return new Dictionary<string, object> { ["zinc"] = Of("zinc plated"), ["lubricated"] = Of("lubricated"), ["black"] = Of("black, not plated") };
        }

        if (k.Inputs.ContainsKey("K"))
        {
            return Bolts.Torque(k.In("K"), k.In("F_lbf"), k.In("D_in"));
        }

        if (k.Inputs.ContainsKey("Kn_max"))
        {
            var pitch = 1 / k.In("n");
            return new Dictionary<string, object>
            {
                ["AS_ext_in2"] = ThreadStripping.ScrewArea(pitch, k.In("Le"), k.In("Kn_max"), k.In("Es_min")),
                ["AS_int_in2"] = ThreadStripping.NutArea(pitch, k.In("Le"), k.In("Ds_min"), k.In("En_max")),
                ["Le_min_in"] = ThreadStripping.EngagementEqual(k.In("At"), pitch, k.In("Kn_max"), k.In("Es_min")),
            };
        }

        if (k.Inputs.ContainsKey("DKm"))
        {
            return Bolts.TorqueByFriction(k.In("F"), k.In("P"), k.In("d2"), k.In("DKm"), k.In("mu"), k.In("mu")) / 1000;
        }

        if (k.Inputs.ContainsKey("half_deg"))
        {
            return TaperHolding.OutOverIn(k.In("half_deg"), k.In("mu"));
        }

        if (!k.Inputs.ContainsKey("load"))
        {
            return null;
        }

        var out_ = TaperHolding.WedgeWithdrawN(k.In("load"), k.In("angle"), k.In("mu"));
        return new Dictionary<string, object>
        {
            ["drive_N"] = TaperHolding.WedgeDriveN(k.In("load"), k.In("angle"), k.In("mu")), ["withdraw_N"] = out_, ["self_locking"] = out_ > 0,
        };
    }
}
