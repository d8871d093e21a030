using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Measuring;

/// <summary>The least and greatest of what was measured for one size, and on which surfaces it rests. Mutable inside one measurement.</summary>
internal sealed class Tally
{
    private readonly HashSet<SurfaceId> surfaces = [];
    private int seen;
    private int lost;

    /// <summary>Least value found.</summary>
    public double Least { get; private set; } = double.PositiveInfinity;

    /// <summary>Greatest value found.</summary>
    public double Greatest { get; private set; } = double.NegativeInfinity;

    /// <summary>Whether any value was found.</summary>
    public bool Any => Least <= Greatest;

    /// <summary>Whether a face that the drawing has was nowhere near on the part as cut, at more than one place in five (a place by an edge may miss a sound face).</summary>
    public bool Gone => lost * 5 > seen + lost;

    /// <summary>The surfaces that the values rest on.</summary>
    public IReadOnlyCollection<SurfaceId> Surfaces => surfaces;

    /// <summary>Adds a value.</summary>
    /// <param name="value">The value.</param>
    public void Add(double value)
    {
        Least = Math.Min(Least, value);
        Greatest = Math.Max(Greatest, value);
    }

    /// <summary>Adds a probe&#39;s offset on top of a base; a probe that found nothing says the face is gone.</summary>
    /// <param name="probed">The probe.</param>
    /// <param name="from">The base.</param>
    /// <param name="sign">The sense in which the offset counts.</param>
    public void Add(Probed probed, double from, double sign)
    {
        if (Sees(probed))
        {
            Add(from + (sign * probed.Offset!.Value));
        }
    }

    /// <summary>Notes a probe&#39;s surface.</summary>
    /// <param name="probed">The probe.</param>
    /// <returns>Whether it found a face.</returns>
    public bool Sees(Probed probed)
    {
        if (probed.Offset is null)
        {
            lost++;
            return false;
        }

        seen++;
        surfaces.Add(probed.Surface);
        return true;
    }

    /// <summary>Takes over what another tally knows of surfaces and lost faces.</summary>
    /// <param name="other">The other.</param>
    public void Rests(Tally other)
    {
        seen += other.seen;
        lost += other.lost;
        surfaces.UnionWith(other.surfaces);
    }
}
