namespace Handwheel.Trade.Asking;

/// <summary>Units as they are read and as they stand side by side.</summary>
internal static class Units
{
    // Metric unit, inch unit, how many of the metric one make one of the inch one.
    private static readonly (string Metric, string Inch, double Factor)[] Twins =
    [
        ("mm", "in", 25.4), ("um", "thou", 25.4), ("mm^2", "in^2", 645.16), ("cm^3", "in^3", 16.387064), ("mm^3", "in^3", 16387.064), ("N", "lbf", 4.4482216152605),
        ("N m", "lbf in", 0.1129848290276), ("MPa", "psi", 0.006894757293168), ("GPa", "Mpsi", 6.894757293168), ("kW", "hp", 0.74569987158227),
        ("m/min", "ft/min", 0.3048), ("mm/min", "in/min", 25.4), ("mm/rev", "in/rev", 25.4), ("mm/tooth", "in/tooth", 25.4), ("cm^3/min", "in^3/min", 16.387064),
        ("kg/m^3", "lb/in^3", 27679.904710191), ("kg", "lb", 0.45359237), ("N/mm", "lbf/in", 0.1751268),
    ];

    private static readonly Dictionary<string, string> Spelled = new(StringComparer.Ordinal)
    {
        ["mm"] = "mm", ["millimetre"] = "mm", ["millimetres"] = "mm", ["millimeter"] = "mm", ["millimeters"] = "mm", ["thou"] = "thou", ["thousandths"] = "thou", ["mil"] = "thou",
        ["in"] = "in", ["inch"] = "in", ["inches"] = "in", ["\""] = "in", ["ins"] = "in", ["cm"] = "cm", ["um"] = "um", ["µm"] = "um", ["μm"] = "um", ["micron"] = "um", ["microns"] = "um",
        ["m"] = "m", ["ft"] = "ft", ["deg"] = "deg", ["degree"] = "deg", ["degrees"] = "deg", ["min"] = "min", ["mins"] = "min", ["minutes"] = "min", ["sec"] = "sec", ["seconds"] = "sec",
        ["rpm"] = "rpm", ["revs"] = "rpm", ["rev/min"] = "rpm", ["n"] = "N", ["newton"] = "N", ["newtons"] = "N", ["kn"] = "kN", ["lbf"] = "lbf", ["lb"] = "lbf", ["lbs"] = "lbf", ["pound"] = "lbf", ["pounds"] = "lbf",
        ["kg"] = "kgf", ["kgf"] = "kgf", ["nm"] = "N m", ["n-m"] = "N m", ["ft-lb"] = "ft lbf", ["ftlb"] = "ft lbf", ["ft-lbs"] = "ft lbf", ["in-lb"] = "lbf in", ["inlb"] = "lbf in", ["in-lbs"] = "lbf in",
        ["mpa"] = "MPa", ["n/mm2"] = "MPa", ["psi"] = "psi", ["ksi"] = "ksi", ["gpa"] = "GPa", ["%"] = "%", ["percent"] = "%", ["pct"] = "%", ["tpi"] = "tpi", ["m/min"] = "m/min",
        ["sfm"] = "ft/min", ["fpm"] = "ft/min", ["ft/min"] = "ft/min", ["mm/min"] = "mm/min", ["ipm"] = "in/min", ["ipr"] = "in/rev", ["mm/rev"] = "mm/rev", ["kw"] = "kW", ["hp"] = "hp",
        ["flutes"] = "teeth", ["flute"] = "teeth", ["fl"] = "teeth", ["teeth"] = "teeth", ["tooth"] = "teeth", ["t"] = "teeth",
    };

    /// <summary>The unit a word stands for.</summary>
    /// <param name="word">Word, lower case.</param>
    /// <returns>The unit, or null.</returns>
    internal static string? Of(string word) => Spelled.GetValueOrDefault(word);

    /// <summary>Whether a unit is a length.</summary>
    /// <param name="unit">Unit.</param>
    /// <returns>True for mm, in, thou, cm, m, ft, um.</returns>
    internal static bool IsLength(string unit) => unit is "mm" or "in" or "thou" or "cm" or "m" or "ft" or "um";

    /// <summary>A length in millimetres.</summary>
    /// <param name="value">Number.</param>
    /// <param name="unit">Length unit.</param>
    /// <returns>mm.</returns>
    internal static double ToMm(double value, string unit) => unit switch
    {
        "in" => value * 25.4,
        "thou" => value * 0.0254,
        "cm" => value * 10,
        "m" => value * 1000,
        "ft" => value * 304.8,
        "um" => value / 1000,
        _ => value,
    };

    /// <summary>A force in newtons, a torque in newton metres, a stress in megapascals, a speed in m/min.</summary>
    /// <param name="value">Number.</param>
    /// <param name="unit">Unit.</param>
    /// <returns>Metric.</returns>
    internal static double ToMetric(double value, string unit) => unit switch
    {
        "kN" => value * 1000,
        "lbf" => value * 4.4482216152605,
        "kgf" => value * 9.80665,
        "ft lbf" => value * 1.3558179483314,
        "lbf in" => value * 0.1129848290276,
        "psi" => value * 0.006894757293168,
        "ksi" => value * 6.894757293168,
        "GPa" => value * 1000,
        "ft/min" => value * 0.3048,
        "hp" => value * 0.74569987158227,
        _ => value,
    };

    /// <summary>A measure in both worlds.</summary>
    /// <param name="value">Number.</param>
    /// <param name="unit">Unit.</param>
    /// <returns>Metric and inch, or null where the unit belongs to neither.</returns>
    internal static (Measure Metric, Measure Inch)? Both(double value, string unit)
    {
        foreach (var (metric, inch, factor) in Twins)
        {
            if (unit == metric)
            {
                return (new Measure(value, metric), new Measure(value / factor, inch));
            }

            if (unit == inch)
            {
                return (new Measure(value * factor, metric), new Measure(value, inch));
            }
        }

        return null;
    }
}
