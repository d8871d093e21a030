using System.Diagnostics;
using System.Text.Json;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Timing;

internal static class Bench
{
    public static double Best(int times, Action<int> run, Action<int>? prepare = null)
    {
        var best = double.PositiveInfinity;
        for (var i = 0; i < times; i++)
        {
            prepare?.Invoke(i);
            var clock = Stopwatch.StartNew();
            run(i);
            best = Math.Min(best, clock.Elapsed.TotalMilliseconds);
        }

        return best;
    }

    // Processor time of one run, all threads, as the mean of some; milliseconds.
    private static double Processor(int times, Action run, Action prepare)
    {
        var total = TimeSpan.Zero;
        for (var i = 0; i < times; i++)
        {
            prepare();
            var before = Environment.CpuUsage.TotalTime;
            run();
            total += Environment.CpuUsage.TotalTime - before;
        }

        return total.TotalMilliseconds / times;
    }

    public static void Job(int count, bool peer)
    {
        var moves = SampleJob.Moves(count);
        var cuts = SampleJob.Cuts(moves);
        RayGrid grid = null!;
        var fill = Best(9, _ => grid = new RayGrid(SampleJob.Stock, 512, threads: 2));
        var cut = Best(25, _ => grid.CutAll(cuts), _ => grid = new RayGrid(SampleJob.Stock, 512, threads: 2));
        var cpu = Processor(25, () => grid.CutAll(cuts), () => grid = new RayGrid(SampleJob.Stock, 512, threads: 2));
        var whole = Best(9, _ => new RayGrid(SampleJob.Stock, 512, threads: 2).CutAll(SampleJob.Cuts(moves)));
        var bytes = LiveBytes(() =>
        {
            var held = new RayGrid(SampleJob.Stock, 512, threads: 2);
            var mine = SampleJob.Cuts(moves);
            held.CutAll(mine);
            return (held, mine);
        });
        var single = new RayGrid(SampleJob.Stock, 512, threads: 1);
        var one = Best(9, _ => single.CutAll(cuts), _ => single = new RayGrid(SampleJob.Stock, 512, threads: 1));
        Console.WriteLine($"{count} moves, 3 x 512 x 512 rays: {cut:F1} ms with 2 threads, {one:F1} ms with 1, {cpu:F1} ms of processor time; held: {bytes / 1048576.0:F1} MiB");
        Console.WriteLine($"  laying the bare stock on the rays {fill:F1} ms; that, making the swept cuts and cutting them: {whole:F1} ms");

        // The next move: the last step edited.
        var lower = Edits(count);
        var edit = Best(30, i => grid.Cut(lower[i % 3]), _ => { if (grid.CanUndo) { grid.Undo(); } });
        var undo = Best(30, _ => grid.Undo(), i => { if (!grid.CanUndo) { grid.Cut(lower[i % 3]); } });
        var worst = lower.Max(c => Best(10, _ => grid.Cut(c), _ => { if (grid.CanUndo) { grid.Undo(); } }));
        Console.WriteLine($"  next move: {edit:F2} ms at best, {worst:F2} ms for the slowest of three kinds; taken back in {undo:F2} ms");
        Connected(grid, cuts, lower);
        var job = cuts.Aggregate(new Workpiece(SampleJob.Stock), (w, c) => w.After(c));
        if (peer)
        {
            Peer(moves, job, (cut, whole, cpu), grid);
        }
    }

    // The last step edited: three kinds of move a millimetre lower.
    public static SweptCut[] Edits(int count)
    {
        var more = SampleJob.Moves(count + 10);
        return [.. ((int[])[0, 4, 6]).Select(k => more[count + k].ToCut()).Select(c => new SweptCut(c.Cutter, c.Path, Pose.Translation(new(0, 0, -1))))];
    }

    // Pieces after the last step was edited: made anew each time, three kinds of it in turn.
    private static void Connected(RayGrid grid, IReadOnlyList<ISolid> cuts, IReadOnlyList<ISolid> edits)
    {
        Pieces pieces = null!;
        var after = new double[edits.Count];
        for (var k = 0; k < edits.Count; k++)
        {
            _ = Pieces.Of(grid);
            after[k] = Best(15, _ => pieces = Pieces.Of(grid), _ =>
            {
                if (grid.CanUndo)
                {
                    grid.Undo();
                }

                pieces = Pieces.Of(grid);
                grid.Cut(edits[k]);
            });
        }

        RayGrid bare = null!;
        var scratch = Best(7, _ => pieces = Pieces.Of(bare), _ =>
        {
            bare = new RayGrid(SampleJob.Stock, 512, threads: 2);
            bare.CutAll(cuts);
        });
        Console.WriteLine($"  connected pieces after an edit: {after.Min():F2} ms for the easiest, {after.Max():F2} ms for the hardest of three kinds; from scratch: {scratch:F2} ms, {pieces.Count} piece(s)");
    }

    /// <summary>Random soundings of random cuts held against the decimal oracle, on two threads; nineteen in twenty on level paths.</summary>
    /// <param name="count">How many.</param>
    public static void Oracle(int count)
    {
        var faults = new System.Collections.Concurrent.ConcurrentBag<string>();
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            if (Handwheel.Solids.Tests.OracleCheck.Fault(i, mayClimb: i % 20 == 0) is { } fault)
            {
                faults.Add(fault);
            }
        });
        Tell($"{count} soundings against the oracle", faults);
    }

    /// <summary>Random soundings of random level cuts, a fifth of them rings on small paths, proved at every place by interval arithmetic, on two threads.</summary>
    /// <param name="count">How many.</param>
    public static void Intervals(int count)
    {
        var faults = new System.Collections.Concurrent.ConcurrentBag<string>();
        var open = new System.Collections.Concurrent.ConcurrentBag<double>();
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            var (fault, left) = Handwheel.Solids.Tests.IntervalCheck.Level(i, ring: i % 5 == 0);
            if (fault is not null)
            {
                faults.Add(fault);
            }

            open.Add(left);
        });
        Tell($"{count} soundings of level cuts at every place, by interval arithmetic, {open.Count(o => o > 1e-9)} not settled to the last", faults);
    }

    private static void Tell(string what, System.Collections.Concurrent.ConcurrentBag<string> faults)
    {
        Console.WriteLine($"{what}: {faults.Count} wrong");
        foreach (var fault in faults.Order(StringComparer.Ordinal).Take(10))
        {
            Console.WriteLine("  " + fault);
        }
    }

    public static void Sounding()
    {
        var cuts = SampleJob.Cuts(SampleJob.Moves(300));
        var piece = cuts.Aggregate(new Workpiece(SampleJob.Stock), (w, c) => w.After(c));
        var random = new Random(3);
        var lines = Enumerable.Range(0, 3000).Select(i => (i % 4) switch
        {
            0 => Line3.AlongX(random.NextDouble() * 14 - 7, random.NextDouble() * -30),
            1 => Line3.AlongY(random.NextDouble() * 48 - 9, random.NextDouble() * -30),
            2 => Line3.AlongZ(random.NextDouble() * 48 - 9, random.NextDouble() * 14 - 7),
            _ => Line3.Through(new(random.NextDouble() * 48 - 9, random.NextDouble() * 14 - 7, random.NextDouble() * -12), new(random.NextDouble() * 48 - 9, random.NextDouble() * 14 - 7, -5)),
        }).ToArray();
        var length = 0.0;
        var time = Best(5, i =>
        {
            foreach (var line in lines)
            {
                length += piece.Sound(line).Length;
            }
        });
        Console.WriteLine($"a sounding through 300 cuts: {time * 1000 / lines.Length:F2} us (of {length:F0} mm of metal)");
    }

    private static void Peer(List<SampleJob.Move> moves, Workpiece piece, (double Cut, double Whole, double Cpu) mine, RayGrid grid)
    {
        var random = new Random(5);
        var lines = Enumerable.Range(0, 600).Select(i => (i % 3) switch
        {
            0 => (0, random.NextDouble() * 13.9 - 6.95, random.NextDouble() * -13),
            1 => (1, random.NextDouble() * 47.9 - 8.95, random.NextDouble() * -13),
            _ => (2, random.NextDouble() * 47.9 - 8.95, random.NextDouble() * 13.9 - 6.95),
        }).ToList();
        var file = SampleJob.Write(moves, lines);
        foreach (var batch in (string[])["", "--batch"])
        {
            // The best of three of the short job, as ours is the best of some.
            JsonElement answer = default;
            double seconds = double.PositiveInfinity, cpu = double.PositiveInfinity;
            for (var i = moves.Count > 1000 ? 1 : 3; i > 0; i--)
            {
                answer = Ask(file, batch);
                seconds = Math.Min(seconds, answer.GetProperty("seconds").GetDouble());
                cpu = Math.Min(cpu, answer.GetProperty("cpu").GetDouble());
            }

            var (mesh, ours, compared) = Errors(answer.GetProperty("soundings"), lines, piece, grid);
            Console.WriteLine($"  mesh booleans at 0.002 mm chords{(batch.Length > 0 ? ", all at once" : ", one after the other")}: {seconds:F2} s, {answer.GetProperty("triangles").GetInt32()} triangles: {seconds * 1000 / mine.Cut:F0} times the engine's time ({seconds * 1000 / mine.Whole:F0} times, the stock and the making of the cuts counted in)");
            Console.WriteLine($"    by processor time, which a busy machine leaves alone: {cpu:F2} s: {cpu * 1000 / mine.Cpu:F0} times the engine's");
            Console.WriteLine($"    ends of {compared} lines answered alike: off the exact surface by at most {mesh:G3} mm (mesh) and {ours:G3} mm (engine): {mesh / Math.Max(ours, 1e-16):G3} times nearer");
        }
    }

    private static JsonElement Ask(string file, string batch)
    {
        using var process = Process.Start(new ProcessStartInfo("node", $"cut.mjs {file} {batch}") { WorkingDirectory = PeerFolder(), RedirectStandardOutput = true, UseShellExecute = false })!;
        var answer = JsonDocument.Parse(process.StandardOutput.ReadToEnd()).RootElement;
        process.WaitForExit();
        return answer;
    }

    // The mesh's ends against the engine's, and the engine's own ends against the definition: distance to the path less the radius.
    private static (double Mesh, double Ours, int Compared) Errors(JsonElement soundings, List<(int Axis, double U, double V)> lines, Workpiece piece, RayGrid grid)
    {
        double mesh = 0, ours = 0;
        var compared = 0;
        for (var i = 0; i < lines.Count; i++)
        {
            var (axis, u, v) = lines[i];
            var line = axis == 0 ? Line3.AlongX(u, v) : axis == 1 ? Line3.AlongY(u, v) : Line3.AlongZ(u, v);
            var spans = piece.Sound(line);
            var theirs = soundings[i].EnumerateArray().Select(e => e.GetDouble()).ToArray();
            foreach (var span in spans)
            {
                ours = Math.Max(ours, Math.Max(Residual(piece, span.FromSurface, line.At(span.From)), Residual(piece, span.ToSurface, line.At(span.To))));
            }

            if (theirs.Length == 2 * spans.Count)
            {
                compared++;
                for (var k = 0; k < spans.Count; k++)
                {
                    // Judged alike: how far the end lies off the exact surface it should be on.
                    mesh = Math.Max(mesh, Math.Max(
                        Residual(piece, spans[k].FromSurface, line.At(theirs[2 * k])),
                        Residual(piece, spans[k].ToSurface, line.At(theirs[(2 * k) + 1]))));
                }
            }
        }

        return (mesh, ours, compared);
    }

    private static double Residual(Workpiece piece, SurfaceId surface, Point3 p)
    {
        if (surface.IsStock || piece.Cuts[surface.Cut] is not Handwheel.Solids.Cuts.SweptCut cut)
        {
            return 0;
        }

        var path = cut.Path;
        var floor = Math.Min(Math.Abs(p.Z - path.From.Z), Math.Abs(p.Z - path.From.Z - SampleJob.Move.Flute));
        decimal x = (decimal)p.X, y = (decimal)p.Y;
        double away;
        if (path.Kind == Handwheel.Solids.Cuts.PathKind.Arc)
        {
            var rim = Math.Abs((double)(Root(((x - (decimal)path.Centre.X) * (x - (decimal)path.Centre.X)) + ((y - (decimal)path.Centre.Y) * (y - (decimal)path.Centre.Y)))) - path.Radius);
            away = Math.Min(rim, Math.Min(p.Plan.DistanceTo(path.From.Plan), p.Plan.DistanceTo(path.To.Plan)));
            return new[] { floor, Math.Abs(rim - cut.Cutter.GreatestRadius), Math.Abs(p.Plan.DistanceTo(path.From.Plan) - cut.Cutter.GreatestRadius), Math.Abs(p.Plan.DistanceTo(path.To.Plan) - cut.Cutter.GreatestRadius) }.Min();
        }

        decimal ax = (decimal)path.From.X, ay = (decimal)path.From.Y, dx = (decimal)path.To.X - ax, dy = (decimal)path.To.Y - ay, dd = (dx * dx) + (dy * dy);
        var s = dd == 0 ? 0 : Math.Clamp((((x - ax) * dx) + ((y - ay) * dy)) / dd, 0, 1);
        decimal ex = x - ax - (s * dx), ey = y - ay - (s * dy);
        away = (double)Root((ex * ex) + (ey * ey));
        return Math.Min(floor, Math.Abs(away - cut.Cutter.GreatestRadius));
    }

    private static decimal Root(decimal v)
    {
        var x = (decimal)Math.Sqrt((double)v);
        return x == 0 ? 0 : (x + (v / x)) / 2;
    }

    private static string PeerFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Handwheel.slnx")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder!.FullName, "timing", "peer");
    }

    private static long LiveBytes(Func<object> make)
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var held = make();
        var after = GC.GetTotalMemory(forceFullCollection: true);
        GC.KeepAlive(held);
        return after - before;
    }
}
