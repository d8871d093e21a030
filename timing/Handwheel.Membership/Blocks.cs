namespace Handwheel.Membership;

/// <summary>The stock as small blocks, each with the event that takes it: which pieces hang together, and whether a cutter goes on through one that has come free.</summary>
public sealed class Blocks
{
    private const int Crumb = 200;
    private const int Bite = 25;
    private readonly StockFacts stock;
    private readonly PartFacts part;
    private readonly int nx;
    private readonly int ny;
    private readonly int nz;
    private readonly Vec size;
    private readonly bool[] outsideMost;
    private readonly bool[] insideLeast;

    public Blocks(StockFacts stock, PartFacts part, double coarse, double fine)
    {
        this.stock = stock;
        this.part = part;
        nx = (int)Math.Ceiling(stock.Size.X / coarse);
        ny = (int)Math.Ceiling(stock.Size.Y / fine);
        nz = (int)Math.Ceiling(stock.Size.Z / coarse);
        size = new(stock.Size.X / nx, stock.Size.Y / ny, stock.Size.Z / nz);
        outsideMost = new bool[nx * ny * nz];
        insideLeast = new bool[nx * ny * nz];
        Parallel.For(0, nz, k => Each(k, (i, p) =>
        {
            outsideMost[i] = !part.Metal(p, 1);
            insideLeast[i] = part.Metal(p, -1);
        }));
    }

    /// <summary>When each block is taken.</summary>
    /// <param name="replay">The replay.</param>
    /// <param name="known">Times of a replay that is the same up to an event; null: none.</param>
    /// <param name="from">That event.</param>
    /// <returns>Event numbers; -1 no stock, the greatest number never.</returns>
    public int[] Times(Replay replay, int[]? known, int from)
    {
        var times = new int[nx * ny * nz];
        var later = replay.Takings.Where(t => t.Owner >= from).ToArray();
        Parallel.For(0, nz, new ParallelOptions { MaxDegreeOfParallelism = 2 }, k => Each(k, (i, p) =>
        {
            if (known is not null && known[i] < from)
            {
                times[i] = known[i];
                return;
            }

            if (known is null)
            {
                times[i] = replay.TakenAt(p);
                return;
            }

            times[i] = int.MaxValue;
            foreach (var t in later)
            {
                if (t.Takes(p, 0))
                {
                    times[i] = t.Owner;
                    break;
                }
            }
        }));
        return times;
    }

    /// <summary>Goes through the blocks from the last event back to the first, joining as they come back.</summary>
    /// <param name="replay">The replay.</param>
    /// <param name="times">Its times.</param>
    /// <returns>The step in which a machine cuts a piece that nothing holds, null for none; how much of the part&#39;s own piece lies outside most metal in the end.</returns>
    public (int? Loose, int Outside) Pieces(Replay replay, int[] times)
    {
        var joined = new Joined(times.Length);
        var byTime = Order(times);
        var at = byTime.Length;
        while (at > 0 && times[byTime[at - 1]] == int.MaxValue)
        {
            Add(joined, times, byTime[--at]);
        }

        var outside = Outside(joined, times);
        var machine = replay.Went.Select(w => w.Sweep.Owner).ToHashSet();
        for (var stage = replay.Stages.Count - 1; stage >= 0; stage--)
        {
            var (first, setting) = replay.Stages[stage];
            var anchors = setting is null ? [] : Anchors(setting, times, first);
            while (at > 0 && times[byTime[at - 1]] >= first)
            {
                var now = times[byTime[at - 1]];
                var start = at;
                while (at > 0 && times[byTime[at - 1]] == now)
                {
                    Add(joined, times, byTime[--at]);
                }

                if (setting is not null && anchors.Count > 0 && machine.Contains(now) && IsLoose(joined, byTime.AsSpan(at, start - at), anchors))
                {
                    return (now, outside);
                }
            }
        }

        return (null, outside);
    }

    private static bool IsLoose(Joined joined, ReadOnlySpan<int> taken, List<int> anchors)
    {
        var held = new HashSet<int>();
        foreach (var a in anchors)
        {
            held.Add(joined.Root(a));
        }

        var bites = new Dictionary<int, int>();
        foreach (var i in taken)
        {
            var root = joined.Root(i);
            if (!held.Contains(root))
            {
                bites[root] = bites.GetValueOrDefault(root) + 1;
            }
        }

        return bites.Any(b => b.Value >= Bite && joined.Size(b.Key) - b.Value >= Crumb);
    }

    private static int[] Order(int[] times)
    {
        var all = Enumerable.Range(0, times.Length).Where(i => times[i] >= 0).ToArray();
        var keys = all.Select(i => times[i]).ToArray();
        Array.Sort(keys, all);
        return all;
    }

    private int Outside(Joined joined, int[] times)
    {
        var votes = new Dictionary<int, int>();
        for (var i = 0; i < times.Length; i++)
        {
            if (insideLeast[i] && times[i] == int.MaxValue)
            {
                var root = joined.Root(i);
                votes[root] = votes.GetValueOrDefault(root) + 1;
            }
        }

        if (votes.Count == 0)
        {
            return int.MaxValue;
        }

        var own = votes.OrderByDescending(v => v.Value).ThenBy(v => v.Key).First().Key;
        var count = 0;
        for (var i = 0; i < times.Length; i++)
        {
            count += times[i] == int.MaxValue && outsideMost[i] && joined.Root(i) == own ? 1 : 0;
        }

        return count;
    }

    // Blocks still there as the stage begins that lie against what presses on the work.
    private List<int> Anchors(Setting setting, int[] times, int first)
    {
        var found = new List<int>();
        var holds = setting.Fixtures.Where(f => f.Holds).ToArray();
        const double Touch = 0.9;
        for (var k = 0; k < nz; k++)
        {
            Each(k, (i, p) =>
            {
                if (times[i] < first)
                {
                    return;
                }

                var q = setting.FromPart.Of(p);
                foreach (var f in holds)
                {
                    var near = f.Across > 0
                        ? q.Z > f.Least.Z - Touch && q.Z < f.Most.Z && Ring(q, f) < Touch
                        : q.X > f.Least.X - Touch && q.X < f.Most.X + Touch && q.Y > f.Least.Y - Touch && q.Y < f.Most.Y + Touch && q.Z > f.Least.Z - Touch && q.Z < f.Most.Z;
                    if (near)
                    {
                        found.Add(i);
                        return;
                    }
                }
            });
        }

        return found;
    }

    private static double Ring(Vec q, Fixture f)
    {
        var r = Math.Sqrt(((q.X - f.Least.X) * (q.X - f.Least.X)) + ((q.Y - f.Least.Y) * (q.Y - f.Least.Y)));
        return Math.Max(r - (f.Across / 2), (f.Bore / 2) - r);
    }

    private void Add(Joined joined, int[] times, int i)
    {
        joined.Wake(i);
        var (x, y, z) = (i % nx, i / nx % ny, i / (nx * ny));
        if (x > 0)
        {
            joined.Join(i, i - 1);
        }

        if (x < nx - 1)
        {
            joined.Join(i, i + 1);
        }

        if (y > 0)
        {
            joined.Join(i, i - nx);
        }

        if (y < ny - 1)
        {
            joined.Join(i, i + nx);
        }

        if (z > 0)
        {
            joined.Join(i, i - (nx * ny));
        }

        if (z < nz - 1)
        {
            joined.Join(i, i + (nx * ny));
        }
    }

    private void Each(int k, Action<int, Vec> act)
    {
        for (var j = 0; j < ny; j++)
        {
            for (var i = 0; i < nx; i++)
            {
                act(i + (nx * (j + (ny * k))), stock.Least + new Vec((i + 0.5) * size.X, (j + 0.5) * size.Y, (k + 0.5) * size.Z));
            }
        }
    }

    // Sets that grow together.
    private sealed class Joined(int count)
    {
        private readonly int[] parent = [.. Enumerable.Repeat(-1, count)];
        private readonly int[] sizes = new int[count];

        public void Wake(int i)
        {
            parent[i] = i;
            sizes[i] = 1;
        }

        public int Size(int root) => sizes[root];

        public int Root(int i)
        {
            while (parent[i] != i)
            {
                parent[i] = parent[parent[i]];
                i = parent[i];
            }

            return i;
        }

        public void Join(int i, int j)
        {
            if (parent[j] < 0)
            {
                return;
            }

            var (a, b) = (Root(i), Root(j));
            if (a != b)
            {
                if (sizes[a] < sizes[b])
                {
                    (a, b) = (b, a);
                }

                parent[b] = a;
                sizes[a] += sizes[b];
            }
        }
    }
}
