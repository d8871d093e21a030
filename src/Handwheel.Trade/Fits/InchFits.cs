namespace Handwheel.Trade.Fits;

/// <summary>Preferred inch fits RC, LC, LT, LN, FN for sizes to 19.69 in.</summary>
/// <remarks>
/// ANSI/ASME B4.1-1967: RC, LT, LN and FN held against Machinery's Handbook 31st ed. Tables 8a, 8b, 10, 11 and 12 (FN to 3.94 in 27th ed. Table 11), LC6 to
/// LC11 to 1.97 in against a published copy. FN from 3.94 to 4.73 in and LC5 to LC11 over 1.97 in are remembered. Limits are the table's, exact.
/// </remarks>
public static class InchFits
{
    private static readonly Basis Remembered = new("ANSI/ASME B4.1-1967 (nobody confirmed this value)", Evidence.Memory);

    /// <summary>The basis of the tables; <see cref="BasisOf"/> knows where memory stands in.</summary>
    public static Basis Basis { get; } = new("ANSI/ASME B4.1-1967 (Machinery's Handbook 31st ed. Tables 8 to 12)", Evidence.HandbookTable);

    /// <summary>What the limits of a class rest on.</summary>
    /// <param name="nominalIn">Nominal size, in.</param>
    /// <param name="className">Class, e.g. <c>LC6</c>.</param>
    /// <returns>The table, or memory.</returns>
    public static Basis BasisOf(double nominalIn, string className)
    {
        ArgumentNullException.ThrowIfNull(className);
        var name = className.ToUpperInvariant();
        var remembered = (name.StartsWith("FN", StringComparison.Ordinal) && nominalIn is > 3.94 and <= 4.73)
            || (nominalIn > 1.97 && (name is "LC5" or "LC6" or "LC7" or "LC8" or "LC9" or "LC10" or "LC11"));
        return remembered ? Remembered : Basis;
    }

    /// <summary>Every class of fit.</summary>
    public static IReadOnlyList<string> Classes { get; } =
    [
        "RC1", "RC2", "RC3", "RC4", "RC5", "RC6", "RC7", "RC8", "RC9",
        "LC1", "LC2", "LC3", "LC4", "LC5", "LC6", "LC7", "LC8", "LC9", "LC10", "LC11",
        "LT1", "LT2", "LT3", "LT4", "LT5", "LT6", "LN1", "LN2", "LN3", "FN1", "FN2", "FN3", "FN4", "FN5",
    ];

    /// <summary>The limits of a fit.</summary>
    /// <param name="nominalIn">Nominal size, in, over 0 to 19.69.</param>
    /// <param name="className">RC1 to FN5; case, spaces and hyphens do not matter.</param>
    /// <param name="fit">The fit, in millimetres.</param>
    /// <param name="reason">Why there is none.</param>
    /// <returns>Whether the standard gives it.</returns>
    public static bool TryOf(double nominalIn, string className, out Fit fit, out string reason)
    {
        ArgumentNullException.ThrowIfNull(className);
        fit = default;
        var name = new string([.. className.ToUpperInvariant().Where(char.IsAsciiLetterOrDigit)]);
        if (!Classes.Contains(name, StringComparer.Ordinal))
        {
            reason = $"'{className}' is no class of inch fit; they are RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3, FN1 to FN5";
            return false;
        }

        if (nominalIn is not (> 0 and <= 19.69))
        {
            reason = "these tables cover sizes over 0 up to 19.69 in";
            return false;
        }

        var (hole, upper, lower) = InchFitTable.Thousandths(name, nominalIn);
        if (double.IsNaN(upper))
        {
            reason = $"the standard gives no {name} at this size";
            return false;
        }

        const double Mm = 0.0254;
        fit = new Fit(nominalIn * 25.4, new Deviations(hole * Mm, 0), new Deviations(upper * Mm, lower * Mm));
        reason = string.Empty;
        return true;
    }

    /// <summary>What a class of fit is for, in a few words.</summary>
    /// <param name="className">Class.</param>
    /// <returns>Words.</returns>
    public static string Meaning(string className)
    {
        ArgumentNullException.ThrowIfNull(className);
        return className.ToUpperInvariant() switch
        {
            "RC1" => "close sliding: no play that can be felt",
            "RC2" => "sliding: moves easily, not for running",
            "RC3" => "precision running: slow, cool, light load",
            "RC4" => "close running: accurate machinery, moderate speed",
            "RC5" or "RC6" => "medium running: higher speed or heavy load",
            "RC7" => "free running: accuracy not essential, or warm",
            "RC8" or "RC9" => "loose running: commercial tolerances",
            _ when className.StartsWith("LC", StringComparison.OrdinalIgnoreCase) => "locating, goes together free: snug at LC1 to loose at LC11",
            _ when className.StartsWith("LT", StringComparison.OrdinalIgnoreCase) => "locating, may be slightly loose or slightly tight",
            _ when className.StartsWith("LN", StringComparison.OrdinalIgnoreCase) => "locating, always tight; not for carrying load by its grip",
            "FN1" => "light drive: thin sections, long fits, cast iron",
            "FN2" => "medium drive: ordinary steel parts",
            "FN3" => "heavy drive: heavier steel parts",
            _ => "force: highly stressed, or shrunk on",
        };
    }
}
