using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

// The nearest place of a solid's surface, on a face, an edge or a corner. Whatever is nearest is in sight, so lines from the point
// are looked along; every place noted is one of the surface, so an answer is never nearer than the truth. Where to look is told by the planes met so far: the nearest place of one plane, of
// the line two share, of the corner three share, is aimed at as long as it would be nearer than what is known.
internal sealed class NearestPlace(Solid solid)
{
    private readonly MetPlaces met = new();
    private readonly HashSet<(int, int, int)> tried = [];
    private Point3 from;
    private bool within;

    // The normals of the planes last found to matter, nearest first.
    internal IEnumerable<Vector3> Normals => Hits.Select(h => h.Normal);

    private IReadOnlyList<MetPlace> Hits => met.All;

    // Null when no line meets the surface. Hints are directions that are likely; with all, every direction of a fixed star is looked along too.
    internal MetPlace? Find(Point3 p, IReadOnlyList<Vector3> hints, bool all)
    {
        from = p;
        within = solid.Contains(p);
        met.Start(p);
        tried.Clear();
        foreach (var u in hints)
        {
            Look(u);
            Look(-u);
        }

        if (all || Hits.Count == 0)
        {
            LookAround();
        }

        for (var i = 0; i < 12 && Hits.Count > 0 && Improve(); i++)
        {
            // Each round aims by the planes of the last.
        }

        AlongTheEdge();
        return Hits.Count > 0 ? Hits[0] : null;
    }

    // Where the nearest place lies on the edge of two faces, the edge is gone along both ways by steps ever smaller: it may be curved.
    private void AlongTheEdge()
    {
        if (Hits.Count == 0)
        {
            return;
        }

        var step = 0.1 * Hits[0].Distance;
        for (var i = 0; i < 80 && step > 1e-8; i++)
        {
            var other = Beside();
            if (other < 0)
            {
                return;
            }

            MetPlace a = Hits[0], b = Hits[other];
            var along = a.Normal.Cross(b.Normal).ToUnit();
            var before = Hits[0].Distance;
            OnEdge(a.Place, a, b);
            OnEdge(a.Place + (along * step), a, b);
            OnEdge(a.Place - (along * step), a, b);
            step /= Hits[0].Distance < before - 1e-12 ? 1 : 3;
        }
    }

    // The place of another face that is nearest to the nearest, when not far from it.
    private int Beside()
    {
        var (found, least) = (-1, 0.1 * (1 + Hits[0].Distance));
        for (var i = 1; i < Hits.Count; i++)
        {
            var away = Hits[i].Place.DistanceTo(Hits[0].Place);
            if (away < least && Hits[i].Surface != Hits[0].Surface && (Hits[i].Normal - Hits[0].Normal).Length > 0.02)
            {
                (found, least) = (i, away);
            }
        }

        return found;
    }

    // The edge's place near one beside it: both faces met again there, from beneath, and where their planes cross; that place is looked at.
    private void OnEdge(Point3 at, in MetPlace a, in MetPlace b)
    {
        Vector3 na = a.Normal, nb = b.Normal;
        for (var i = 0; i < 3; i++)
        {
            var beyond = (within ? na + nb : -na - nb).ToUnit();
            var beneath = at + (beyond * (1e-4 * (1 + a.Distance)));
            if (Across(beneath, na) is not { } pa || Across(beneath, nb) is not { } pb)
            {
                return;
            }

            (na, nb) = (pa.Normal, pb.Normal);
            var down = nb - (na * na.Dot(nb));
            if (!(down.Length > 1e-6))
            {
                return;
            }

            at -= na * (at - pa.Place).Dot(na);
            at -= down.ToUnit() * ((at - pb.Place).Dot(nb) / down.ToUnit().Dot(nb));
        }

        foreach (var more in (ReadOnlySpan<double>)[1e-11, 1e-9])
        {
            var aim = at + ((within ? na + nb : -na - nb).ToUnit() * (more * (1 + a.Distance))) - from;
            Look(aim.ToUnit());
        }

        var under = at + ((within ? na + nb : -na - nb).ToUnit() * 1e-7);
        _ = Across(under, na);
        _ = Across(under, nb);
    }

    // The surface nearest along a normal, noted.
    private (Point3 Place, Vector3 Normal)? Across(Point3 at, Vector3 normal)
    {
        var line = new Line3(at, normal);
        using var rented = SpanPool.Rent(out var list);
        solid.Sound(line, closed: true, list);
        list.Normalise();
        var (nearest, face) = (double.PositiveInfinity, default(SurfaceId));
        foreach (ref readonly var span in list.Items)
        {
            (nearest, face) = Math.Abs(span.From) < Math.Abs(nearest) ? (span.From, span.FromSurface) : (nearest, face);
            (nearest, face) = Math.Abs(span.To) < Math.Abs(nearest) ? (span.To, span.ToSurface) : (nearest, face);
        }

        if (Note(line, nearest, face) is null)
        {
            return null;
        }

        var place = line.At(nearest);
        return (place, solid.NormalAt(face, place));
    }

    // Along the star, and at places spread over the solid's bounds.
    private void LookAround()
    {
        foreach (var u in Star.Directions)
        {
            Look(u);
        }

        var box = solid.Bounds;
        var size = box.Size;
        for (var i = 0; i < 27 && double.IsFinite(size.Length); i++)
        {
            var at = box.Min + new Vector3(size.X * (0.03 + (0.47 * (i % 3))), size.Y * (0.03 + (0.47 * (i / 3 % 3))), size.Z * (0.03 + (0.47 * (i / 9))));
            Look((at - from).ToUnit());
        }
    }

    // The same, then the direction itself turned a little every way, as long as that is nearer.
    internal MetPlace? FindClosely(Point3 p, IReadOnlyList<Vector3> hints)
    {
        if (Find(p, hints, all: true) is null)
        {
            return null;
        }

        var turn = 0.1;
        for (var i = 0; i < 80 && turn > 1e-9; i++)
        {
            var before = Hits[0].Distance;
            var d = (Hits[0].Place - p).ToUnit();
            var u = d.Cross(Math.Abs(d.Z) < 0.9 ? Vector3.UnitZ : Vector3.UnitX).ToUnit();
            var v = d.Cross(u);
            for (var k = 0; k < 7; k++)
            {
                var (s, c) = Math.SinCos(k * Turn.Full / 7);
                Look((d + (u * (turn * c)) + (v * (turn * s))).ToUnit());
            }

            if (Hits[0].Distance < before)
            {
                Improve();
                AlongTheEdge();
            }

            turn /= Hits[0].Distance < before - 1e-12 ? 1 : 3;
        }

        return Hits[0];
    }

    // Aims at every nearest place of one, two or three planes that would be nearer; true when one was.
    private bool Improve()
    {
        var (known, names) = (Hits[0].Distance, met.Names);
        var planes = Hits.ToArray();
        tried.Clear();
        for (var i = 0; i < planes.Length; i++)
        {
            Aim([planes[i]]);
            for (var j = i + 1; j < planes.Length; j++)
            {
                Aim([planes[i], planes[j]]);
                for (var k = j + 1; k < planes.Length; k++)
                {
                    Aim([planes[i], planes[j], planes[k]]);
                }
            }
        }

        return Hits[0].Distance < known - 1e-13 || met.Names > names;
    }

    private void Aim(ReadOnlySpan<MetPlace> planes)
    {
        var name = (planes[0].Name, planes.Length > 1 ? planes[1].Name : -1, planes.Length > 2 ? planes[2].Name : -1);
        if (Shared(planes) is not { } at || !(from.DistanceTo(at) < Hits[0].Distance - 1e-12) || !tried.Add(name))
        {
            return;
        }

        // A little beyond the shared place, so that the line meets what the planes stand for: behind the faces as seen from the point.
        var beyond = default(Vector3);
        foreach (var plane in planes)
        {
            beyond += within ? plane.Normal : -plane.Normal;
        }

        beyond = beyond.ToUnit();
        var away = from.DistanceTo(at);
        foreach (var more in (ReadOnlySpan<double>)[1e-10, 1e-8, 1e-6, 1e-4])
        {
            var aim = at + (beyond * (more * (1 + away))) - from;
            if (aim.Length > 0 && Look(aim.ToUnit()) is { } reached && reached <= away + (10 * more * (1 + away)))
            {
                MeetAgain(from + (aim.ToUnit() * reached), planes, beyond, Math.Max(1e-6, more));
                return;
            }
        }

        // The place already known on one of the planes that is nearest to the one aimed at.
        var on = planes[0].Place;
        foreach (var plane in planes)
        {
            on = plane.Place.DistanceTo(at) < on.DistanceTo(at) ? plane.Place : on;
        }

        OverTheEdge(on, at, beyond, planes);
        MeetAgain(at, planes, beyond, 1e-6);
        MeetAgain(at, planes, beyond, 1e-3);
    }

    // Each of the faces met again, from just beneath a place, so that its plane is the one it has there.
    private void MeetAgain(Point3 at, ReadOnlySpan<MetPlace> planes, Vector3 beyond, double inset)
    {
        if (planes.Length == 1)
        {
            return;
        }

        var beneath = at + (beyond * (inset * (1 + from.DistanceTo(at))));
        foreach (var plane in planes)
        {
            _ = Across(beneath, plane.Normal);
        }
    }

    // The shared place is off the surface: between a place on it and that one the surface ends. The last place met is closed in on,
    // and the face that cuts the surface off there is met from just beneath.
    private void OverTheEdge(Point3 on, Point3 off, Vector3 beyond, ReadOnlySpan<MetPlace> planes)
    {
        var length = on.DistanceTo(off);
        var inset = beyond * (1e-9 * (1 + Hits[0].Distance));
        double lo = 0, hi = 1;
        for (var i = 0; i < 34 && (hi - lo) * length > 1e-10; i++)
        {
            var middle = (lo + hi) / 2;
            var aim = on + ((off - on) * middle) + inset - from;
            if (aim.Length > 0 && Look(aim.ToUnit()) is { } reached && reached <= aim.Length + (0.5 * length))
            {
                lo = middle;
            }
            else
            {
                hi = middle;
            }
        }

        var towards = on + ((off - on) * lo) + inset - from;
        if (!(towards.Length > 0) || Look(towards.ToUnit()) is not { } last)
        {
            return;
        }

        MeetAgain(from + (towards.ToUnit() * last), planes, beyond, 1e-6);

        // Further back than beneath, as the edge may be sharp.
        var ahead = (off - on).ToUnit();
        var beneath = from + (towards.ToUnit() * last) + (beyond * (1e-7 * (1 + last))) - (ahead * (2e-6 * (1 + last)));
        var line = new Line3(beneath, ahead);
        using var rented = SpanPool.Rent(out var list);
        solid.Sound(line, closed: true, list);
        list.Normalise();
        foreach (ref readonly var span in list.Items)
        {
            if (span.From > 0)
            {
                Note(line, span.From, span.FromSurface);
                return;
            }

            if (span.To > 0)
            {
                Note(line, span.To, span.ToSurface);
                return;
            }
        }
    }

    // The place nearest to the point that lies on all the planes.
    private Point3? Shared(ReadOnlySpan<MetPlace> planes)
    {
        var a = planes[0];
        var p = from - (a.Normal * (from - a.Place).Dot(a.Normal));
        if (planes.Length == 1)
        {
            return p;
        }

        var b = planes[1];
        var along = a.Normal.Cross(b.Normal);
        if (along.Length < 1e-6)
        {
            return null;
        }

        // Down the first plane to the second.
        var down = (b.Normal - (a.Normal * a.Normal.Dot(b.Normal))).ToUnit();
        p -= down * ((p - b.Place).Dot(b.Normal) / down.Dot(b.Normal));
        if (planes.Length == 2)
        {
            return p;
        }

        var c = planes[2];
        along = along.ToUnit();
        var rate = along.Dot(c.Normal);
        return Math.Abs(rate) < 1e-6 ? null : p - (along * ((p - c.Place).Dot(c.Normal) / rate));
    }

    // The first place met along a direction is noted; how far it is.
    private double? Look(Vector3 u)
    {
        using var rented = SpanPool.Rent(out var list);
        var line = new Line3(from, u);
        solid.Sound(line, closed: true, list);
        list.Normalise();
        foreach (ref readonly var span in list.Items)
        {
            if (span.From >= 0)
            {
                return Note(line, span.From, span.FromSurface);
            }

            if (span.To >= 0)
            {
                return within || span.To > 0 ? Note(line, span.To, span.ToSurface) : 0;
            }
        }

        return null;
    }

    // A place of the surface and its plane; how far along the line it is.
    private double? Note(in Line3 line, double t, SurfaceId surface)
    {
        if (!double.IsFinite(t))
        {
            return null;
        }

        var place = line.At(t);
        if (met.Takes(place))
        {
            met.Add(place, solid.NormalAt(surface, place), surface);
        }

        return t;
    }
}
