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
                return axis == 3 ? truth[3] : axis == 2 ? Down(Metal, at, towards, paper, layers) : Across(Metal, at, axis, towards, half, paper);
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

    private static double? Down(Func<Vec, bool> metal, Vec at, int towards, double paper, IReadOnlyList<Layer> layers)
    {
        double? tip = null;
        var cutting = layers.Where(l => l.Cuts).ToArray();
        var reach = cutting.Length == 0 ? 0 : cutting.Max(l => Math.Max(l.R0, l.R1));
        for (var ring = 0; ring <= 6; ring++)
        {
            var r = reach * (ring == 6 ? 0.999 : ring / 6.0);
            if (Rise(cutting, r, towards) is not { } rise)
            {
                continue;
            }

            for (var k = 0; k < (ring == 0 ? 1 : 20); k++)
            {
                var (s, c) = Math.SinCos(2 * Math.PI * k / 20);
                var met = First(z => metal(new(at.X + (r * c), at.Y + (r * s), z)), towards < 0 ? 60 : -120, towards < 0 ? -120 : 60);
                if (met is { } surface)
                {
                    var stands = surface - rise - (towards * paper);
                    tip = tip is null ? stands : towards < 0 ? Math.Max(tip.Value, stands) : Math.Min(tip.Value, stands);
                }
            }
        }

        return tip;
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
