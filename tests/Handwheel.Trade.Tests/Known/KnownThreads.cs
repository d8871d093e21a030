using Handwheel.Trade.Drills;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Threads;

namespace Handwheel.Trade.Tests.Known;

internal static class KnownThreads
{
    public static object? Work(KnownValue k)
    {
        if (k.Says("Proof load"))
        {
            var thread = MetricTable.CoarseOf(double.Parse(k.Word("thread")[1..], System.Globalization.CultureInfo.InvariantCulture))!;
            var grade = BoltGrades.Find(k.Word("class"), thread.DiameterMm)!;
            Assert.Equal(k.In("proof_stress_MPa"), grade.ProofMPa);
            return thread.Basics.StressArea * grade.ProofMPa;
        }

        if (k.Says("Percent"))
        {
            return TapDrills.Percent(k.In("major_in"), 1 / k.In("tpi"), k.Inputs.ContainsKey("drill_in") ? k.In("drill_in") : k.In("hole_in"));
        }

        if (k.Says("Theoretical tap-drill"))
        {
            return TapDrills.Hole(k.In("major_in"), 1 / k.In("tpi"), k.In("percent"));
        }

        return k.Inputs.ContainsKey("d_mm") ? Metric(k) : Unified(k);
    }

    public static object? Drill(KnownValue k) => DrillTable.Find(k.Word("drill"))?.DiameterIn;

    public static object? Wires(KnownValue k)
    {
        if (k.Says("Acme"))
        {
            var pitch = 1 / k.In("tpi");
            var wire = ThreadWires.Best(pitch, 29);
            return new Dictionary<string, object> { ["best_wire"] = wire, ["M"] = ThreadWires.Over(k.In("pitch_dia_in"), pitch, wire, 29) };
        }

        if (k.Inputs.ContainsKey("d_mm"))
        {
            var thread = new MetricThread(k.In("d_mm"), k.In("pitch_mm"));
            return new Dictionary<string, object>
            {
                ["best_wire"] = ThreadWires.Best(thread.PitchMm),
                ["M"] = ThreadWires.Over(thread.Basics.Pitch, thread.PitchMm, k.In("wire_mm")),
            };
        }

        if (k.Inputs.ContainsKey("pitch_dia_in"))
        {
            var pitch = 1 / k.In("tpi");
            var wire = ThreadWires.Best(pitch);
            return new Dictionary<string, object> { ["best_wire"] = wire, ["M"] = ThreadWires.Over(k.In("pitch_dia_in"), pitch, wire) };
        }

        return k.Inputs.ContainsKey("wire_in")
            ? ThreadWires.OverFromMajor(k.In("major_in"), 1 / k.In("tpi"), k.In("wire_in"))
            : ThreadWires.Best(1 / k.In("tpi"));
    }

    private static Dictionary<string, object> Metric(KnownValue k)
    {
        var thread = new MetricThread(k.In("d_mm"), k.In("pitch_mm"));
        if (k.Inputs.ContainsKey("class"))
        {
            return Limits(thread.Limits(k.Word("class")));
        }

        var b = thread.Basics;
        Assert.Equal(thread, MetricTable.CoarseOf(thread.DiameterMm));
        return new Dictionary<string, object> { ["P"] = thread.PitchMm, ["d2"] = b.Pitch, ["D1"] = b.MinorInternal, ["d3"] = b.MinorExternal, ["As_mm2"] = b.StressArea };
    }

    private static Dictionary<string, object> Unified(KnownValue k)
    {
        var thread = UnifiedTable.All.Single(t => Math.Abs(t.MajorIn - k.In("major_in")) < 1e-6 && t.Tpi == k.In("tpi"));
        if (k.Inputs.ContainsKey("class"))
        {
            return Limits(thread.Limits(k.Word("class")));
        }

        var b = thread.Basics;
        return new Dictionary<string, object>
        {
            ["major"] = b.Major, ["pitch"] = b.Pitch, ["minor_ext_d3"] = b.MinorExternal, ["minor_int_D1"] = b.MinorInternal, ["At_in2"] = b.StressArea,
        };
    }

    private static Dictionary<string, object> Limits(ThreadLimits l) => new()
    {
        ["allowance"] = l.Allowance, ["major_max"] = l.MajorMax, ["major_min"] = l.MajorMin, ["pitch_max"] = l.PitchMax, ["pitch_min"] = l.PitchMin,
        ["minor_max"] = l.MinorMax, ["minor_min"] = l.MinorMin,
    };
}
