namespace Handwheel.Trade.Metals;

/// <summary>Every metal known, and finding one by what it is called.</summary>
public static class MetalTable
{
    private static readonly Basis DensityRead = new("Shigley Table A-5 and Hibbeler's material tables, by family (within 3 %)", Evidence.HandbookTable);
    private static readonly Basis ForceRead = new("kc tabulated by feed in a chuck maker's manual (RN 1391 Table 2, 45 degrees) and kc1.1 by group of VDI 3323, which these constants meet within 6 %", Evidence.HandbookTable);

    // Metals whose density and modulus a published table of families bears out within 3 and 5 %.
    private static readonly HashSet<string> DensityOf = new(StringComparer.Ordinal)
    {
        "mild steel", "free-cutting steel", "c15 steel", "case-hardening steel", "medium-carbon steel", "high-carbon steel", "e295 steel", "e335 steel", "alloy steel", "nickel alloy steel",
        "stainless 304", "stainless 303", "aluminium 6061", "aluminium 2024", "copper", "magnesium az31", "titanium 6al-4v", "beryllium copper", "nickel silver", "monel",
    };

    // Metals whose Kienzle constants a published table bears out within 6 % from 0.1 to 1.1 mm of chip.
    private static readonly HashSet<string> ForceOf = new(StringComparer.Ordinal)
    {
        "mild steel", "e295 steel", "e335 steel", "medium-carbon steel", "case-hardening nickel steel", "alloy steel", "case-hardening steel", "manganese steel", "cast steel",
        "cast steel GS-52", "grey cast iron", "aluminium 6061", "aluminium 5083",
    };

    /// <summary>The basis of strengths, expansion, and of density and modulus where <see cref="DensityBasisOf"/> has none firmer.</summary>
    public static Basis PropertiesBasis { get; } = new("typical handbook figures for the usual condition; a certificate or a test comes first (nobody confirmed this value)", Evidence.Memory);

    /// <summary>What a metal's density and modulus rest on.</summary>
    /// <param name="metal">The metal.</param>
    /// <returns>A table of families, or memory.</returns>
    public static Basis DensityBasisOf(Metal metal) => DensityOf.Contains(Required(metal).Name) ? DensityRead : PropertiesBasis;

    /// <summary>What a metal's cutting constants rest on.</summary>
    /// <param name="metal">The metal.</param>
    /// <returns>A table, or memory.</returns>
    public static Basis ForceBasisOf(Metal metal) =>
        ForceOf.Contains(Required(metal).Name) ? ForceRead : new("Kienzle constants as in German handbooks (nobody confirmed this value)", Evidence.Memory);

    /// <summary>How wide a metal's cutting constants may be off.</summary>
    /// <param name="metal">The metal.</param>
    /// <returns>Words: a quarter where a table bears them out, else 40 %.</returns>
    public static string ForceSpread(Metal metal) => ForceOf.Contains(Required(metal).Name) ? "25 %" : "40 %";

    private static Metal Required(Metal metal)
    {
        ArgumentNullException.ThrowIfNull(metal);
        return metal;
    }

    /// <summary>Every metal.</summary>
    public static IReadOnlyList<Metal> All { get; } = [.. Steels.Rows, .. IronsAndLightMetals.Rows, .. CopperAlloysAndPlastics.Rows];

    private static readonly Dictionary<string, Metal> Index = BuildIndex();

    /// <summary>Every name a metal may be asked for by, lower case, with what it means.</summary>
    public static IReadOnlyCollection<string> Names => Index.Keys;

    /// <summary>Finds a metal by a name, whatever its case, spacing and hyphens.</summary>
    /// <param name="name">What it is called: <c>6061</c>, <c>mild steel</c>, <c>brass, free-cutting</c>.</param>
    /// <returns>The metal, or null.</returns>
    public static Metal? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var key = Key(name);
        return key.Length == 0 ? null : Index.GetValueOrDefault(key);
    }

    /// <summary>Finds a metal by what a stock label says: kind first and then which, told apart by commas.</summary>
    /// <param name="said">What it says: <c>aluminium, 6082</c>, <c>steel, free-cutting</c>, <c>6061</c>.</param>
    /// <returns>The metal of the whole name, of the name turned round, of its narrowest part that is known; null where nothing of it is.</returns>
    public static Metal? FindSaid(string said)
    {
        ArgumentNullException.ThrowIfNull(said);
        var parts = said.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return Find(said)
            ?? Find(string.Join(' ', parts.Reverse()))
            ?? parts.Skip(1).Select(Find).FirstOrDefault(m => m is not null)
            ?? (parts.Length > 1 ? Find(parts[0]) : null);
    }

    /// <summary>A name as it is looked up: lower case, letters and digits only.</summary>
    /// <param name="name">Name.</param>
    /// <returns>Key.</returns>
    internal static string Key(string name) => new([.. name.ToLowerInvariant().Where(char.IsLetterOrDigit)]);

    private static Dictionary<string, Metal> BuildIndex()
    {
        var index = new Dictionary<string, Metal>(StringComparer.Ordinal);
        foreach (var metal in All)
        {
            index.TryAdd(Key(metal.Name), metal);
        }

        foreach (var metal in All)
        {
            foreach (var name in metal.AlsoCalled)
            {
                index.TryAdd(Key(name), metal);
            }
        }

        return index;
    }
}
