namespace Handwheel.Membership;

/// <summary>What work by hand takes.</summary>
internal static class Handwork
{
    internal static Func<Vec, double, bool> Press(CutterFacts c, Vec at, Vec way, double depth, double turn)
    {
        var back = Facing(at, way).Then(Frame.Turn('Z', -turn));
        var half = c.Across / 2;
        var sides = c.Sides >= 3 ? c.Sides : 4;
        return (p, room) =>
        {
            var q = back.Of(p);
            if (q.Z < -depth - room || q.Z > room)
            {
                return false;
            }

            if (c.OtherSide > 0)
            {
                return Math.Abs(q.X) < half + room && Math.Abs(q.Y) < (c.OtherSide / 2) + room;
            }

            for (var i = 0; i < sides; i++)
            {
                var (s, n) = Math.SinCos(2 * Math.PI * i / sides);
                if ((q.X * n) + (q.Y * s) >= half + room)
                {
                    return false;
                }
            }

            return true;
        };
    }

    internal static Func<Vec, double, bool> Run(CutterFacts c, Vec at, Vec way, double depth) =>
        new Sweep(0, Facing(at, way), Layers.Of(c), new(0, 0, 1), new(0, 0, -depth)).Takes;

    // All between the two faces of the saw that went there last.
    internal static Func<Vec, double, bool>? Web(Sweep? saw)
    {
        if (saw is null)
        {
            return null;
        }

        var edge = saw.All.First(l => l.Cuts);
        return (p, room) =>
        {
            var h = saw.FromPart.Of(p).Z - saw.To.Z;
            return h > edge.Z0 - room && h < edge.Z1 + room;
        };
    }

    // All on the saw's far side from the part: it is taken away before the work is held again.
    internal static Func<Vec, double, bool> Beyond(Sweep saw, Func<Vec, bool> part)
    {
        var toPart = saw.FromPart.Back();
        var edge = saw.All.First(l => l.Cuts);
        int above = 0, below = 0;
        for (var x = -60.0; x <= 60; x += 3)
        {
            for (var y = -60.0; y <= 60; y += 3)
            {
                for (var h = 0.5; h < 40; h += 2)
                {
                    above += part(toPart.Of(new(x, y, saw.To.Z + edge.Z1 + h))) ? 1 : 0;
                    below += part(toPart.Of(new(x, y, saw.To.Z + edge.Z0 - h))) ? 1 : 0;
                }
            }
        }

        var sign = above >= below ? -1 : 1;
        var face = sign < 0 ? saw.To.Z + edge.Z0 : saw.To.Z + edge.Z1;
        return (p, room) => sign * (saw.FromPart.Of(p).Z - face) > -room;
    }

    internal static Func<Vec, double, bool> Slab(Vec at, Vec way, double from, double to) => (p, room) =>
    {
        var h = (p - at).Dot(way);
        return h > from - room && h < to + room;
    };

    // Rubbed flat down to where what is kept ends.
    internal static Func<Vec, double, bool> Rub(Vec at, Vec way, double depth, Func<Vec, bool> kept)
    {
        var ends = 0.0;
        for (var t = -depth; t < depth + 1; t += 0.01)
        {
            if (kept(at + (way * t)) && !kept(at + (way * (t + 0.01))))
            {
                var (a, b) = (t, t + 0.01);
                for (var i = 0; i < 45; i++)
                {
                    var m = (a + b) / 2;
                    (a, b) = kept(at + (way * m)) ? (m, b) : (a, m);
                }

                ends = Math.Max(ends, a);
                break;
            }
        }

        return Slab(at, way, ends, Math.Max(depth, ends + 1e-3));
    }

    internal static Func<Vec, double, bool> File(Vec at, Vec way, double depth, Func<Vec, bool> kept)
    {
        var slab = Slab(at, way, -0.5, depth);
        return (p, room) => slab(p, room) && !kept(p);
    }

    // From the part frame to one whose -Z looks the way the work goes.
    private static Frame Facing(Vec at, Vec way)
    {
        var there = Frame.Shift(at * -1);
        if (way.Z < -1 + 1e-12)
        {
            return there;
        }

        if (way.Z > 1 - 1e-12)
        {
            return there.Then(Frame.Turn('X', -180));
        }

        var tilt = Math.Acos(Math.Clamp(-way.Z, -1, 1)) * 180 / Math.PI;
        var turn = Math.Atan2(-way.Y, -way.X) * 180 / Math.PI;
        return there.Then(Frame.Turn('Z', -turn)).Then(Frame.Turn('Y', -tilt));
    }
}
