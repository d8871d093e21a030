using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Drawings;

/// <summary>Outlines from corners, with fillets and chamfers, and outlines moved outwards or inwards by an even band.</summary>
internal static class OutlineDrawing
{
    // Corners that turn by less than this run on smoothly.
    private const double Smooth = 1e-9;

    internal static Outline Of(OutlineShape shape)
    {
        var corners = shape.Corners;
        var edges = corners.Select((c, i) => Edge(c, corners[(i + 1) % corners.Count])).ToArray();
        var cornersCut = corners.Select((c, i) => Cut(c, edges[(i + corners.Count - 1) % corners.Count], edges[i])).ToArray();
        var pieces = new List<OutlinePiece>();
        for (var i = 0; i < corners.Count; i++)
        {
            pieces.AddRange(cornersCut[i].Between);
            if (edges[i].Piece(cornersCut[i].Leave, cornersCut[(i + 1) % corners.Count].Arrive) is { } piece)
            {
                pieces.Add(piece);
            }
        }

        return Outline.FromPieces(pieces);
    }

    // Every piece moved along its normal by the same distance (outwards positive) and joined anew; sharp corners stay sharp.
    internal static Outline Offset(Outline outline, double by)
    {
        var kept = outline.Pieces
            .Select(p => (Piece: p, Moved: OutlineCurve.Of(p).MovedRight(by)))
            .Where(p => p.Moved is not null)
            .ToArray();
        var joints = kept.Select((p, i) => Joint(p, kept[(i + kept.Length - 1) % kept.Length], by)).ToArray();
        var pieces = new List<OutlinePiece>();
        for (var i = 0; i < kept.Length; i++)
        {
            var (arrive, leave) = joints[i];
            if (arrive.DistanceTo(leave) > 0)
            {
                pieces.Add(OutlinePiece.Straight(arrive, leave));
            }

            var end = joints[(i + 1) % kept.Length].Arrive;
            if (kept.Length == 1)
            {
                return Outline.Circle(kept[0].Piece.Centre, kept[0].Moved!.Value.Radius);
            }

            if (kept[i].Moved!.Value.Piece(leave, end) is { } piece)
            {
                pieces.Add(piece);
            }
        }

        return Outline.FromPieces(pieces);
    }

    private static OutlineCurve Edge(OutlineCorner from, OutlineCorner to) => from.ArcCentre is { } centre
        ? OutlineCurve.Circle(centre, from.At.DistanceTo(centre), from.ArcCounterclockwise)
        : OutlineCurve.Line(from.At, to.At);

    // Where the edge before a corner ends, what lies between, and where the edge after it starts.
    private static (Point2 Arrive, OutlinePiece[] Between, Point2 Leave) Cut(OutlineCorner corner, OutlineCurve before, OutlineCurve after)
    {
        var turn = before.TangentAt(corner.At).Cross(after.TangentAt(corner.At));
        if (corner.Fillet > 0 && Math.Abs(turn) > Smooth)
        {
            // The fillet's centre lies on the inner side of both edges, its radius away.
            var side = turn > 0 ? -corner.Fillet : corner.Fillet;
            if (before.MovedRight(side) is { } a && after.MovedRight(side) is { } b && a.Meet(b, corner.At) is { } centre)
            {
                var (arrive, leave) = (before.Foot(centre), after.Foot(centre));
                var round = OutlineCurve.Circle(centre, corner.Fillet, turn > 0).Piece(arrive, leave);
                return (arrive, round is { } r ? [r] : [], leave);
            }
        }

        if (corner.Chamfer > 0)
        {
            var (arrive, leave) = (Along(before, corner.At, -corner.Chamfer), Along(after, corner.At, corner.Chamfer));
            return (arrive, [OutlinePiece.Straight(arrive, leave)], leave);
        }

        return (corner.At, [], corner.At);
    }

    private static Point2 Along(OutlineCurve curve, Point2 from, double by)
    {
        if (!curve.IsArc)
        {
            return from + (curve.Along * by);
        }

        var a = Math.Atan2(from.Y - curve.Through.Y, from.X - curve.Through.X);
        return Point2.Polar(curve.Through, curve.Radius, a + ((curve.Counterclockwise ? by : -by) / curve.Radius));
    }

    private static (Point2 Arrive, Point2 Leave) Joint(
        (OutlinePiece Piece, OutlineCurve? Moved) piece, (OutlinePiece Piece, OutlineCurve? Moved) before, double by)
    {
        var at = piece.Piece.From;
        Point2 arriveNormal = OutlineCurve.Right(OutlineCurve.Of(before.Piece).TangentAt(before.Piece.To));
        Point2 leaveNormal = OutlineCurve.Right(OutlineCurve.Of(piece.Piece).TangentAt(at));
        var (arrive, leave) = (before.Piece.To + (arriveNormal * by), at + (leaveNormal * by));
        if (arrive.DistanceTo(leave) < Smooth)
        {
            return (leave, leave);
        }

        return before.Moved!.Value.Meet(piece.Moved!.Value, leave) is { } met ? (met, met) : (arrive, leave);
    }
}
