namespace Handwheel.Jobs.Shops;

/// <summary>A measuring or setting tool.</summary>
/// <param name="Name">Its name in the shop.</param>
/// <param name="Kind">What it is: <c>finder</c>, <c>pin</c>, <c>block</c>, <c>micrometer</c>, <c>caliper</c>, <c>indicator</c>, <c>plug</c>.</param>
/// <param name="Size">Its size, millimetres: a finder&#39;s tip, a pin&#39;s diameter, a range; 0 where it has none.</param>
public sealed record Gauge(string Name, string Kind, double Size)
{
    /// <summary>The least a micrometer or caliper measures, millimetres; 0 where its range starts there or was not told.</summary>
    public double Least { get; init; }
}
