namespace Handwheel.Membership;

/// <summary>Whether a damaged moves file does harm, by membership alone: the finished part outside its limits, something run into what holds, a loose piece cut.</summary>
public sealed class Judge
{
    private const double Spacing = 0.4;
    private const double Beside = 3e-3;
    private const double Edge = 0.25;
    private readonly StockFacts stock;
    private readonly PartFacts part;
    private readonly IReadOnlyDictionary<string, CutterFacts> cutters;
    private readonly List<Vec> inside = [];
    private readonly List<Vec> outside = [];
    private readonly List<Station> stations = [];
    private readonly Blocks blocks;
    private readonly int[] times;
    private readonly int left;
    private readonly string[] lines;

    public Judge(string sound, StockFacts stock, PartFacts part, IReadOnlyDictionary<string, CutterFacts> cutters)
    {
        this.stock = stock;
        this.part = part;
        this.cutters = cutters;
        lines = sound.Split('\n');
        var replay = Do(sound);
        Surfaces(replay);
        foreach (var station in Stations.Of(part))
        {
            if (station.Measure(p => replay.Metal(p)) is { } value && Within(station.Size, value) && Beside4(station, replay))
            {
                stations.Add(station);
            }
        }

        blocks = new(stock, part, Math.Max(0.5, stock.Size.X / 110), Math.Max(0.1, stock.Size.Y / 140));
        times = blocks.Times(replay, null, 0);
        var (loose, outsideCount) = blocks.Pieces(replay, times);
        left = outsideCount;
        Sound = $"{inside.Count} places inside and {outside.Count} outside its surface, {Dropped} dropped; {stations.Count} stations of {stations.Select(s => s.Size.Name).Distinct().Count()} sizes; "
            + $"strikes {Overlaps.First(replay, 0) ?? "none"}; loose {loose?.ToString() ?? "none"}; {left} blocks left outside";
    }

    /// <summary>Gets what was found of the sound job.</summary>
    public string Sound { get; }

    /// <summary>Gets how many places next to the surface even the sound job does not keep or clear.</summary>
    public int Dropped { get; private set; }

    /// <summary>Judges a damaged file.</summary>
    /// <param name="json">The file.</param>
    /// <returns>What harm it does, in words; null for none.</returns>
    public string? Harm(string json)
    {
        var replay = Do(json);
        return Harmed(replay) ?? (Overlaps.First(replay, 0) is { } strike ? "strike: " + strike : Hanging(replay));
    }

    private static bool Within(SizeFacts s, double value) => value >= s.Limits.Lower - 1e-6 && value <= s.Limits.Upper + 1e-6;

    // The step that takes a place.
    private static string By(Replay replay, Vec p)
    {
        var owner = replay.TakenAt(p);
        return replay.Went.Find(w => w.Sweep.Owner == owner).Step ?? "hand";
    }

    // A station counts where its surfaces go on a little to all four sides: right beside an edge (of a hole, of a chamfer) a sound place would be lost
    // by a displacement that every limit allows.
    private static bool Beside4(Station station, Replay sound)
    {
        var way = station.Ends[0].Way;
        var one = Math.Abs(way.Z) > 0.9 ? new Vec(1, 0, 0) : new Vec(0, 0, 1);
        var two = Math.Abs(way.X) > 0.9 ? new Vec(0, 1, 0) : Math.Abs(way.Z) > 0.9 ? new Vec(0, 1, 0) : new Vec(-way.Y, way.X, 0);
        foreach (var by in new[] { one * Edge, one * -Edge, two * Edge, two * -Edge })
        {
            var moved = station with { Ends = [.. station.Ends.Select(e => e with { Origin = e.Origin + by })] };
            if (moved.Measure(p => sound.Metal(p)) is null)
            {
                return false;
            }
        }

        return true;
    }

    private string? Harmed(Replay replay)
    {
        var trouble = replay.Troubles.FirstOrDefault(t => t.StartsWith("no ", StringComparison.Ordinal));
        if (trouble is not null)
        {
            return trouble;
        }

        var cut = inside.FindIndex(p => !replay.Metal(p));
        if (cut >= 0)
        {
            return FormattableString.Invariant($"gouge at {inside[cut].X:F2} {inside[cut].Y:F2} {inside[cut].Z:F2} by {By(replay, inside[cut])}");
        }

        var stands = outside.FindIndex(p => replay.Metal(p));
        if (stands >= 0)
        {
            return FormattableString.Invariant($"leftover at {outside[stands].X:F2} {outside[stands].Y:F2} {outside[stands].Z:F2}");
        }

        foreach (var station in stations)
        {
            var value = station.Measure(p => replay.Metal(p));
            if (value is not { } v || !Within(station.Size, v))
            {
                return value is { } found
                    ? FormattableString.Invariant($"size {station.Size.Name} {found:F4}")
                    : FormattableString.Invariant($"size {station.Size.Name}: no surface near {station.Ends[0].Origin.X:F2} {station.Ends[0].Origin.Y:F2} {station.Ends[0].Origin.Z:F2}");
            }
        }

        return null;
    }

    private string? Hanging(Replay replay)
    {
        var (loose, count) = blocks.Pieces(replay, blocks.Times(replay, null, 0));
        if (loose is { } at)
        {
            return "loose piece cut at " + replay.Went.Find(w => w.Sweep.Owner == at).Step;
        }

        return count > left + 100 ? "leftover: more hangs on the part" : null;
    }

    private Replay Do(string json) => Replay.Of(json, stock, cutters, (p, only) => part.Metal(p, 1, only));

    // Places a little inside least metal's surface, and a little outside most metal's, along lines in three directions.
    private void Surfaces(Replay sound)
    {
        var (a, b) = (stock.Least - new Vec(0.5, 0.5, 0.5), stock.Least + stock.Size + new Vec(0.5, 0.5, 0.5));
        foreach (var axis in new[] { 0, 1, 2 })
        {
            Vec Turned(double u, double v, double w) => axis switch { 0 => new(w, u, v), 1 => new(v, w, u), _ => new(u, v, w) };
            var (u0, u1, v0, v1, w0, w1) = axis switch { 0 => (a.Y, b.Y, a.Z, b.Z, a.X, b.X), 1 => (a.Z, b.Z, a.X, b.X, a.Y, b.Y), _ => (a.X, b.X, a.Y, b.Y, a.Z, b.Z) };
            for (var u = u0 + 0.0937; u < u1; u += Spacing)
            {
                for (var v = v0 + 0.0713; v < v1; v += Spacing)
                {
                    var (x, y) = (u, v);
                    Along(w => Turned(x, y, w), w0, w1, sound);
                }
            }
        }
    }

    private void Along(Func<double, Vec> at, double w0, double w1, Replay sound)
    {
        foreach (var variant in new[] { -1, 1 })
        {
            var was = part.Metal(at(w0), variant);
            for (var w = w0 + 0.31; w < w1; w += 0.31)
            {
                var now = part.Metal(at(w), variant);
                if (now == was)
                {
                    continue;
                }

                var (lo, hi) = (w - 0.31, w);
                for (var i = 0; i < 30; i++)
                {
                    var m = (lo + hi) / 2;
                    (lo, hi) = part.Metal(at(m), variant) == was ? (m, hi) : (lo, m);
                }

                // Inside for least metal, outside for most.
                var metalAhead = now;
                var way = metalAhead == (variant < 0) ? 1 : -1;
                var p = at(hi + (way * Beside));
                if (part.Metal(p, variant) == (variant < 0) && part.Metal(at(hi + (2 * way * Beside)), variant) == (variant < 0))
                {
                    Keep(p, variant, sound);
                }

                was = now;
            }
        }
    }

    private void Keep(Vec p, int variant, Replay sound)
    {
        if (sound.Metal(p) != (variant < 0))
        {
            Dropped++;
        }
        else
        {
            (variant < 0 ? inside : outside).Add(p);
        }
    }
}
