using Handwheel.Trade.Metals;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Metals.</summary>
internal static class MetalTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var metal = q.TakeMetal();
        if (metal is null && ByHazard(q, r))
        {
            return;
        }

        if (metal is null)
        {
            var left = q.Left();
            var word = left.Count > 0 ? left[0] : string.Empty;
            throw new UnansweredException(word.Length == 0 ? "the metal is missing" : $"no metal is known as '{word}'") { Nearest = Nearness.Nearest(word.ToLowerInvariant(), MetalTable.All.SelectMany(m => m.AlsoCalled.Append(m.Name)), 5) };
        }

        BarWeight.Add(q, r, metal);
        Growth.Add(q, r, metal);
        var b = MetalTable.PropertiesBasis;
        r.Say("metal", metal.Name, b).Say("also called", string.Join(", ", metal.AlsoCalled.Take(12)), b)
            .Add("tensile strength", metal.TensileMPa, "MPa", b, "15 %, more with condition", []);
        if (!double.IsNaN(metal.YieldMPa))
        {
            r.Add("yield strength", metal.YieldMPa, "MPa", b, "25 %, more with condition", []);
        }

        r.Add("shear strength", metal.ShearMPa, "MPa", b, "25 %", [$"{N(metal.ShearShare)} x tensile"])
            .Add("modulus of elasticity", metal.ModulusGPa, "GPa", MetalTable.DensityBasisOf(metal), "5 %", [])
            .Add("density", metal.Density, "kg/m^3", MetalTable.DensityBasisOf(metal), "2 %", [])
            .Add("expansion", metal.Expansion, "um/m K", b, "5 %", [])
            .Add("specific cutting force kc1.1", metal.Kc11, "MPa", MetalTable.ForceBasisOf(metal), MetalTable.ForceSpread(metal), ["N/mm^2 at a chip of 1 x 1 mm; kc = kc1.1 h^-mc"])
            .Add("exponent mc", metal.Mc, string.Empty, MetalTable.ForceBasisOf(metal), MetalTable.ForceSpread(metal), []);
        foreach (var (operation, name) in new[] { (Operation.Mill, "milling"), (Operation.Drill, "drilling"), (Operation.TurnRough, "rough turning"), (Operation.TurnFinish, "finish turning") })
        {
            foreach (var (cutter, word) in new[] { (CutterMaterial.HighSpeedSteel, "high-speed steel"), (CutterMaterial.Carbide, "carbide") })
            {
                var (range, basis) = SpeedTable.Of(metal, operation, cutter);
                r.Add($"{name}, {word}, low", range.LowMPerMin, "m/min", basis, "30 %", []).Add($"{name}, {word}, high", range.HighMPerMin, "m/min", basis, "30 %", []);
            }
        }

        if (q.TakeMetal(false) is { } other && other.Name != metal.Name)
        {
            Beside(r, other);
        }

        foreach (var caution in metal.Cautions)
        {
            r.Caution(caution);
        }

        r.Note("Typical of the usual condition; a certificate or a test comes first.");
    }

    // "brass vs steel": the second metal's main figures.
    private static void Beside(ReplyBuilder r, Metal m)
    {
        var b = MetalTable.PropertiesBasis;
        r.Add($"{m.Name}: tensile strength", m.TensileMPa, "MPa", b, "15 %, more with condition", [])
            .Add($"{m.Name}: modulus of elasticity", m.ModulusGPa, "GPa", MetalTable.DensityBasisOf(m), "5 %", [])
            .Add($"{m.Name}: density", m.Density, "kg/m^3", MetalTable.DensityBasisOf(m), "2 %", [])
            .Add($"{m.Name}: expansion", m.Expansion, "um/m K", b, "5 %", [])
            .Add($"{m.Name}: specific cutting force kc1.1", m.Kc11, "MPa", MetalTable.ForceBasisOf(m), MetalTable.ForceSpread(m), []);
        if (!double.IsNaN(m.YieldMPa))
        {
            r.Add($"{m.Name}: yield strength", m.YieldMPa, "MPa", b, "25 %, more with condition", []);
        }
    }

    // "which metals are poisonous": every metal whose cautions say so.
    private static bool ByHazard(Question q, ReplyBuilder r)
    {
        (string[] Asked, string[] Said)[] hazards =
        [
            (["poison", "poisonous", "toxic", "poisons"], ["Poison", "lead:", "lung disease", "hurts the lungs", "harm", "poisonous"]), (["fire", "burn", "burns", "burning", "flammable", "ignite"], ["dust burn"]),
            (["grab", "grabs", "grabby"], ["Grab", "grab"]), (["harden", "hardens", "hardening", "workharden"], ["Hardens"]), (["dust", "lungs"], ["ust and fume", "Dust"]),
        ];
        foreach (var (asked, said) in hazards)
        {
            if (!q.Has(asked))
            {
                continue;
            }

            q.Has("metals", "materials", "metal", "material");
            foreach (var metal in MetalTable.All)
            {
                if (metal.Cautions.FirstOrDefault(c => said.Any(w => c.Contains(w, StringComparison.Ordinal))) is { } caution)
                {
                    r.Say(metal.Name, caution, new Basis("facts of the trade", Evidence.CommonPractice));
                }
            }

            return true;
        }

        return false;
    }
}
