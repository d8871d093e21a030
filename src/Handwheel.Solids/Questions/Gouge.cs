using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Questions;

/// <summary>Whether anything was cut inside least metal, and where deepest.</summary>
public static class Gouge
{
    /// <summary>The deepest place where the workpiece lacks metal that the least solid has; null when there is none on the rays.</summary>
    /// <param name="workpiece">The workpiece as it is.</param>
    /// <param name="least">The drawing's least metal.</param>
    /// <param name="metal">The workpiece's grid.</param>
    /// <param name="leastGrid">The least metal on the same rays, from <see cref="RayGrid.Like"/>.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Excess? Deepest(Workpiece workpiece, ISolid least, RayGrid metal, RayGrid leastGrid)
    {
        ArgumentNullException.ThrowIfNull(workpiece);
        var scan = new ExcessScan(leastGrid, metal, where: null);
        return scan.IsEmpty ? null : new ExcessRefiner(workpiece, Solid.From(least), outward: false).Refine(scan);
    }

    /// <summary>The same, making both grids.</summary>
    /// <param name="workpiece">The workpiece as it is.</param>
    /// <param name="least">The drawing's least metal.</param>
    /// <param name="spacing">Distance between rays, mm.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Excess? Deepest(Workpiece workpiece, ISolid least, double spacing)
    {
        ArgumentNullException.ThrowIfNull(workpiece);
        ArgumentNullException.ThrowIfNull(least);
        var grid = new RayGrid(workpiece.Bare, spacing, least.Bounds);
        grid.CutAll(workpiece.Cuts);
        return Deepest(workpiece, least, grid, grid.Like(least));
    }

    /// <summary>The deepest of the metal that the workpiece lacks and the least solid has, near stretches of it that are known.</summary>
    /// <param name="workpiece">The workpiece as it is.</param>
    /// <param name="least">The drawing's least metal.</param>
    /// <param name="stretches">Stretches of it, from end to end, on some rays; at least one. The answer lies in the box round them, a spacing wider.</param>
    /// <param name="spacing">Distance between those rays, mm.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no stretch.</exception>
    public static DeepPlace Deepest(Workpiece workpiece, ISolid least, IReadOnlyList<(Point3 From, Point3 To)> stretches, double spacing)
    {
        ArgumentNullException.ThrowIfNull(workpiece);
        ArgumentNullException.ThrowIfNull(stretches);
        return new ExcessRefiner(workpiece, Solid.From(least), outward: false).Refine(stretches, spacing);
    }
}
