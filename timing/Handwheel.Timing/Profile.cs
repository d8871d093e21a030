using System.Diagnostics;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Questions;

namespace Handwheel.Timing;

/// <summary>Where the time goes.</summary>
internal static class Profile
{
    /// <summary>One thread at one thing many times over, for a profiler: cut, next, pieces (from scratch), edit (pieces after one) or same (pieces after none).</summary>
    /// <param name="what">The thing.</param>
    /// <param name="count">How many moves.</param>
    /// <param name="times">How many times.</param>
    public static void Spin(string what, int count, int times)
    {
        var cuts = SampleJob.Cuts(SampleJob.Moves(count));
        var edits = Bench.Edits(count);
        var grid = new RayGrid(SampleJob.Stock, 512, threads: 1);
        grid.CutAll(cuts);
        if (what is "edit" or "same")
        {
            _ = Pieces.Of(grid);
        }

        var all = new double[times];
        for (var i = 0; i < times; i++)
        {
            if (what is "cut")
            {
                grid = new RayGrid(SampleJob.Stock, 512, threads: 1);
            }
            else if (grid.CanUndo)
            {
                grid.Undo();
            }

            if (what is "edit")
            {
                grid.Cut(edits[i % edits.Length]);
            }

            var run = what is "pieces" ? grid.Like(SampleJob.Stock) : grid;
            if (what is "pieces")
            {
                run.CutAll(cuts);
            }

            var clock = Stopwatch.StartNew();
            switch (what)
            {
                case "cut":
                    grid.CutAll(cuts);
                    break;
                case "next":
                    grid.Cut(edits[i % edits.Length]);
                    break;
                default:
                    _ = Pieces.Of(run);
                    break;
            }

            all[i] = clock.Elapsed.TotalMilliseconds;
        }

        Array.Sort(all);
        Console.WriteLine($"{what} {count}: best {all[0]:F2}, median {all[times / 2]:F2} ms; collections {GC.CollectionCount(0)} {GC.CollectionCount(1)} {GC.CollectionCount(2)}");
    }

    /// <summary>Where the time goes, by kind of move.</summary>
    public static void Kinds()
    {
        var moves = SampleJob.Moves(5000);
        for (var kind = 0; kind < 10; kind++)
        {
            var cuts = SampleJob.Cuts([.. moves.Where((_, i) => i % 10 == kind)]);
            RayGrid grid = null!;
            var time = Bench.Best(3, _ => grid.CutAll(cuts), _ => grid = new RayGrid(SampleJob.Stock, 512, threads: 1));
            Console.WriteLine($"kind {kind} ({moves[kind].Kind}): {cuts.Count} moves in {time:F1} ms, one thread");
        }
    }
}
