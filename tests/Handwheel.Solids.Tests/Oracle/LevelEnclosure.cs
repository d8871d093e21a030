using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Tests.Oracle;

/// <summary>
/// The depth inside a cutter swept along a level path, over a whole stretch of a line: distances from points, straight lines and arcs are brought into forms in which
/// the place along the line stands once, so that the enclosure is no wider than rounding makes it.
/// </summary>
internal sealed class LevelEnclosure
{
    private readonly CutterShape cutter;
    private readonly CutterPath path;
    private readonly Line3 line;
    private readonly Enclosure endX, endY;

    public LevelEnclosure(CutterShape cutter, CutterPath path, Line3 line)
    {
        (this.cutter, this.path, this.line) = (cutter, path, line);
        (endX, endY) = (path.To.X, path.To.Y);
        if (path.Kind == PathKind.Arc)
        {
            var exact = Exact.SinCos(path.Sweep);
            Enclosure sin = Enclosure.Of(exact.Sin), cos = Enclosure.Of(exact.Cos);
            Enclosure rx = (Enclosure)path.From.X - path.Centre.X, ry = (Enclosure)path.From.Y - path.Centre.Y;
            (endX, endY) = (path.Centre.X + ((cos * rx) - (sin * ry)), path.Centre.Y + ((sin * rx) + (cos * ry)));
        }
    }

    /// <summary>The depth over a stretch of the line.</summary>
    /// <param name="t">The stretch.</param>
    public Enclosure Depth(Enclosure t)
    {
        var z = (Enclosure)line.Origin.Z - path.From.Z + (line.Direction.Z * t);
        var (near, far) = Distances(t);
        var best = new Enclosure(double.NegativeInfinity, double.NegativeInfinity);
        foreach (var piece in cutter.Pieces.Where(p => p.Cuts))
        {
            best = Enclosure.Max(best, PieceEnclosure.Inside(piece, near, far, z));
        }

        return best;
    }

    private (Enclosure Near, Enclosure Far) Distances(Enclosure t)
    {
        var a = From(path.From.X, path.From.Y, t);
        var b = From(endX, endY, t);
        if (path.Kind == PathKind.Arc)
        {
            return ArcDistances(t, a, b);
        }

        Enclosure dx = endX - path.From.X, dy = endY - path.From.Y;
        var far = Enclosure.Max(a, b);
        var length = Enclosure.Hypot(dx, dy);
        if (length.Lo <= 0)
        {
            return (Enclosure.Min(a, b), far);
        }

        Enclosure ox = (Enclosure)line.Origin.X - path.From.X, oy = (Enclosure)line.Origin.Y - path.From.Y;
        var along = (ox * dx) + (oy * dy) + (t * ((line.Direction.X * dx) + (line.Direction.Y * dy)));
        var aside = ((ox * dy) - (oy * dx) + (t * ((line.Direction.X * dy) - (line.Direction.Y * dx)))).Abs() / length;
        var whole = length.Square();
        return (along.Hi <= 0 ? a : along.Lo >= whole.Hi ? b : along.Lo >= 0 && along.Hi <= whole.Lo ? aside : new(aside.Lo, Math.Min(a.Hi, b.Hi)), far);
    }

    private (Enclosure Near, Enclosure Far) ArcDistances(Enclosure t, Enclosure a, Enclosure b)
    {
        var rho = From(path.Centre.X, path.Centre.Y, t);
        var radius = Enclosure.Hypot((Enclosure)path.From.X - path.Centre.X, (Enclosure)path.From.Y - path.Centre.Y);
        Enclosure between = (rho - radius).Abs(), beyond = rho + radius, ends = Enclosure.Min(a, b), farEnds = Enclosure.Max(a, b);
        return (
            OnArc(t, 1) switch { true => between, false => ends, null => new(between.Lo, ends.Hi) },
            OnArc(t, -1) switch { true => beyond, false => farEnds, null => new(farEnds.Lo, beyond.Hi) });
    }

    // Whether the direction from the centre (or the opposite one) lies within the sweep; null where it may or may not.
    private bool? OnArc(Enclosure t, int way)
    {
        var sweep = Math.Abs(path.Sweep);
        if (sweep > 6.2831853071795866)
        {
            return true;
        }

        double sense = path.Sweep < 0 ? -way : way;
        Enclosure rx = (Enclosure)path.From.X - path.Centre.X, ry = (Enclosure)path.From.Y - path.Centre.Y;
        Enclosure ex = endX - path.Centre.X, ey = endY - path.Centre.Y;
        Enclosure ox = (Enclosure)line.Origin.X - path.Centre.X, oy = (Enclosure)line.Origin.Y - path.Centre.Y;
        var fromStart = sense * ((rx * oy) - (ry * ox) + (t * ((rx * line.Direction.Y) - (ry * line.Direction.X))));
        var toEnd = sense * ((ox * ey) - (oy * ex) + (t * ((line.Direction.X * ey) - (line.Direction.Y * ex))));
        if (sweep <= Math.PI)
        {
            return fromStart.Lo > 0 && toEnd.Lo > 0 ? true : fromStart.Hi < 0 || toEnd.Hi < 0 ? false : null;
        }

        return fromStart.Lo > 0 || toEnd.Lo > 0 ? true : fromStart.Hi < 0 && toEnd.Hi < 0 ? false : null;
    }

    // Distance in plan from a point: sqrt(a (t + b/a)^2 + c^2 / a).
    private Enclosure From(Enclosure x, Enclosure y, Enclosure t)
    {
        Enclosure ox = line.Origin.X - x, oy = line.Origin.Y - y, dx = line.Direction.X, dy = line.Direction.Y;
        var a = dx.Square() + dy.Square();
        if (a.Lo <= 1e-12)
        {
            return Enclosure.Hypot(ox + (dx * t), oy + (dy * t));
        }

        var cross = (ox * dy) - (oy * dx);
        var plain = Enclosure.Hypot(ox + (dx * t), oy + (dy * t));
        var once = ((a * (t + (((ox * dx) + (oy * dy)) / a)).Square()) + (cross.Square() / a)).Sqrt();
        return new(Math.Max(plain.Lo, once.Lo), Math.Min(plain.Hi, once.Hi));
    }
}
