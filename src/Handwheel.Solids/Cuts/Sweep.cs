using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Cuts;

// One layer of a cutter along one path, against one line of the cutter's frame: picks the form that is closed for it.
internal static class Sweep
{
    internal static void Sound(Slab s, CutterPath path, in Line3 line, bool closed, SpanList into)
    {
        var start = into.Count;
        Vector3 u = line.Direction, d = path.To - path.From;
        var p = line.Origin - path.From;
        var shift = -p.Dot(u) / u.Dot(u);
        var ray = new Ray(p + (u * shift), u, double.NegativeInfinity, double.PositiveInfinity);
        if (u.X == 0 && u.Y == 0)
        {
            ray = ray with { P = ray.P with { X = p.X, Y = p.Y } };
        }
        else if (u.Z == 0)
        {
            ray = ray with { P = ray.P with { Z = p.Z } };
        }

        if (path.IsLevel)
        {
            Level(s, path, d, ray, closed, into);
        }
        else
        {
            Slanted(s, d, ray, closed, into);
        }

        for (var i = start; i < into.Count; i++)
        {
            into[i] = into[i] with { From = into[i].From + shift, To = into[i].To + shift };
        }
    }

    private static void Level(Slab s, CutterPath path, Vector3 d, in Ray ray, bool closed, SpanList into)
    {
        var origin = new Vector3(path.From.X, path.From.Y, 0);
        if (ray.U.X == 0 && ray.U.Y == 0)
        {
            LevelSweep.SoundAlongAxis(s, path, ray, origin, closed, into);
        }
        else if (path.Kind != PathKind.Arc && s.IsConvex && (!s.IsTorus || ray.U.Z == 0))
        {
            Quadric.Swept(s, d, ray, closed, into);
        }
        else
        {
            LevelSweep.Sound(s, path, ray, origin, closed, into);
        }
    }

    private static void Slanted(Slab s, Vector3 d, in Ray ray, bool closed, SpanList into)
    {
        // At the very top and bottom of the sweep a level line only touches.
        if (ray.U.Z == 0 && !closed && (ray.P.Z <= Math.Min(0, d.Z) + s.Z0 || ray.P.Z >= Math.Max(0, d.Z) + s.Z1))
        {
            return;
        }

        if (s.IsHollow)
        {
            SlantedSweep.SoundHollow(s, d, ray, closed, into);
        }
        else if (!s.IsTorus)
        {
            Quadric.Swept(s, d, ray, closed: true, into);
        }
        else
        {
            SlantedSweep.SoundTorus(s, d, ray, closed, into);
        }
    }
}
