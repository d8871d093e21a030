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
        Widest = slabs.Length > 0 ? slabs.Max(s => s.GreatestRadius) : 0;
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
        var fast = solid is SweptCut cut && cut.ToPart.KeepsUp && cut.Path.IsLevel && !cut.Slabs.ToArray().Any(s => s.IsHollow);
        return fast && solid is SweptCut swept ? new(solid, swept.Path.Turned(swept.ToPart), swept.Slabs.ToArray()) : new(solid, null, []);
    }
}
