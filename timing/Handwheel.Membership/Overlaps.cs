namespace Handwheel.Membership;

/// <summary>Whether a cutter, or what holds it, ran into what holds the work.</summary>
public static class Overlaps
{
    private const double Skin = 1e-6;

    /// <summary>The first overlap of a replay.</summary>
    /// <param name="replay">The replay.</param>
    /// <param name="from">The first event looked at.</param>
    /// <returns>What struck what, in words; null for none.</returns>
    public static string? First(Replay replay, int from)
    {
        foreach (var (sweep, setting, theta0, theta1, _, step, _) in replay.Went)
        {
            if (sweep.Owner < from || setting.Fixtures.Count == 0)
            {
                continue;
            }

            var lowest = Math.Min(sweep.From.Z, sweep.To.Z) + sweep.All.Select(l => l.Z0).DefaultIfEmpty(1e9).Min();
            foreach (var f in setting.Fixtures.Where(f => !f.Soft && f.Most.Z > lowest))
            {
                var n = Math.Clamp((int)Math.Ceiling(sweep.Length / 0.4), 1, 4000);
                for (var i = 0; i <= n; i++)
                {
                    var s = (double)i / n;
                    if (Deep(sweep.All, Where(sweep, setting, theta0, theta1, f, s), f) is { } what)
                    {
                        return $"{what} into {f.Name} at {step}";
                    }
                }
            }
        }

        return null;
    }

    // The cutter's place as the fixture sees it: a fixture that turns is met in the frame that turns with it.
    private static Vec Where(Sweep sweep, Setting setting, double theta0, double theta1, Fixture f, double share)
    {
        var at = sweep.At(share);
        var round = sweep.Centre is not null;
        if (f.Turns)
        {
            return round ? at : setting.Turned(theta1).Back().Of(at);
        }

        return round ? setting.Turned(theta0 + ((theta1 - theta0) * share)).Of(at) : at;
    }

    private static string? Deep(IReadOnlyList<Layer> layers, Vec at, Fixture f)
    {
        double near;
        if (f.Across > 0)
        {
            var r = Math.Sqrt(((at.X - f.Least.X) * (at.X - f.Least.X)) + ((at.Y - f.Least.Y) * (at.Y - f.Least.Y)));
            near = Math.Max(0, Math.Max(r - (f.Across / 2), (f.Bore / 2) - r));
        }
        else
        {
            var (dx, dy) = (Math.Max(0, Math.Max(f.Least.X - at.X, at.X - f.Most.X)), Math.Max(0, Math.Max(f.Least.Y - at.Y, at.Y - f.Most.Y)));
            near = Math.Sqrt((dx * dx) + (dy * dy));
        }

        foreach (var l in layers)
        {
            var (a, b) = (Math.Max(l.Z0, f.Least.Z - at.Z), Math.Min(l.Z1, f.Most.Z - at.Z));
            if (b - a > Skin && near < Math.Max(l.At(a), l.At(b)) - Skin)
            {
                return l.What;
            }
        }

        return null;
    }
}
