using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Drawings;

/// <summary>
/// Which limits bear on a feature&#39;s faces. Across sizes lie half on each side; a height or depth lies whole on the end away from the origin; the
/// distance of two axes lies on the one away from the origin, else on the second named, as a disc; what no size names takes <c>others</c>
/// (general limits hold for distances as for sizes: ISO 2768-1, scope). A feature whose axis is the origin has no band of place. A cut&#39;s depth lies on
/// its floor, not on the face that it opens in.
/// </summary>
/// <param name="drawing">The drawing.</param>
internal sealed class FeatureBands(Drawing drawing)
{
    private const double Same = 1e-6;

    // What was asked already: an end that follows a face follows that face's own ends, and so on down.
    private readonly Dictionary<Feature, (Limits From, Limits To)> known = new(ReferenceEqualityComparer.Instance);
    private FeatureOutlines? nominal;

    // Limits of one dimension of a shape: a stated size first, then what the feature itself says, then any size, then the general limits.
    internal Limits Dimension(Feature feature, SizeKind? kind, Limits own, string? face = null)
    {
        var size = kind is { } k ? Named(feature, k, own.Nominal, face) : null;
        if (size is { Stated: true } || (size is not null && !(own.Width > 0)))
        {
            return size.Limits;
        }

        return own.Width > 0 ? own : Others(own.Nominal);
    }

    // Limits of the two ends, as coordinates along the view's axis. A cut opens in a face: where that face is aimed elsewhere than drawn, the cut goes with it.
    internal (Limits From, Limits To) Ends(Feature feature)
    {
        if (!known.TryGetValue(feature, out var ends))
        {
            known[feature] = ends = Followed(feature);
        }

        return ends;
    }

    private (Limits From, Limits To) Followed(Feature feature)
    {
        var from = End(feature.From);
        var to = End(feature.To);
        var mouths = feature is { IsCut: true, Through: false } ? Mouths(feature) : default;
        var high = Named(feature, SizeKind.High, to.Nominal - from.Nominal) ?? Named(feature, SizeKind.Deep, to.Nominal - from.Nominal);
        if (high is { Stated: true })
        {
            var isLower = (mouths.From is null) == (mouths.To is null) ? Math.Abs(from.Nominal) > Math.Abs(to.Nominal) : mouths.To is not null;
            (from, to) = isLower ? (Shifted(from.Nominal, high.Limits, -1), to) : (from, Shifted(to.Nominal, high.Limits, 1));
        }

        return (
            Following(Distances(feature, from, isUpper: false), mouths.From, mouths.To),
            Following(Distances(feature, to, isUpper: true), mouths.To, mouths.From));
    }

    // An end that opens in a face lies where that face does; a floor is so much further from where it opens.
    private static Limits Following(Limits end, Limits? own, Limits? other) => (own, other) switch
    {
        ({ } face, _) when Moved(face) => face,
        (null, { } face) when Moved(face) => new(end.Nominal, end.Lower + face.LowerDeviation, end.Upper + face.UpperDeviation),
        _ => end,
    };

    private static bool Moved(Limits face) => Math.Abs(face.Middle - face.Nominal) > Same;

    // The faces that a cut's two ends open in, as drawn before it: ends of what is added, floors of what is cut.
    private (Limits? From, Limits? To) Mouths(Feature cut)
    {
        (Limits? From, Limits? To) found = default;
        foreach (var host in drawing.Features.TakeWhile(f => !ReferenceEquals(f, cut)).Where(f => !f.Through && f.View == cut.View && Over(f, cut)))
        {
            double low = host.From.Nominal, high = host.To.Nominal;
            if (Math.Abs((host.IsCut ? high : low) - cut.From.Nominal) <= Same)
            {
                found.From = host.IsCut ? Ends(host).To : Ends(host).From;
            }

            if (Math.Abs((host.IsCut ? low : high) - cut.To.Nominal) <= Same)
            {
                found.To = host.IsCut ? Ends(host).From : Ends(host).To;
            }
        }

        return found;
    }

    // Whether a cut lies over a feature in plan, as drawn.
    private bool Over(Feature host, Feature cut)
    {
        nominal ??= new FeatureOutlines(drawing, PartVariant.Nominal);
        var (under, over) = (nominal.Of(host).Outlines, nominal.Of(cut));
        return under.Any(u => over.Centres.Any(u.Contains) || over.Outlines.Any(o => o.Pieces.Any(p => u.Contains((p.From + p.To) * 0.5))));
    }

    // How far the feature's axes are moved to the middle of their limits, and the disc about that within which they may lie.
    internal (Point2 Shift, double Radius) Place(Feature feature)
    {
        var shift = default(Point2);
        double? radius = null;
        foreach (var size in drawing.Sizes.Where(s => s.Stated))
        {
            if (size.Kind == SizeKind.Position && size.Feature == feature.Name)
            {
                radius = Math.Max(radius ?? 0, size.Limits.Upper / 2);
            }
            else if (size.Kind == SizeKind.Distance && DatumOf(size, feature) is { } datum)
            {
                var direction = Direction(size, feature.Centre - datum.Centre);
                shift += direction * (size.Limits.Middle - size.Limits.Nominal);
                radius = Math.Max(radius ?? 0, size.Limits.Width / 2);
            }
        }

        if (feature.Centre.Length <= Same && radius is null)
        {
            return (shift, 0);
        }

        return (shift, Math.Max(radius ?? 0, Others(0).Width / 2));
    }

    private static Limits Shifted(double end, Limits size, int sign) => sign > 0
        ? new(end, end + size.LowerDeviation, end + size.UpperDeviation)
        : new(end, end - size.UpperDeviation, end - size.LowerDeviation);

    private static Point2 Direction(Size size, Point2 between) => size.Along switch
    {
        "x" => new(Math.Sign(between.X), 0),
        "y" => new(0, Math.Sign(between.Y)),
        _ => between.Length > 0 ? between * (1 / between.Length) : default,
    };

    private static double Length(Size size, Point2 between) => size.Along switch
    {
        "x" => Math.Abs(between.X),
        "y" => Math.Abs(between.Y),
        _ => between.Length,
    };

    private Limits Others(double nominal) => drawing.Others is { } others
        ? Limits.FromDeviations(nominal, others.LowerDeviation, others.UpperDeviation)
        : new(nominal, nominal, nominal);

    private Limits End(Limits own) => own.Width > 0 ? own : Others(own.Nominal);

    private Size? Named(Feature feature, SizeKind kind, double nominal, string? face = null)
    {
        var found = drawing.Sizes.Where(s => s.Kind == kind && s.Feature == feature.Name && s.Other is null && (face is null || s.Face == face)
            && (kind is not (SizeKind.High or SizeKind.Deep) || Math.Abs(s.Limits.Nominal - nominal) <= Same));
        return found.OrderByDescending(s => s.Stated).FirstOrDefault();
    }

    private Feature? Find(string? name) => drawing.Features.FirstOrDefault(f => f.Name == name);

    // The datum that a distance puts on this feature's axis, or null where the distance moves the other one or is between faces.
    private Feature? DatumOf(Size size, Feature feature)
    {
        if (size.Along == "z" || Find(size.Feature) is not { } first || Find(size.Other) is not { } second)
        {
            return null;
        }

        if (first.View != second.View || Math.Abs(Length(size, second.Centre - first.Centre) - size.Limits.Nominal) > Same)
        {
            return null;
        }

        var moved = first.Centre.Length > second.Centre.Length + Same ? first : second;
        return moved == feature ? (moved == first ? second : first) : null;
    }

    // A stated distance along Z between ends of two features lies on the end away from the origin, else on the second named.
    private Limits Distances(Feature feature, Limits end, bool isUpper)
    {
        foreach (var size in drawing.Sizes.Where(s => s.Stated && s.Kind == SizeKind.Distance && s.Along == "z"))
        {
            if (feature.View != View.Top || Find(size.Feature) is not { } first || Find(size.Other) is not { } second)
            {
                continue;
            }

            foreach (var (a, b) in Pairs(first, second))
            {
                var (moved, datum, owner) = Math.Abs(a.End) > Math.Abs(b.End) + Same ? (a, b, first) : (b, a, second);
                if (owner == feature && moved.IsUpper == isUpper && Math.Abs(Math.Abs(a.End - b.End) - size.Limits.Nominal) <= Same)
                {
                    return Shifted(end.Nominal, size.Limits, Math.Sign(moved.End - datum.End));
                }
            }
        }

        return end;
    }

    // Tops first: a distance along Z is between tops where those fit, else between other ends.
    private static IEnumerable<((double End, bool IsUpper) A, (double End, bool IsUpper) B)> Pairs(Feature first, Feature second)
    {
        (double, bool) up1 = (first.To.Nominal, true), low1 = (first.From.Nominal, false);
        (double, bool) up2 = (second.To.Nominal, true), low2 = (second.From.Nominal, false);
        return [(up1, up2), (up1, low2), (low1, up2), (low1, low2)];
    }
}
