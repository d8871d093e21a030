using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// A cut made ready for the grid: with its path in the part's frame when the cutter's axis is the part's Z and the path level,
// so that plan sections serve every height; otherwise sounded ray by ray.
internal sealed class GridCut
{
    private GridCut(Solid solid, CutterPath? path, Slab[] slabs)
    {
        Solid = solid;
        Path = path;
        Slabs = slabs;
        Bounds = solid.Bounds;
        foreach (var slab in slabs)
        {
            Widest = Math.Max(Widest, slab.GreatestRadius);
        }
    }

    internal Solid Solid { get; }

    // Null when the cut is sounded ray by ray.
    internal CutterPath? Path { get; }

    internal Slab[] Slabs { get; }

    internal Box3 Bounds { get; }

    // Greatest radius of the cutter, mm.
    internal double Widest { get; }

    internal static GridCut Of(Solid solid)
    {
        if (solid is not SweptCut cut || !cut.ToPart.KeepsUp || !cut.Path.IsLevel)
        {
            return new(solid, null, []);
        }

        var slabs = cut.Slabs.ToArray();
        return Array.Exists(slabs, s => s.IsHollow) ? new(solid, null, []) : new(solid, cut.Path.Turned(cut.ToPart), slabs);
    }

    // Adds the layers that take everything from their floor to the top to the columns; what is left of the cut, or null.
    internal GridCut? Split(double top, List<Column> columns)
    {
        if (Path is null)
        {
            return this;
        }

        var z = Path.From.Z;
        var taken = 0;
        foreach (var slab in Slabs)
        {
            if (IsColumn(slab, z, top))
            {
                columns.Add(new(Path, slab.R0, z + slab.Z0, Bounds));
                taken++;
            }
        }

        return taken == 0 ? this
            : taken == Slabs.Length ? null
            : new(Solid, Path, Array.FindAll(Slabs, s => !IsColumn(s, z, top)));
    }

    private static bool IsColumn(Slab slab, double z, double top) => slab.R0 == slab.R1 && z + slab.Z1 > top;
}
