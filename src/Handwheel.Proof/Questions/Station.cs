using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>One place along a piece of a move where the metal about the cutter is looked at. Path frame: Z along the cutter&#39;s axis.</summary>
/// <param name="Leg">The piece.</param>
/// <param name="At">The cutter&#39;s lowest cutting point.</param>
/// <param name="Way">Unit direction of travel.</param>
internal readonly record struct Station(Leg Leg, Point3 At, Vector3 Way)
{
    /// <summary>Stations along the pieces of a stroke.</summary>
    /// <param name="legs">The pieces.</param>
    /// <param name="apart">Greatest distance between two, millimetres.</param>
    /// <param name="most">Most stations to a piece.</param>
    /// <returns>The stations, in order.</returns>
    public static IEnumerable<Station> Along(IReadOnlyList<Leg> legs, double apart, int most)
    {
        foreach (var leg in legs)
        {
            var count = (int)Math.Clamp(Math.Ceiling(leg.Path.Length / apart), 3, most);
            for (var i = 0; i < count; i++)
            {
                var share = (i + 0.5) / count;
                yield return new Station(leg, leg.Path.At(share), leg.Path.DirectionAt(share));
            }
        }
    }

    /// <summary>An upright line beside the cutter, in the part frame; distances along it count from the lowest cutting point up.</summary>
    /// <param name="ahead">How far ahead of the axis, millimetres.</param>
    /// <param name="left">How far to the left of it, millimetres.</param>
    /// <returns>The line.</returns>
    public Line3 Upright(double ahead, double left)
    {
        var way = Level();
        var place = new Point3(At.X + (way.X * ahead) - (way.Y * left), At.Y + (way.Y * ahead) + (way.X * left), At.Z);
        return new Line3(place, Vector3.UnitZ).Placed(Leg.ToPart);
    }

    /// <summary>A level line across the cutter, in the part frame; distances count to the left from its axis.</summary>
    /// <param name="up">Height above the lowest cutting point, millimetres.</param>
    /// <returns>The line.</returns>
    public Line3 Across(double up)
    {
        var way = Level();
        return new Line3(At with { Z = At.Z + up }, new Vector3(-way.Y, way.X, 0)).Placed(Leg.ToPart);
    }

    private Vector3 Level()
    {
        var way = new Vector3(Way.X, Way.Y, 0).ToUnit();
        return way.Length > 0.5 ? way : Vector3.UnitX;
    }
}
