using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Trade.Fits;

namespace Handwheel.Jobs.Reading;

// Reads the sizes that a design's line names: one of the drawing, and what goes in it or on it.
internal sealed class DesignSizes(FindingBag bag, FeatureNames names, NumberReader numbers, DrawingWorker worker)
{
    // A feature and which of its sizes: its across (a slot's width) unless told.
    public (FeatureDraft Feature, string Name, Limits Limits, bool IsHole)? Sized(Cursor c)
    {
        var where = c.Here;
        if (names.Take(c) is not { } feature)
        {
            return null;
        }

        var measure = Measures.TakeInSum(c, feature);
        if (!feature.Broken && !(DrawingWorker.Has(feature, measure) && !Measures.IsPlace(measure) && !Measures.IsEnd(measure)))
        {
            c.Fail(FindingCatalogue.NotThere(where, $"'{feature.Name}' has no '{Measures.Name(measure, feature.IsCut)}' to fit anything to.", $"It has: {string.Join(", ", Measures.Of(feature.Shape).Select(m => Measures.Name(m, feature.IsCut)))}."));
            return null;
        }

        if (worker.LimitsOf(feature, measure, where) is { } limits)
        {
            return (feature, $"{feature.Name} {Measures.Name(measure, feature.IsCut)}", limits.ToLimits(), feature.IsCut != (measure == Measure.Bore));
        }

        c.Quiet();
        return null;
    }

    // What goes in or on it: a feature's size, or words, a number and its limits.
    public (string Text, Limits Limits)? Counter(Cursor c, bool isHole)
    {
        var (start, where) = (c.At, c.Here);
        if (names.Length(c) > 0)
        {
            if (Sized(c) is not { } other)
            {
                return null;
            }

            if (other.IsHole == isHole)
            {
                c.Fail(FindingCatalogue.NotThere(where, $"Both are {(isHole ? "holes" : "on the outside")}: neither goes into the other.", "Name a hole and what goes into it."));
                return null;
            }

            return (other.Name, other.Limits);
        }

        _ = c.TakeAny("dowel", "pin", "shaft", "bar", "rod", "key", "bolt", "ring", "hub", "bore", "hole", "slot", "bush");
        if (numbers.Take(c, "a size with its limits, or a feature") is not { } value)
        {
            return null;
        }

        var limits = numbers.TakeLimits(c, false);
        if (limits is null && !c.Failed)
        {
            c.Fail("the limits of what it goes with", "Write 'dowel 3 m6', 'shaft 12 -0.02 -0.05' or '12 +/-0.01'.");
        }

        if (limits is null || new LimitsWorker(worker.Evaluator, bag).Work(value, limits, false) is not { } worked)
        {
            c.Quiet();
            return null;
        }

        return (c.Statement.TextOf(start, c.At - 1), worked.ToLimits());
    }

    // H9/f8 after a size: its own class, and the other's.
    public static (string Own, string Text, Limits Limits)? Zones(Cursor c, (FeatureDraft Feature, string Name, Limits Limits, bool IsHole) own)
    {
        var (piece, where) = c.TakePiece() ?? (string.Empty, c.Here);
        var parts = piece.Split('/');
        var mine = parts.FirstOrDefault(p => p.Length > 0 && char.IsUpper(p[0]) == own.IsHole) ?? string.Empty;
        var other = parts.FirstOrDefault(p => p.Length > 0 && char.IsUpper(p[0]) != own.IsHole) ?? string.Empty;
        var nominal = own.Limits.Nominal;
        if (parts.Length != 2 || !Iso286.IsZone(mine) || !Iso286.IsZone(other))
        {
            c.Fail(FindingCatalogue.NotUnderstood(where, piece, "'with' or a fit", "Write 'fit pin with dowel 3 m6' or 'fit pin H7/g6'."));
            return null;
        }

        if (Iso286.TryLimits(nominal, mine, out _, out var reason) && Iso286.TryLimits(nominal, other, out var limits, out reason))
        {
            return (mine, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{nominal} {other}"), Limits.FromDeviations(nominal, limits.LowerMm, limits.UpperMm));
        }

        c.Fail(FindingCatalogue.LimitsWrong(where, $"There are no limits {piece} here: {reason}.", "Write a fit of ISO 286 (H7/g6), or 'with' and the other's limits."));
        return null;
    }
}
