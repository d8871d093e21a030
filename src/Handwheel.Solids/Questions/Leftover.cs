using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Questions;

/// <summary>Whether the part still has metal outside most metal, and where thickest.</summary>
public static class Leftover
{
    /// <summary>The thickest place of metal that the most solid does not have; null when there is none on the rays.</summary>
    /// <param name="workpiece">The workpiece as it is.</param>
    /// <param name="most">The drawing's most metal.</param>
    /// <param name="metal">The workpiece's grid.</param>
    /// <param name="mostGrid">The most metal on the same rays, from <see cref="RayGrid.Like"/>.</param>
    /// <param name="where">Which places count, such as those of the part's own piece; all when null.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Excess? Deepest(Workpiece workpiece, ISolid most, RayGrid metal, RayGrid mostGrid, Func<Point3, bool>? where = null)
    {
        ArgumentNullException.ThrowIfNull(workpiece);
        var scan = new ExcessScan(metal, mostGrid, where);
        return scan.IsEmpty ? null : new ExcessRefiner(workpiece, Solid.From(most), outward: true).Refine(scan);
    }

    /// <summary>The same, making both grids.</summary>
    /// <param name="workpiece">The workpiece as it is.</param>
    /// <param name="most">The drawing's most metal.</param>
    /// <param name="spacing">Distance between rays, mm.</param>
    /// <param name="where">Which places count; all when null.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Excess? Deepest(Workpiece workpiece, ISolid most, double spacing, Func<Point3, bool>? where = null)
    {
        ArgumentNullException.ThrowIfNull(workpiece);
        ArgumentNullException.ThrowIfNull(most);
        var grid = new RayGrid(workpiece.Bare, spacing);
        grid.CutAll(workpiece.Cuts);
        return Deepest(workpiece, most, grid, grid.Like(most), where);
    }

    /// <summary>The thickest place of the metal that the workpiece has and the most solid has not, near stretches of it that are known.</summary>
    /// <param name="workpiece">The workpiece as it is.</param>
    /// <param name="most">The drawing's most metal.</param>
    /// <param name="stretches">Stretches of it, from end to end, on some rays; at least one. The answer lies in the box round them, a spacing wider.</param>
    /// <param name="spacing">Distance between those rays, mm.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no stretch.</exception>
    public static DeepPlace Deepest(Workpiece workpiece, ISolid most, IReadOnlyList<(Point3 From, Point3 To)> stretches, double spacing)
    {
        ArgumentNullException.ThrowIfNull(workpiece);
        ArgumentNullException.ThrowIfNull(stretches);
        return new ExcessRefiner(workpiece, Solid.From(most), outward: true).Refine(stretches, spacing);
    }
}
