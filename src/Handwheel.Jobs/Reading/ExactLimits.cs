using Handwheel.Quantities;

namespace Handwheel.Jobs.Reading;

/// <summary>Limits worked out without loss.</summary>
/// <param name="Nominal">The value written.</param>
/// <param name="Lower">The least.</param>
/// <param name="Upper">The greatest.</param>
internal readonly record struct ExactLimits(Exact Nominal, Exact Lower, Exact Upper)
{
    /// <summary>The middle, aimed at.</summary>
    public Exact Middle => (Lower + Upper) / Exact.Ratio(2, 1);

    public static ExactLimits Around(Exact nominal, ExactLimits deviations) => new(nominal, nominal + deviations.Lower, nominal + deviations.Upper);

    public static ExactLimits Only(Exact nominal) => new(nominal, nominal, nominal);

    public Limits ToLimits() => new(Nominal.ToDouble(), Lower.ToDouble(), Upper.ToDouble());

    // Angles: degrees to radians.
    public Limits ToRadians() => new(Radians(Nominal), Radians(Lower), Radians(Upper));

    private static double Radians(Exact degrees) => degrees.ToDouble() * Math.PI / 180;
}
