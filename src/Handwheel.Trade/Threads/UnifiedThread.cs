using System.Globalization;

namespace Handwheel.Trade.Threads;

/// <summary>A Unified inch thread (ASME B1.1).</summary>
/// <param name="SizeName">Size as spoken: <c>#10</c>, <c>1/4</c>, <c>1 1/8</c>.</param>
/// <param name="MajorIn">Basic major diameter, in.</param>
/// <param name="Tpi">Threads per inch.</param>
/// <param name="Series">UNC, UNF, UNEF, UN (constant pitch) or UNS (special).</param>
public sealed record UnifiedThread(string SizeName, double MajorIn, double Tpi, string Series)
{
    /// <summary>The basis of the limits.</summary>
    public static Basis LimitsBasis { get; } = new("ASME B1.1 section 5 formulas, rounded by ASME B1.30", Evidence.StandardFormula);

    /// <summary>The whole name, e.g. <c>#10-32 UNF</c>.</summary>
    public string Name => string.Create(CultureInfo.InvariantCulture, $"{SizeName}-{Tpi} {Series}");

    /// <summary>Pitch, in.</summary>
    public double PitchIn => 1 / Tpi;

    /// <summary>
    /// Length of engagement that the pitch tolerance is based on, in: the diameter for UNC, UNF, 4, 6, 8 UN and for 1-14 UNS, which was a fine
    /// thread once and kept its tolerances (that exception is from memory), else nine pitches.
    /// </summary>
    public double EngagementIn => Series is "UNC" or "UNF" || OnceFine || (Series == "UN" && (Tpi is 4 or 6 or 8)) ? MajorIn : 9 * PitchIn;

    /// <summary>The basis of this thread's limits: the standard's formulas, but for 1-14 UNS, whose length of engagement is remembered.</summary>
    public Basis OwnLimitsBasis => OnceFine ? OnceFineBasis : LimitsBasis;

    private static Basis OnceFineBasis { get; } = new("ASME B1.1 formulas; 1-14 UNS, once NF, on one diameter of engagement (nobody confirmed that footnote)", Evidence.Memory);

    private bool OnceFine => Series == "UNS" && MajorIn == 1 && Tpi == 14;

    /// <summary>Basic sizes, in and in^2. Stress area 0.7854 (D - 0.9743/n)^2.</summary>
    public ThreadBasics Basics => new(
        MajorIn,
        MajorIn - (0.64951905 / Tpi),
        MajorIn - (1.08253175 / Tpi),
        MajorIn - (1.19078493 / Tpi),
        Math.PI / 4 * Math.Pow(MajorIn - (0.9743 / Tpi), 2));

    /// <summary>Limits of a class, inches, each term rounded to 0.0001 before it is added, as the standard's tables are.</summary>
    /// <param name="className">1A, 2A, 3A, 1B, 2B or 3B.</param>
    /// <returns>Limits.</returns>
    /// <exception cref="ArgumentException">The class is none of the six.</exception>
    public ThreadLimits Limits(string className) => className switch
    {
        "1A" => External("1A", 1.5, 0.09, true),
        "2A" => External("2A", 1, 0.06, true),
        "3A" => External("3A", 0.75, 0.06, false),
        "1B" => Internal("1B", 1.95),
        "2B" => Internal("2B", 1.3),
        "3B" => Internal("3B", 0.975),
        _ => throw new ArgumentException($"'{className}' is no class of a Unified thread; they are 1A 2A 3A (screw) and 1B 2B 3B (nut)", nameof(className)),
    };

    /// <summary>Pitch diameter tolerance of class 2A before rounding, in: 0.0015 D^(1/3) + 0.0015 LE^(1/2) + 0.015 P^(2/3).</summary>
    /// <returns>Tolerance, in.</returns>
    public double PitchToleranceIn() =>
        (0.0015 * Math.Cbrt(MajorIn)) + (0.0015 * Math.Sqrt(EngagementIn)) + (0.015 * Math.Pow(PitchIn, 2.0 / 3));

    private ThreadLimits External(string name, double pitchFactor, double majorFactor, bool allowed)
    {
        var allowance = allowed ? Round(0.3 * PitchToleranceIn(), 4) : 0;
        var major = Round(MajorIn, 4) - allowance;
        var pitch = Round(Basics.Pitch, 4) - allowance;
        return new ThreadLimits(
            name,
            true,
            allowance,
            Round(major, 4),
            Round(major - Round(majorFactor * Math.Pow(PitchIn, 2.0 / 3), 4), 4),
            Round(pitch, 4),
            Round(pitch - Round(pitchFactor * PitchToleranceIn(), 4), 4),
            Round(Round(Basics.MinorExternal, 4) - allowance, 4),
            double.NaN);
    }

    private ThreadLimits Internal(string name, double pitchFactor)
    {
        var pitch = Round(Basics.Pitch, 4);
        var three = name == "3B";
        var minor = Basics.MinorInternal;
        var decimals = MajorIn >= 0.138 ? 3 : 4;
        return new ThreadLimits(
            name,
            false,
            0,
            double.NaN,
            Round(MajorIn, 4),
            Round(pitch + Round(pitchFactor * PitchToleranceIn(), 4), 4),
            pitch,
            three ? Round(Round(minor, 4) + Round(MinorTolerance(true), 4), 4) : Round(minor + MinorTolerance(false), decimals),
            Round(minor, decimals));
    }

    private double MinorTolerance(bool three)
    {
        var p = PitchIn;
        var general = (0.05 * Math.Pow(p, 2.0 / 3)) + (0.03 * p / MajorIn) - 0.002;
        if (three)
        {
            return Math.Min(Math.Max(general, Tpi >= 13 ? (0.23 * p) - (1.5 * p * p) : 0.12 * p), 0.394 * p);
        }

        if (MajorIn < 0.25)
        {
            return Math.Min(Math.Max(general, (0.25 * p) - (0.4 * p * p)), 0.394 * p);
        }

        return Tpi >= 4 ? (0.25 * p) - (0.4 * p * p) : 0.15 * p;
    }

    private static double Round(double value, int decimals) => (double)Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero);
}
