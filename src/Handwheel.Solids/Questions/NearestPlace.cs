using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

// The nearest place of a solid's surface, on a face, an edge or a corner. Whatever is nearest is in sight, so lines from the point
// are looked along; every place noted is one of the surface, so an answer is never nearer than the truth. Where to look is told by the planes met so far: the nearest place of one plane, of
// the line two share, of the corner three share, is aimed at as long as it would be nearer than what is known.
internal sealed class NearestPlace(Solid solid)
{
    private readonly SurfaceSight sight = new(solid);
    private readonly HashSet<(int, int, int)> tried = [];
    // The normals of the planes last found to matter, nearest first.
    internal IEnumerable<Vector3> Normals => Hits.Select(h => h.Normal);

    private IReadOnlyList<MetPlace> Hits => sight.Met.All;

    // Null when no line meets the surface. Hints are directions that are likely; with all, every direction of a fixed star is looked along too.
    internal MetPlace? Find(Point3 p, IReadOnlyList<Vector3> hints, bool all)
    {
        sight.From(p);
        tried.Clear();
        foreach (var u in hints)
        {
            sight.Look(u);
            sight.Look(-u);
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
                MeetRound(Hits[0].Place, Hits[0].Normal);
                other = Beside();
            }

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
            // What the last bits give away is no step forward.
            step /= Hits[0].Distance < before - (1e-6 * step) ? 1 : 3;
        }
    }

    // Faces round a place, met from just beneath a plane through it: seen from the point they may all be hidden behind an edge.
    private void MeetRound(Point3 place, Vector3 normal)
    {
        var beneath = place + (normal * ((sight.Within ? 1e-6 : -1e-6) * (1 + Hits[0].Distance)));
        var u = normal.Cross(Math.Abs(normal.Z) < 0.9 ? Vector3.UnitZ : Vector3.UnitX).ToUnit();
        var v = normal.Cross(u);
        for (var k = 0; k < 8; k++)
        {
            var (sin, cos) = Math.SinCos((k + 0.3) * Turn.Full / 8);
            sight.Ahead(new Line3(beneath, (u * cos) + (v * sin)));
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
            var beyond = (sight.Within ? na + nb : -na - nb).ToUnit();
            var beneath = at + (beyond * (1e-4 * (1 + a.Distance)));
            if (sight.Across(beneath, na) is not { } pa || sight.Across(beneath, nb) is not { } pb)
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
            var aim = at + ((sight.Within ? na + nb : -na - nb).ToUnit() * (more * (1 + a.Distance))) - sight.Point;
            sight.Look(aim.ToUnit());
        }

        var under = at + ((sight.Within ? na + nb : -na - nb).ToUnit() * 1e-7);
        _ = sight.Across(under, na);
        _ = sight.Across(under, nb);
    }

    // Along the star, and at places spread over the solid's bounds.
    private void LookAround()
    {
        foreach (var u in Star.Directions)
        {
            sight.Look(u);
        }

        var box = solid.Bounds;
        var size = box.Size;
        for (var i = 0; i < 27 && double.IsFinite(size.Length); i++)
        {
            var at = box.Min + new Vector3(size.X * (0.03 + (0.47 * (i % 3))), size.Y * (0.03 + (0.47 * (i / 3 % 3))), size.Z * (0.03 + (0.47 * (i / 9))));
            sight.Look((at - sight.Point).ToUnit());
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
                sight.Look((d + (u * (turn * c)) + (v * (turn * s))).ToUnit());
            }

            if (Hits[0].Distance < before)
            {
                Improve();
                AlongTheEdge();
            }

            turn /= Hits[0].Distance < before - (1e-6 * turn * (1 + before)) ? 1 : 3;
        }

        return Hits[0];
    }

    // Aims at every nearest place of one, two or three planes that would be nearer; true when one was.
    private bool Improve()
    {
        var (known, names) = (Hits[0].Distance, sight.Met.Names);
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

        return Hits[0].Distance < known - 1e-13 || sight.Met.Names > names;
    }

    private void Aim(ReadOnlySpan<MetPlace> planes)
    {
        var name = (planes[0].Name, planes.Length > 1 ? planes[1].Name : -1, planes.Length > 2 ? planes[2].Name : -1);

        // A plane alone may stand for a curved face, whose own nearest place is nearer than its plane tells.
        var least = planes.Length == 1 ? planes[0].Distance * (1 - 1e-9) : Hits[0].Distance - 1e-12;
        if (Shared(planes) is not { } at || !(sight.Point.DistanceTo(at) < least) || !tried.Add(name))
        {
            return;
        }

        // A little beyond the shared place, so that the line meets what the planes stand for: behind the faces as seen from the point.
        var beyond = default(Vector3);
        foreach (var plane in planes)
        {
            beyond += sight.Within ? plane.Normal : -plane.Normal;
        }

        beyond = beyond.ToUnit();
        var away = sight.Point.DistanceTo(at);
        foreach (var more in (ReadOnlySpan<double>)[1e-10, 1e-8, 1e-6, 1e-4])
        {
            var aim = at + (beyond * (more * (1 + away))) - sight.Point;
            if (aim.Length > 0 && sight.Look(aim.ToUnit()) is { } reached && reached <= away + (10 * more * (1 + away)))
            {
                MeetAgain(sight.Point + (aim.ToUnit() * reached), planes, beyond, Math.Max(1e-6, more));
                return;
            }
        }

        BesideTheSurface(at, beyond, planes);
    }

    // The place aimed at is no place of the surface: what ends there is looked for from the nearest place known on one of the planes.
    private void BesideTheSurface(Point3 at, Vector3 beyond, ReadOnlySpan<MetPlace> planes)
    {
        var on = planes[0].Place;
        foreach (var plane in planes)
        {
            on = plane.Place.DistanceTo(at) < on.DistanceTo(at) ? plane.Place : on;
        }

        if (planes.Length == 1)
        {
            MeetRound(at, planes[0].Normal);
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

        var beneath = at + (beyond * (inset * (1 + sight.Point.DistanceTo(at))));
        foreach (var plane in planes)
        {
            _ = sight.Across(beneath, plane.Normal);
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
            var aim = on + ((off - on) * middle) + inset - sight.Point;
            if (aim.Length > 0 && sight.Look(aim.ToUnit()) is { } reached && reached <= aim.Length + (0.5 * length))
            {
                lo = middle;
            }
            else
            {
                hi = middle;
            }
        }

        var towards = on + ((off - on) * lo) + inset - sight.Point;
        if (!(towards.Length > 0) || sight.Look(towards.ToUnit()) is not { } last)
        {
            return;
        }

        MeetAgain(sight.Point + (towards.ToUnit() * last), planes, beyond, 1e-6);

        // Further back than beneath, as the edge may be sharp.
        var ahead = (off - on).ToUnit();
        var beneath = sight.Point + (towards.ToUnit() * last) + (beyond * (1e-7 * (1 + last))) - (ahead * (2e-6 * (1 + last)));
        sight.Ahead(new Line3(beneath, ahead));
    }

    // The place nearest to the point that lies on all the planes.
    private Point3? Shared(ReadOnlySpan<MetPlace> planes)
    {
        var a = planes[0];
        var p = sight.Point - (a.Normal * (sight.Point - a.Place).Dot(a.Normal));
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
}
