using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Sheets.Pictures;

/// <summary>The part as it is aimed at, for pictures: the very solid the proof holds the stock against, and its features' outlines. Part frame, millimetres.</summary>
internal sealed class PartColumns
{
    /// <summary>Initializes a new instance of the <see cref="PartColumns"/> class.</summary>
    /// <param name="drawing">The drawing.</param>
    public PartColumns(Drawing drawing)
    {
        var part = DrawnPart.Of(drawing, PartVariant.Aimed);
        Solid = part.Solid;
        var (least, most) = (Solid.Bounds.Min, Solid.Bounds.Max);
        Box = new(least.X, least.Y, most.X, most.Y);
        (Low, High) = (least.Z, most.Z);
        Features = [.. part.Features.Select(f => (f, (IReadOnlyList<IReadOnlyList<Point2>>)[.. f.Outlines.Concat(f.Bores).Select(OutlinePoints.Of)]))];
    }

    /// <summary>The whole part.</summary>
    public ISolid Solid { get; }

    /// <summary>Its box in plan.</summary>
    public Box2 Box { get; }

    /// <summary>Its lowest Z.</summary>
    public double Low { get; }

    /// <summary>Its highest Z.</summary>
    public double High { get; }

    /// <summary>Each feature with its outlines in the plan of its own view, in the order typed.</summary>
    public IReadOnlyList<(DrawnFeature Drawn, IReadOnlyList<IReadOnlyList<Point2>> Loops)> Features { get; }

    /// <summary>Where there is metal above and below a place, lowest first.</summary>
    /// <param name="x">X.</param>
    /// <param name="y">Y.</param>
    /// <returns>Spans of Z.</returns>
    public Spans At(double x, double y) => Solid.Sound(Line3.AlongZ(x, y));

    /// <summary>The part's top at a place.</summary>
    /// <param name="at">The place.</param>
    /// <returns>Z, or null where there is no metal.</returns>
    public double? Top(Point2 at) => At(at.X, at.Y) is { Count: > 0 } metal ? metal[^1].To : null;
}
