namespace Handwheel.Trade.Metals;

/// <summary>Every metal known, and finding one by what it is called.</summary>
public static class MetalTable
{
    /// <summary>The basis of strengths, density and modulus.</summary>
    public static Basis PropertiesBasis { get; } = new("typical handbook figures for the usual condition (a certificate or a test comes first)", Evidence.Memory);

    /// <summary>The basis of the cutting constants.</summary>
    public static Basis ForceBasis { get; } = new("Kienzle constants as tabulated in German handbooks (Dubbel; Degner, Lutze, Smejkal)", Evidence.Memory);

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
        return Index.GetValueOrDefault(Key(name));
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
