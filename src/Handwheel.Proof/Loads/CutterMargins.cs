using Handwheel.Jobs.Shops;
using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;
using Handwheel.Trade.Strength;

namespace Handwheel.Proof.Loads;

/// <summary>What a cutter of the shop stands: side force, bend, thrust, torque. Estimates within a factor of 1.5.</summary>
internal static class CutterMargins
{
    // A tap's core is about 0.6 of its thread, and its steel shears at about half of what breaks it in bending (common practice, no source).
    private const double TapCore = 0.6;

    /// <summary>What it is made of.</summary>
    /// <param name="cutter">The cutter.</param>
    /// <returns>The material.</returns>
    public static CutterMaterial MaterialOf(Cutter cutter) => cutter.Material switch
    {
        "carbide" => CutterMaterial.Carbide,
        "tool steel" => CutterMaterial.CarbonSteel,
        _ => CutterMaterial.HighSpeedSteel,
    };

    /// <summary>Side force at its tip that is likely to break it: at the collet, or where flute meets a thicker shank.</summary>
    /// <param name="cutter">The cutter.</param>
    /// <returns>N; none where it is not a slender one.</returns>
    public static double? BreakingN(Cutter cutter)
    {
        if (!IsSlender(cutter))
        {
            return null;
        }

        var material = MaterialOf(cutter);
        return IsStepped(cutter)
            ? Math.Min(CutterStrength.BreakingForceN(material, cutter.TrueAcross, cutter.Flute), CutterStrength.BreakingForceN(material, cutter.Shank / CutterStrength.FlutedShare, cutter.Out))
            : CutterStrength.BreakingForceN(material, cutter.TrueAcross, cutter.Out);
    }

    /// <summary>How far its tip is bent aside.</summary>
    /// <param name="cutter">The cutter.</param>
    /// <param name="force">Side force at the tip, N.</param>
    /// <returns>mm; 0 where it is not a slender one.</returns>
    public static double BentMm(Cutter cutter, double force)
    {
        if (!IsSlender(cutter))
        {
            return 0;
        }

        var material = MaterialOf(cutter);
        return IsStepped(cutter)
            ? CutterStrength.Bend(material, cutter.TrueAcross, cutter.Flute, force).DeflectionMm + CutterStrength.Bend(material, cutter.Shank / CutterStrength.FlutedShare, cutter.Out, force).DeflectionMm
            : CutterStrength.Bend(material, cutter.TrueAcross, cutter.Out, force).DeflectionMm;
    }

    /// <summary>Thrust at which a drill buckles: a core of 0.7 of its diameter, its tip guided, its yield 1500 MPa.</summary>
    /// <param name="cutter">The drill.</param>
    /// <returns>N.</returns>
    public static double BucklingN(Cutter cutter)
    {
        var core = 0.7 * cutter.TrueAcross;
        return Columns.CriticalLoad(Math.PI * core * core / 4, core / 4, Math.Max(cutter.Out, cutter.TrueAcross), 1500, CutterStrength.ModulusMPa(MaterialOf(cutter)), 1.2).Load;
    }

    /// <summary>Torque that snaps a tap.</summary>
    /// <param name="cutter">The tap.</param>
    /// <returns>N m.</returns>
    public static double TapBreaksNm(Cutter cutter) =>
        Math.PI * Math.Pow(TapCore * cutter.Across, 3) / 16 * CutterStrength.BreakingMPa(MaterialOf(cutter)) / 2 / 1000;

    private static bool IsStepped(Cutter cutter) => cutter.Shank > cutter.TrueAcross * 1.1 && cutter.Flute > 0 && cutter.Flute < cutter.Out;

    private static bool IsSlender(Cutter cutter) => cutter.Out > 0 && cutter.Kind is CutterKind.EndMill or CutterKind.Ball or CutterKind.BullNose;
}
