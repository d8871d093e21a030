using Handwheel.Jobs.Findings;
using Handwheel.Trade.Fits;

namespace Handwheel.Jobs.Reading;

// Works a value and its limits out, lengths in millimetres, angles in degrees.
internal sealed class LimitsWorker(Evaluator evaluator, FindingBag bag)
{
    // Null, with a finding made, where they cannot be.
    public ExactLimits? Work(TypedNumber value, LimitsDraft limits, bool angle)
    {
        var nominal = Value(value, angle, null);
        return nominal is null ? null : limits.Form switch
        {
            LimitsForm.Fit => Fit(nominal.Value, limits, angle),
            LimitsForm.AtMost => new ExactLimits(nominal.Value, Exact.Zero, nominal.Value),
            LimitsForm.Range => Range(nominal.Value, value, limits, angle),
            _ => Deviations(value, limits, angle) is { } deviations ? ExactLimits.Around(nominal.Value, deviations) : null,
        };
    }

    // The deviations of 'others' and of sizes: bare ones take the unit typed with the value.
    public ExactLimits? Deviations(TypedNumber? value, LimitsDraft limits, bool angle)
    {
        if (limits.First is null || Value(limits.First, angle, value?.Unit) is not { } first)
        {
            return null;
        }

        if (limits.Form == LimitsForm.Around)
        {
            return Ordered(limits, -first, first);
        }

        if (limits.Second is null || Value(limits.Second, angle, value?.Unit) is not { } second)
        {
            return null;
        }

        return first.ToDouble() < second.ToDouble() ? Ordered(limits, first, second) : Ordered(limits, second, first);
    }

    private ExactLimits? Ordered(LimitsDraft limits, Exact lower, Exact upper)
    {
        if (upper.ToDouble() > lower.ToDouble())
        {
            return new ExactLimits(Exact.Zero, lower, upper);
        }

        bag.Add(FindingCatalogue.LimitsWrong(limits.Where, "These limits leave no room: nothing made by hand comes out to nought.", "Write what the drawing allows, such as '+/-0.05' or '+0 -0.05'."));
        return null;
    }

    private ExactLimits? Range(Exact least, TypedNumber value, LimitsDraft limits, bool angle)
    {
        if (limits.Second is null || Value(limits.Second, angle, value.Unit) is not { } most)
        {
            return null;
        }

        if (value.Unit is null && limits.Second.Unit is { } shared && Value(value, angle, shared) is { } inUnit)
        {
            least = inUnit;
        }

        if (most.ToDouble() > least.ToDouble())
        {
            return new ExactLimits((least + most) / Exact.Ratio(2, 1), least, most);
        }

        bag.Add(FindingCatalogue.LimitsWrong(limits.Where, "The greatest value allowed is not above the least.", "Write the least first: '9.95 to 10'."));
        return null;
    }

    private ExactLimits? Fit(Exact nominal, LimitsDraft limits, bool angle)
    {
        var reason = "a fit is of a length";
        if (!angle && Iso286.TryLimits(nominal.ToDouble(), limits.Zone ?? string.Empty, out var fit, out reason))
        {
            return ExactLimits.Around(nominal, new ExactLimits(Exact.Zero, Micrometres(fit.LowerMm), Micrometres(fit.UpperMm)));
        }

        bag.Add(FindingCatalogue.LimitsWrong(limits.Where, $"There are no limits {limits.Zone} here: {reason}.", "Write a class of ISO 286 (H7, g6), or the limits themselves."));
        return null;
    }

    private static Exact Micrometres(double millimetres) => Exact.Ratio((long)Math.Round(millimetres * 10_000_000), 10_000_000);

    private Exact? Value(TypedNumber number, bool angle, string? bareUnit) => angle ? evaluator.Angle(number) : evaluator.Length(number, bareUnit);
}
