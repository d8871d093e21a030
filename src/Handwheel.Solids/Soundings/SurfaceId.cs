namespace Handwheel.Solids.Soundings;

/// <summary>Names the surface that ends an interval of a sounding.</summary>
/// <param name="Owner">0 for the solid asked (the bare stock in a workpiece); n for the n-th cut of a workpiece, counted from 1.</param>
/// <param name="Face">Which face of the owner, from 0; composite solids number the faces of their parts one after the other.</param>
public readonly record struct SurfaceId(int Owner, int Face)
{
    /// <summary>Whether the bare stock, not a cut, made the surface.</summary>
    public bool IsStock => Owner == 0;

    /// <summary>Index, from 0, of the cut that made the surface; -1 for the bare stock.</summary>
    public int Cut => Owner - 1;
}
