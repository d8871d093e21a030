using System.Text.Json;

namespace Handwheel.Membership;

/// <summary>Touch-offs felt for on the metal point by point.</summary>
internal static class Feeling
{
    private const double Step = 0.4;

    // Where the axis truly stands as it touches; null where nothing is met.
    internal static double? Find(Replay so, JsonElement one, Setting setting, int axis, int towards, double[] truth, double[] offset, IReadOnlyList<Layer> layers)
    {
        var place = Course.Place(one, "at");
        var at = new Vec(place.X + offset[0], place.Y + offset[1], place.Z + offset[2]);
        var (half, paper) = (Course.Number(one, "half"), Course.Number(one, "paper"));
        var toPart = setting.FromPart.Then(setting.Turned(truth[3])).Back();
        bool Metal(Vec p) => so.Metal(toPart.Of(p));
        switch (Course.Word(one, "on"))
        {
            case "rotary centre":
                return setting.Turns ? axis switch { 0 => setting.Centre.X, 1 => setting.Centre.Y, 2 => setting.Centre.Z, _ => 0 } : null;
            case "fixture":
                return OnFixture(setting, Course.Word(one, "surface"), axis, towards, half + paper);
            case "axis":
                return OnAxis(Metal, at, axis);
            default:
                return axis == 3 ? truth[3] : axis == 2 ? Down(Metal, at, towards, paper, layers, so.Heights(toPart.Back())) : Across(Metal, at, axis, towards, half, paper);
        }
    }

    private static double? OnFixture(Setting setting, string surface, int axis, int towards, double off)
    {
        if (axis == 3)
        {
            return 0;
        }

        var f = setting.Fixtures.FirstOrDefault(x => x.Name == surface) ?? setting.Fixtures.FirstOrDefault(x => surface.Contains(x.Name, StringComparison.Ordinal));
        if (f is null)
        {
            return null;
        }

        var (least, most) = axis switch
        {
            0 => (f.Least.X - (f.Across / 2), f.Most.X + (f.Across / 2)),
            1 => (f.Least.Y - (f.Across / 2), f.Most.Y + (f.Across / 2)),
            _ => (f.Least.Z, f.Most.Z),
        };
        return (towards < 0 ? most : least) - (towards * off);
    }

    // First metal met along a line, coming from far, refined by halves; null for none.
    private static double? First(Func<double, bool> metal, double far, double near)
    {
        var step = Math.Sign(near - far) * Step;
        for (var t = far; (near - t) * step > 0; t += step)
        {
            if (metal(t))
            {
                var (air, solid) = (t - step, t);
                for (var i = 0; i < 45; i++)
                {
                    var middle = (air + solid) / 2;
                    (air, solid) = metal(middle) ? (air, middle) : (middle, solid);
                }

                return solid;
            }
        }

        return null;
    }

    // The end of the metal that holds a place, going towards air; null where the place is in air.
    private static double? Top(Func<double, bool> metal, double from, double far)
    {
        var way = Math.Sign(far - from);
        if (!metal(from + (way * 1e-9)))
        {
            return null;
        }

        var (solid, air) = (from, from + (way * 1e-3));
        while (metal(air) && (far - air) * way > 0)
        {
            (solid, air) = (air, air + (2 * (air - solid)));
        }

        for (var i = 0; i < 60; i++)
        {
            var middle = (solid + air) / 2;
            (solid, air) = metal(middle) ? (middle, air) : (solid, middle);
        }

        return solid;
    }

    // Felt for on rings no further apart than a millimetre and a half, then closer and closer about the best place.
    private static double? Down(Func<Vec, bool> metal, Vec at, int towards, double paper, IReadOnlyList<Layer> layers, (double Low, double High) heights)
    {
        var cutting = layers.Where(l => l.Cuts).ToArray();
        var reach = cutting.Length == 0 ? 0 : 0.999 * cutting.Max(l => Math.Max(l.R0, l.R1));
        var rings = (int)Math.Max(6, Math.Ceiling(reach / 1.5));
        (double Stands, double X, double Y)? best = null;
        void Try(double x, double y)
        {
            if (Rise(cutting, Math.Sqrt((x * x) + (y * y)), towards) is not { } rise)
            {
                return;
            }

            var (far, near) = towards < 0 ? (heights.High, heights.Low) : (heights.Low, heights.High);
            bool In(double z) => metal(new(at.X + x, at.Y + y, z));
            if (best is { } sofar)
            {
                // Only what stands higher than the best so far matters; a ridge thinner than a step is met from below.
                near = sofar.Stands + rise + (towards * paper);
            }

            if ((First(In, far, near) ?? Top(In, near, far)) is { } surface)
            {
                var stands = surface - rise - (towards * paper);
                if (best is null || (stands - best.Value.Stands) * towards < 0)
                {
                    best = (stands, x, y);
                }
            }
        }

        for (var ring = 0; ring <= rings; ring++)
        {
            var r = reach * ring / rings;
            var spokes = ring == 0 ? 1 : (int)Math.Max(20, Math.Ceiling(2 * Math.PI * r / 1.5));
            for (var k = 0; k < spokes; k++)
            {
                var (s, c) = Math.SinCos(2 * Math.PI * k / spokes);
                Try(r * c, r * s);
            }
        }

        for (var step = 1.0; best is not null && step > 1e-7; step /= 2)
        {
            var (_, x, y) = best.Value;
            for (var k = 0; k < 8; k++)
            {
                var (s, c) = Math.SinCos(Math.PI * k / 4);
                var (u, v) = (x + (step * c), y + (step * s));
                if ((u * u) + (v * v) <= reach * reach)
                {
                    Try(u, v);
                }
            }
        }

        return best?.Stands;
    }

    // How far above its lowest point a cutter's edge stands at a radius: the first height, going up, at which it is as wide.
    private static double? Rise(Layer[] cutting, double r, int towards)
    {
        if (cutting.Length == 0)
        {
            return 0;
        }

        double? found = null;
        foreach (var l in cutting)
        {
            for (var i = 0; i <= 50; i++)
            {
                var z = l.Z0 + ((l.Z1 - l.Z0) * i / 50);
                if (l.At(z) >= r && l.Inner <= r)
                {
                    found = found is null ? z : towards < 0 ? Math.Min(found.Value, z) : Math.Max(found.Value, z);
                }
            }
        }

        return found;
    }

    private static double? Across(Func<Vec, bool> metal, Vec at, int axis, int towards, double half, double paper)
    {
        double? best = null;
        for (var level = 0; level < 3; level++)
        {
            for (var i = -6; i <= 6; i++)
            {
                var off = half * i / 6;
                var z = at.Z + level;
                var met = First(t => metal(axis == 0 ? new(t, at.Y + off, z) : new(at.X + off, t, z)), towards < 0 ? 200 : -200, towards < 0 ? -200 : 200);
                if (met is { } surface)
                {
                    var stands = surface - (towards * (Math.Sqrt(Math.Max(0, (half * half) - (off * off))) + paper));
                    best = best is null ? stands : towards < 0 ? Math.Max(best.Value, stands) : Math.Min(best.Value, stands);
                }
            }
        }

        return best;
    }

    // The middle of the narrowest hole about the place (of the boss, where metal is there), by halves along X and Y in turn.
    private static double? OnAxis(Func<Vec, bool> metal, Vec at, int axis)
    {
        var (best, narrowest) = ((double?)null, double.PositiveInfinity);
        for (var z = 30.0; z > -60; z -= 0.7)
        {
            var (x, y, width) = (at.X, at.Y, 0.0);
            var known = true;
            for (var turn = 0; turn < 6 && known; turn++)
            {
                known = Middle(t => metal(new(t, y, z)), ref x, ref width);
                var wide = width;
                known = known && Middle(t => metal(new(x, t, z)), ref y, ref width);
                width = Math.Max(wide, width);
            }

            if (known && width < narrowest)
            {
                (best, narrowest) = (axis == 0 ? x : y, width);
            }
        }

        return best;
    }

    private static bool Middle(Func<double, bool> metal, ref double at, ref double width)
    {
        var inside = metal(at);
        var from = at;
        var up = Edge(t => metal(t) != inside, from, 1);
        var down = Edge(t => metal(t) != inside, from, -1);
        if (up is not { } u || down is not { } d)
        {
            return false;
        }

        (at, width) = ((u + d) / 2, u - d);
        return true;
    }

    private static double? Edge(Func<double, bool> other, double from, int way)
    {
        for (var t = 0.1; t < 60; t += 0.1)
        {
            if (other(from + (way * t)))
            {
                var (a, b) = (t - 0.1, t);
                for (var i = 0; i < 45; i++)
                {
                    var m = (a + b) / 2;
                    (a, b) = other(from + (way * m)) ? (a, m) : (m, b);
                }

                return from + (way * b);
            }
        }

        return null;
    }
}
