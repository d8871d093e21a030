using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Moves;

/// <summary>What holds the work and stands round it as solids.</summary>
public static class FixtureSolids
{
    /// <summary>One fixture in the holding frame at theta 0.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <returns>A block, or a cylinder or ring along Z; null where its sizes enclose nothing.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fixture"/> is null.</exception>
    public static ISolid? Of(FixtureFacts fixture)
    {
        ArgumentNullException.ThrowIfNull(fixture);
        var (a, b) = (fixture.Least, fixture.Most);
        if (fixture.Across > 0)
        {
            return b.Z > a.Z && fixture.Across > fixture.Bore ? Round(fixture, new(a.X, a.Y)) : null;
        }

        return b.X > a.X && b.Y > a.Y && b.Z > a.Z ? new Block(new(a.X, a.Y, a.Z), new(b.X, b.Y, b.Z)) : null;
    }

    /// <summary>One fixture in the holding frame with the rotary at an angle.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <param name="setup">The set-up it belongs to.</param>
    /// <param name="theta">Theta, degrees.</param>
    /// <returns>The solid, turned where it turns with the rotary; null where its sizes enclose nothing.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static ISolid? At(FixtureFacts fixture, SetupFacts setup, double theta)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var solid = Of(fixture);
        return solid is null || !fixture.Turns || setup.Rotary is null || theta == 0 ? solid : new Placed(solid, Poses.Turn(setup, theta));
    }

    /// <summary>One fixture in the part frame of its holding, at theta 0: where it stands about the work it turns with.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <param name="setup">The set-up it belongs to.</param>
    /// <returns>The solid; null where its sizes enclose nothing.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static ISolid? InPart(FixtureFacts fixture, SetupFacts setup) =>
        Of(fixture) is { } solid ? new Placed(solid, Poses.Of(setup).Inverse()) : null;

    private static Solid Round(FixtureFacts fixture, Point2 centre)
    {
        var (low, high) = (fixture.Least.Z, fixture.Most.Z);
        var outside = new Prism(Outline.Circle(centre, fixture.Across / 2), low, high);
        return fixture.Bore > 0 ? new Difference(outside, new Prism(Outline.Circle(centre, fixture.Bore / 2), low - 1, high + 1)) : outside;
    }
}
