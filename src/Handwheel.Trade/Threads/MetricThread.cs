using System.Globalization;

namespace Handwheel.Trade.Threads;

/// <summary>A metric thread of the ISO profile.</summary>
/// <param name="DiameterMm">Nominal diameter, mm.</param>
/// <param name="PitchMm">Pitch, mm.</param>
public sealed record MetricThread(double DiameterMm, double PitchMm)
{
    /// <summary>The basis of the basic sizes.</summary>
    public static Basis BasicsBasis { get; } = new("ISO 68-1, ISO 724; stress area ISO 898-1", Evidence.StandardFormula);

    private static readonly Basis Tabulated = new("ISO 965-1 tolerance tables (Machinery's Handbook 31st ed. p. 2025 Tables 10, 11; ASME B1.13M)", Evidence.HandbookTable);
    private static readonly Basis Worked = new("ISO 965-1 formulas, rounded to R40 (the standard tabulates no such diameter and pitch)", Evidence.StandardFormula);

    /// <summary>The basis of the limits: the tolerance tables where they have this diameter and pitch, else the formulas behind them.</summary>
    public Basis LimitsBasis => MetricTolerances.Tabulates(DiameterMm, PitchMm) ? Tabulated : Worked;

    /// <summary>The name, e.g. <c>M6x1</c>.</summary>
    public string Name => string.Create(CultureInfo.InvariantCulture, $"M{DiameterMm}x{PitchMm}");

    /// <summary>Basic sizes, mm and mm^2. Stress area pi/4 ((d2 + d3)/2)^2.</summary>
    public ThreadBasics Basics
    {
        get
        {
            var pitch = DiameterMm - (0.64951905 * PitchMm);
            var root = DiameterMm - (1.22686932 * PitchMm);
            return new ThreadBasics(DiameterMm, pitch, DiameterMm - (1.08253175 * PitchMm), root, Math.PI / 4 * Math.Pow((pitch + root) / 2, 2));
        }
    }

    /// <summary>Limits of a class, mm, rounded to 0.001.</summary>
    /// <param name="className">External: grade and e, f, g or h (<c>6g</c>, <c>5g6g</c> pitch then major); internal: grade and G or H (<c>6H</c>, <c>5H6H</c> pitch then minor).</param>
    /// <returns>Limits.</returns>
    /// <exception cref="ArgumentException">The class is not one of the standard at this pitch.</exception>
    public ThreadLimits Limits(string className)
    {
        if (!MetricClass.TryRead(className, out var read))
        {
            throw new ArgumentException($"'{className}' is no class of a metric thread; examples are 6g (screw) and 6H (nut)", nameof(className));
        }

        var limits = read.External ? External(className, read) : Internal(className, read);
        return double.IsNaN(limits.PitchMin) || double.IsNaN(limits.MinorMax) || (read.External && double.IsNaN(limits.MajorMin))
            ? throw new ArgumentException($"the standard gives no class {className} for {Name}{Written(read.External, className)}", nameof(className))
            : limits;
    }

    // Major diameters of screws have grades 4, 6 and 8 only.
    private static string Written(bool external, string name) => external && name.Length == 2
        ? name[0] switch { '3' => $"; it is written 3{name[1..]}4{name[1..]}", '5' or '7' => $"; it is written {name}6{name[1..]}", '9' => $"; it is written 9{name[1..]}8{name[1..]}", _ => string.Empty }
        : string.Empty;

    private ThreadLimits External(string name, MetricClass read)
    {
        var allowance = MetricTolerances.Allowance(read.Position, PitchMm) / 1000;
        var b = Basics;
        var major = b.Major - allowance;
        var pitch = Round(b.Pitch) - allowance;
        return new ThreadLimits(
            name,
            true,
            allowance,
            Round(major),
            Round(major - (MetricTolerances.Major(read.CrestGrade, PitchMm) / 1000)),
            Round(pitch),
            Round(pitch - (MetricTolerances.PitchExternal(read.PitchGrade, DiameterMm, PitchMm) / 1000)),
            Round(b.MinorInternal - allowance),
            double.NaN);
    }

    private ThreadLimits Internal(string name, MetricClass read)
    {
        var allowance = MetricTolerances.Allowance(read.Position, PitchMm) / 1000;
        var b = Basics;
        var pitch = Round(b.Pitch) + allowance;
        var minor = Round(b.MinorInternal) + allowance;
        return new ThreadLimits(
            name,
            false,
            allowance,
            double.NaN,
            Round(b.Major + allowance),
            Round(pitch + (MetricTolerances.PitchInternal(read.PitchGrade, DiameterMm, PitchMm) / 1000)),
            Round(pitch),
            Round(minor + (MetricTolerances.Minor(read.CrestGrade, PitchMm) / 1000)),
            Round(minor));
    }

    private static double Round(double value) =>
        double.IsNaN(value) ? value : (double)Math.Round((decimal)value, 3, MidpointRounding.AwayFromZero);
}
