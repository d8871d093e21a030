using Handwheel.Jobs.Moves;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Plan.Cranking;

// What is no longer there after work by hand: all beyond a hand saw's cut, or beyond a web that was broken.
internal static class HandWaste
{
    private const double Far = 1000;

    // Whether all that held the work last pressed on what is sawn off: the part comes free there.
    internal static bool Holds(Place3 at, Place3 way, SetupFacts? setup) =>
        setup is not null && setup.Fixtures.Any(f => f.Holds) && setup.Fixtures.Where(f => f.Holds).All(f => FixtureSolids.InPart(f, setup) is not { } solid || Past(solid.Bounds, at, way));

    private static bool Past(Box3 box, Place3 at, Place3 way)
    {
        var (c, size) = (box.Centre, box.Size);
        var middle = ((c.X - at.X) * way.X) + ((c.Y - at.Y) * way.Y) + ((c.Z - at.Z) * way.Z);
        return middle - (((size.X * Math.Abs(way.X)) + (size.Y * Math.Abs(way.Y)) + (size.Z * Math.Abs(way.Z))) / 2) > -1e-6;
    }

    internal static ISolid? Beyond(Place3 at, Place3 way)
    {
        (double X, double Y, double Z) least = (-Far, -Far, -Far), most = (Far, Far, Far);
        if (Math.Abs(way.X) > 0.999)
        {
            (least.X, most.X) = way.X > 0 ? (at.X, Far) : (-Far, at.X);
        }
        else if (Math.Abs(way.Y) > 0.999)
        {
            (least.Y, most.Y) = way.Y > 0 ? (at.Y, Far) : (-Far, at.Y);
        }
        else if (Math.Abs(way.Z) > 0.999)
        {
            (least.Z, most.Z) = way.Z > 0 ? (at.Z, Far) : (-Far, at.Z);
        }
        else
        {
            return null;
        }

        return new Block(new Point3(least.X, least.Y, least.Z), new Point3(most.X, most.Y, most.Z));
    }
}
