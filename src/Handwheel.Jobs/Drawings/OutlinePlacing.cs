using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Drawings;

/// <summary>Outlines turned, mirrored and moved.</summary>
internal static class OutlinePlacing
{
    // Mirrored about its own plan Y axis, then turned, then moved to its centre.
    internal static Outline Placed(Outline outline, Place place)
    {
        if (place == default)
        {
            return outline;
        }

        return Outline.FromPieces([.. outline.Pieces.Select(p => Placed(p, place))]);
    }

    internal static Point2 Placed(Point2 p, Place place)
    {
        var v = Turned(place.Mirrored ? new Point2(-p.X, p.Y) : p, place.Turn);
        return place.Centre + v;
    }

    // Quarter turns come out exact.
    private static Point2 Turned(Point2 v, double turn)
    {
        if (turn == 0)
        {
            return v;
        }

        var a = Point2.Polar(default, 1, turn);
        return new((a.X * v.X) - (a.Y * v.Y), (a.Y * v.X) + (a.X * v.Y));
    }

    private static OutlinePiece Placed(OutlinePiece piece, Place place)
    {
        if (!piece.IsArc)
        {
            return OutlinePiece.Straight(Placed(piece.From, place), Placed(piece.To, place));
        }

        var start = place.Mirrored ? Math.PI - piece.StartAngle : piece.StartAngle;
        var sweep = place.Mirrored ? -piece.Sweep : piece.Sweep;
        return OutlinePiece.Arc(Placed(piece.Centre, place), piece.Radius, start + place.Turn, sweep);
    }
}
