using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Drawings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Tests.Drawings;

/// <summary>Drawings made by hand for the tests.</summary>
internal static class Drawn
{
    internal static SourceSpan Here => new("drawn.handwheel", 1, 1, 1);

    internal static Limits Exact(double value) => new(value, value, value);

    internal static Feature Feature(string name, bool isCut, FeatureShape shape, Point2 at, double from, double to, bool through = false, View view = View.Top) => new()
    {
        Name = name,
        Where = Here,
        IsCut = isCut,
        Shape = shape,
        Centre = at,
        Places = [new Place(at, 0, false)],
        From = Exact(from),
        To = Exact(to),
        Through = through,
        View = view,
    };

    internal static Size Size(SizeKind kind, string feature, Limits limits, string? other = null, string? along = null) => new()
    {
        Name = $"{feature} {kind}",
        Kind = kind,
        Feature = feature,
        Other = other,
        Along = along,
        Limits = limits,
        Stated = true,
        Where = Here,
    };

    /// <summary>The winch crank of the examples, typed out.</summary>
    internal static Drawing Crank() => new()
    {
        Features =
        [
            Feature("hub", false, new RoundShape(Exact(10)), new(0, 0), -12, 0),
            Feature("eye", false, new RoundShape(Exact(8)), new(28, 0), -12, -8),
            Feature("arm", false, new TangentShape("hub", "eye"), new(0, 0), -12, -8),
            Feature("pilot", true, new RoundShape(Exact(4)), new(0, 0), -12, 0, through: true),
            Feature("socket", true, new PolygonShape(4, Exact(4), 0), new(0, 0), -6, 0),
            Feature("pin", true, new RoundShape(Limits.FromDeviations(3, 0, 0.014)), new(28, 0), -12, -8, through: true),
        ],
        Sizes =
        [
            Size(SizeKind.Across, "hub", Limits.FromDeviations(10, -0.05, 0)),
            Size(SizeKind.Distance, "hub", Limits.FromDeviations(28, -0.05, 0.05), "pin", "x"),
            Size(SizeKind.High, "arm", Limits.FromDeviations(4, -0.05, 0.05)),
            Size(SizeKind.AcrossFlats, "socket", Limits.FromDeviations(4, -0.02, 0.08)),
        ],
        Others = Limits.FromDeviations(0, -0.1, 0.1),
    };
}
