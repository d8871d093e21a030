using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

/// <summary>Works out what each feature measures: its limits, its middle, its place. Each value once; a value that needs itself is a finding.</summary>
internal sealed class DrawingWorker
{
    private const int Deepest = 100;
    private readonly FindingBag bag;
    private readonly Dictionary<(FeatureDraft, Measure), ExactLimits?> done = [];
    private readonly List<(FeatureDraft Feature, Measure Measure)> under = [];
    private readonly Dictionary<(FeatureDraft, Measure), SizeDraft> sizes = [];
    private readonly Dictionary<(FeatureDraft, Measure), Exact> shifts = [];
    private readonly List<SizeDraft> distances = [];
    private readonly LimitsWorker limits;

    public DrawingWorker(LengthUnit unit, FindingBag bag)
    {
        this.bag = bag;
        Unit = unit;
        Evaluator = new Evaluator(unit, bag, AimedIn);
        limits = new LimitsWorker(Evaluator, bag);
    }

    /// <summary>The job's unit, in which lengths are told.</summary>
    public LengthUnit Unit { get; }

    /// <summary>Works sums out with this drawing&#39;s measures.</summary>
    public Evaluator Evaluator { get; }

    /// <summary>Whether an <c>others</c> line stands in the drawing, understood or not.</summary>
    public bool OthersSaid { get; set; }

    /// <summary>The general limits, as deviations; null where none stand.</summary>
    public ExactLimits? Others { get; private set; }

    // The general limits and the sizes that limit a measure of their feature, before anything is worked out.
    public void Take(LimitsDraft? others, IEnumerable<SizeDraft> lines)
    {
        Others = others is null ? null : limits.Deviations(null, others, false);
        foreach (var size in lines.Where(s => s.Measure is not null && !s.Feature.Broken))
        {
            var key = (size.Feature, size.Measure!.Value);
            if (!sizes.TryAdd(key, size))
            {
                bag.Add(FindingCatalogue.SaidTwice(size.Where, $"The size {size.Name}", sizes[key].Where));
            }
        }

        distances.AddRange(lines.Where(s => s is { Other: not null, Limits: not null } && !s.Feature.Broken && !s.Other.Broken));
        foreach (var size in distances.Where(s => s is { Face: null, OtherFace: null } && s.Along != "z"))
        {
            new DistanceAim(this, shifts).Aim(size);
        }

        done.Clear();
    }

    public SizeDraft? SizeOf(FeatureDraft feature, Measure measure) => sizes.GetValueOrDefault((feature, measure));

    // Limits of one measure; null, with a finding made, where they cannot be worked out.
    public ExactLimits? LimitsOf(FeatureDraft feature, Measure measure, SourceSpan from)
    {
        if (feature.Broken)
        {
            return null;
        }

        var key = (feature, measure);
        if (done.TryGetValue(key, out var known))
        {
            return known;
        }

        if (under.Contains(key) || under.Count >= Deepest)
        {
            bag.Add(FindingCatalogue.Circular(from, Chain(key)));
            feature.Broken = true;
            return null;
        }

        under.Add(key);
        var worked = Measures.IsPlace(measure) ? Place(feature, measure) : measure == Measure.High ? Height(feature) : Worked(feature, measure);
        under.RemoveAt(under.Count - 1);
        done[key] = worked;
        feature.Broken = feature.Broken || worked is null;
        return worked;
    }

    public Exact? Aimed(FeatureDraft feature, Measure measure, SourceSpan from) => LimitsOf(feature, measure, from)?.Middle;

    public Point2? Centre(FeatureDraft feature) =>
        Aimed(feature, Measure.X, feature.Where) is { } x && Aimed(feature, Measure.Y, feature.Where) is { } y ? new Point2(x.ToDouble(), y.ToDouble()) : null;

    // A size's own limits, for those that limit no measure; others where it has none.
    public ExactLimits? Own(SizeDraft size, bool angle) => WithLimits(size.Value, size.Limits, size.Name, angle);

    private Quantity? AimedIn(FeatureDraft feature, Measure measure, SourceSpan from)
    {
        if (!feature.Broken && !Has(feature, measure))
        {
            bag.Add(FindingCatalogue.NotThere(from, $"'{feature.Name}' has no '{Measures.Name(measure, feature.IsCut)}'.", $"It has: {string.Join(", ", All(feature).Select(m => Measures.Name(m, feature.IsCut)))}."));
            return null;
        }

        return Aimed(feature, measure, from) is { } value ? new Quantity(value, Dimension.Length) : null;
    }

    public static bool Has(FeatureDraft feature, Measure measure) => All(feature).Contains(measure);

    private static IEnumerable<Measure> All(FeatureDraft feature)
    {
        var shape = Measures.Of(feature.Shape);
        Measure[] ends = feature.Through ? [] : [Measure.High, Measure.Top, Measure.Bottom];
        Measure[] place = feature.Shape is ShapeForm.Tangent or ShapeForm.Outline ? [] : [Measure.X, Measure.Y];
        return [.. shape, .. ends, .. place];
    }

    private string Chain((FeatureDraft Feature, Measure Measure) last)
    {
        var start = under.IndexOf(last);
        if (start < 0)
        {
            return "each feature here rests on the next, a hundred deep";
        }

        var way = under.Skip(start).Append(last).Select(k => $"{k.Feature.Name} {Measures.Name(k.Measure, k.Feature.IsCut)}").ToList();
        var shown = way.Count <= 8 ? way : [.. way.Take(4), "...", .. way.TakeLast(3)];
        return string.Join(" needs ", shown);
    }

    private ExactLimits? Place(FeatureDraft feature, Measure measure)
    {
        if (feature.At is { } at)
        {
            return Aimed(at, measure, feature.Where) is { } same ? ExactLimits.Only(same) : null;
        }

        if (!feature.Typed.TryGetValue(measure, out var typed))
        {
            return ExactLimits.Only(Exact.Zero);
        }

        return Evaluator.Length(typed.Number) is { } value ? ExactLimits.Only(shifts.TryGetValue((feature, measure), out var shift) ? value + shift : value) : null;
    }

    // A measure typed in the feature's line, limited by a size, by its own limits or by others.
    private ExactLimits? Worked(FeatureDraft feature, Measure measure)
    {
        if (Measures.IsEnd(measure))
        {
            return End(feature, measure);
        }

        if (!feature.Typed.TryGetValue(measure, out var typed))
        {
            return null;
        }

        var size = SizeOf(feature, measure);
        if (Evaluator.Size(typed.Number) is not { } drawn)
        {
            return null;
        }

        drawn = feature.OverCorners ? Exact.FromDouble(drawn.ToDouble() * Math.Cos(Math.PI / feature.Sides)) : drawn;
        if (size is null)
        {
            var own = feature.OverCorners && typed.Limits is null ? Others is { } others ? ExactLimits.Around(drawn, others) : null
                : WithLimits(typed.Number, typed.Limits, $"{feature.Name} {Measures.Name(measure, feature.IsCut)}", false);
            return own ?? (feature.OverCorners ? Unlimited(feature.Where, feature.Name, drawn) : null);
        }

        return Sized(size, drawn, typed.Limits);
    }

    private ExactLimits? Sized(SizeDraft size, Exact drawn, LimitsDraft? own)
    {
        if (own is not null)
        {
            bag.Add(FindingCatalogue.SaidTwice(size.Where, $"The limits of {size.Name}", own.Where));
        }

        if (WithLimits(size.Value, size.Limits, size.Name, false) is not { } worked)
        {
            return null;
        }

        worked = size.IsRadius ? Doubled(worked) : size.Kind == SizeKind.AcrossCorners ? Times(worked, Exact.FromDouble(Math.Cos(Math.PI / size.Feature.Sides))) : worked;
        var range = size.Limits?.Form == LimitsForm.Range;
        if (range ? Within(worked, drawn) : Agree(worked.Nominal, drawn))
        {
            return range ? worked with { Nominal = drawn } : worked;
        }

        bag.Add(FindingCatalogue.Contradiction(
            size.Value.Where,
            FormattableString.Invariant($"The size says {size.Name} {size.Value.Text}; its feature is drawn {Unit.Said(drawn.ToDouble())} (line {size.Feature.Where.Line})."),
            "Write the same value in both."));
        return worked;
    }

    private static bool Within(ExactLimits worked, Exact drawn) =>
        drawn.ToDouble() >= worked.Lower.ToDouble() - Limits.Closed && drawn.ToDouble() <= worked.Upper.ToDouble() + Limits.Closed;

    public static bool Agree(Exact a, Exact b) => Math.Abs((a - b).ToDouble()) < 1e-6;

    private static ExactLimits Times(ExactLimits all, Exact by) => new(all.Nominal * by, all.Lower * by, all.Upper * by);

    private static ExactLimits Doubled(ExactLimits radius) => new(radius.Nominal + radius.Nominal, radius.Lower + radius.Lower, radius.Upper + radius.Upper);

    private ExactLimits? WithLimits(TypedNumber value, LimitsDraft? own, string what, bool angle)
    {
        if (own is not null)
        {
            return limits.Work(value, own, angle);
        }

        var drawn = angle ? Evaluator.Angle(value) : Evaluator.Length(value);
        return drawn is null ? null : Others is { } others && !angle ? ExactLimits.Around(drawn.Value, others) : Unlimited(value.Where, what, drawn.Value, angle);
    }

    private ExactLimits Unlimited(SourceSpan where, string what, Exact drawn, bool always = false)
    {
        // Once is enough for all that 'others' would limit; it limits no angle.
        if (always)
        {
            bag.Add(FindingCatalogue.LimitsWrong(where, $"Nothing limits {what}: 'others' is for lengths.", "Write its limits, such as '30 +/-0.5'."));
        }
        else if (!OthersSaid)
        {
            OthersSaid = true;
            bag.Add(FindingCatalogue.NoLimits(where, what));
        }

        return ExactLimits.Only(drawn);
    }

    // From lower to upper end, as stated or as the ends stand; the datum is the end nearer the origin.
    private ExactLimits? Height(FeatureDraft feature)
    {
        if (EndDrawn(feature, Measure.Bottom) is not { } bottom || EndDrawn(feature, Measure.Top) is not { } top)
        {
            return null;
        }

        var drawn = top - bottom;
        if (drawn.ToDouble() < 1e-4)
        {
            var where = feature.Typed.TryGetValue(Measure.Bottom, out var typed) ? typed.Number.Where : feature.Where;
            bag.Add(FindingCatalogue.AbsurdNumber(where, feature.Name, "its lower end is not below its upper end", "Write the lower end first: 'from -12 to 0'."));
            return null;
        }

        return SizeOf(feature, Measure.High) is { } size ? Sized(size, drawn, null)
            : feature.Typed.TryGetValue(Measure.High, out var own) ? WithLimits(own.Number, own.Limits, $"{feature.Name} height", false)
            : Others is { } others ? ExactLimits.Around(drawn, others) : Unlimited(feature.Where, $"{feature.Name} {Measures.Name(Measure.High, feature.IsCut)}", drawn);
    }

    // An end: the datum's end has others (or its own limits); the other has the height's whole limits where a height is stated.
    private ExactLimits? End(FeatureDraft feature, Measure end)
    {
        if (EndDrawn(feature, end) is not { } drawn)
        {
            return null;
        }

        if (feature.Typed.TryGetValue(end, out var typed) && typed.Limits is { } own)
        {
            return limits.Work(typed.Number, own, false);
        }

        if (FromFace(feature, end, drawn) is { } faced)
        {
            return faced;
        }

        var stated = SizeOf(feature, Measure.High) is not null || (feature.Typed.TryGetValue(Measure.High, out var high) && high.Limits is not null);
        if (!stated || end == Datum(feature))
        {
            return Others is { } others ? ExactLimits.Around(drawn, others) : Unlimited(feature.Where, $"the {(end == Measure.Top ? "top" : "bottom")} of {feature.Name}", drawn);
        }

        var datum = end == Measure.Bottom ? Measure.Top : Measure.Bottom;
        if (LimitsOf(feature, Measure.High, feature.Where) is not { } height || LimitsOf(feature, datum, feature.Where) is not { } from)
        {
            return null;
        }

        return Beyond(drawn, from.Middle, height, end == Measure.Bottom);
    }

    // A face that a stated distance holds to another nearer the origin (or named first): the whole limits stand on it.
    private ExactLimits? FromFace(FeatureDraft feature, Measure end, Exact drawn)
    {
        foreach (var size in distances.Where(s => s.Feature != s.Other))
        {
            var first = (size.Feature, Faces.End(size.Face));
            var second = (size.Other!, Faces.End(size.OtherFace));
            var isFirst = first == (feature, end);
            var (datum, datumEnd) = isFirst ? second : first;
            if ((!isFirst && second != (feature, end)) || datumEnd is null || EndDrawn(datum, datumEnd.Value) is not { } other)
            {
                continue;
            }

            var away = Math.Abs(drawn.ToDouble()) - Math.Abs(other.ToDouble());
            if (away > 0 || (away == 0 && !isFirst))
            {
                return LimitsOf(datum, datumEnd.Value, size.Where) is { } from && Own(size, false) is { } by ? Beyond(drawn, from.Middle, by, drawn.ToDouble() < other.ToDouble()) : null;
            }
        }

        return null;
    }

    private static ExactLimits Beyond(Exact drawn, Exact from, ExactLimits by, bool below) =>
        below ? new ExactLimits(drawn, from - by.Upper, from - by.Lower) : new ExactLimits(drawn, from + by.Lower, from + by.Upper);

    private Measure Datum(FeatureDraft feature) =>
        EndDrawn(feature, Measure.Bottom) is { } bottom && EndDrawn(feature, Measure.Top) is { } top && Math.Abs(bottom.ToDouble()) < Math.Abs(top.ToDouble())
            ? Measure.Bottom : Measure.Top;

    private readonly Dictionary<(FeatureDraft, Measure), Exact?> drawnEnds = [];

    // An end as drawn: typed, or a height away from the one typed.
    private Exact? EndDrawn(FeatureDraft feature, Measure end)
    {
        if (drawnEnds.TryGetValue((feature, end), out var known))
        {
            return known;
        }

        var drawn = EndWorked(feature, end);
        drawnEnds[(feature, end)] = drawn;
        return drawn;
    }

    private Exact? EndWorked(FeatureDraft feature, Measure end)
    {
        if (feature.Typed.TryGetValue(end, out var typed))
        {
            return Evaluator.Length(typed.Number);
        }

        var other = end == Measure.Bottom ? Measure.Top : Measure.Bottom;
        if (!feature.Typed.TryGetValue(other, out var from) || Evaluator.Length(from.Number) is not { } start)
        {
            return null;
        }

        if (!feature.Typed.TryGetValue(Measure.High, out var high))
        {
            return CountersinkEnd(feature, start);
        }

        return Evaluator.Size(high.Number) is { } height ? end == Measure.Bottom ? start - height : start + height : null;
    }

    // A countersink runs down to its point: half its diameter over the tangent of half its angle.
    private Exact? CountersinkEnd(FeatureDraft feature, Exact top)
    {
        if (feature.Point is null || Aimed(feature, Measure.AcrossTop, feature.Where) is not { } across || Evaluator.Angle(feature.Point) is not { } angle)
        {
            return null;
        }

        var half = angle.ToDouble() * Math.PI / 360;
        if (half is > 0.01 and < 1.56)
        {
            return top - Exact.FromDouble(across.ToDouble() / 2 / Math.Tan(half));
        }

        bag.Add(FindingCatalogue.AbsurdNumber(feature.Point.Where, feature.Point.Text, "a countersink's angle lies between 2 and 178 degrees", "Write its included angle, such as '90 deg'."));
        feature.Broken = true;
        return null;
    }
}
