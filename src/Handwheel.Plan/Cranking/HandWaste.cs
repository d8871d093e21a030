using Handwheel.Jobs.Moves;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Plan.Cranking;

// What is no longer there after work by hand: all beyond a hand saw's cut, or beyond a web that was broken.
internal static class HandWaste
{
    private const double Far = 1000;

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
