using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>Base of solids made of others; their faces are numbered one part after the other.</summary>
public abstract class Compound : Solid
{
    private readonly Solid[] parts;
    private readonly int[] firstFace;

    private protected Compound(IEnumerable<ISolid> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        this.parts = [.. parts.Select(From)];
        firstFace = new int[this.parts.Length + 1];
        for (var i = 0; i < this.parts.Length; i++)
        {
            firstFace[i + 1] = firstFace[i] + this.parts[i].SurfaceCount;
        }
    }

    /// <summary>The parts in order.</summary>
    public IReadOnlyList<ISolid> Parts => parts;

    /// <inheritdoc/>
    public override int SurfaceCount => firstFace[^1];

    private protected ReadOnlySpan<Solid> Solids => parts;

    /// <summary>Index of the part a surface belongs to.</summary>
    /// <param name="surface">A surface that a sounding of this solid named.</param>
    public int PartOf(SurfaceId surface)
    {
        var i = 0;
        while (i + 1 < parts.Length && firstFace[i + 1] <= surface.Face)
        {
            i++;
        }

        return i;
    }

    /// <summary>The surface as its part numbers it.</summary>
    /// <param name="surface">A surface that a sounding of this solid named.</param>
    public SurfaceId Within(SurfaceId surface) => surface with { Face = surface.Face - firstFace[PartOf(surface)] };

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point) => parts[PartOf(surface)].NormalAt(Within(surface), point);

    // The i-th part's intervals, sorted, with this solid's face numbers.
    private protected void SoundPart(int i, in Line3 line, bool closed, SpanList into)
    {
        double lo = double.NegativeInfinity, hi = double.PositiveInfinity;
        if (!parts[i].Bounds.Grown(1e-9).Clip(line, ref lo, ref hi))
        {
            return;
        }

        var start = into.Count;
        parts[i].Sound(line, closed, into);
        into.Normalise(start);
        into.Rename(start, 0, firstFace[i]);
    }
}
