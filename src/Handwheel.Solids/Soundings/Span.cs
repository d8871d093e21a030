namespace Handwheel.Solids.Soundings;

/// <summary>One closed interval of a sounding.</summary>
/// <param name="From">Where it starts along the line, mm.</param>
/// <param name="To">Where it ends along the line, mm, not below <paramref name="From"/>.</param>
/// <param name="FromSurface">The surface at the start.</param>
/// <param name="ToSurface">The surface at the end.</param>
public readonly record struct Span(double From, double To, SurfaceId FromSurface, SurfaceId ToSurface)
{
    /// <summary>Length, mm.</summary>
    public double Length => To - From;

    /// <summary>Middle of the interval along the line, mm.</summary>
    public double Middle => (From + To) / 2;
}
