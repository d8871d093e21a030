namespace Handwheel.Jobs.Reading;

// A distance between axes is aimed at the middle of its limits: the axis farther from the origin (or named second) is moved there.
internal sealed class DistanceAim(DrawingWorker worker, Dictionary<(FeatureDraft Feature, Measure Measure), Exact> shifts)
{
    public void Aim(SizeDraft size)
    {
        var (first, second) = (Root(size.Feature), Root(size.Other!));
        if (first == second || first.Repeat is not null || second.Repeat is not null || worker.Own(size, false) is not { } limits
            || worker.Centre(first) is not { } a || worker.Centre(second) is not { } b)
        {
            return;
        }

        var (x, y) = size.Along switch { "x" => (b.X - a.X, 0d), "y" => (0d, b.Y - a.Y), _ => (b.X - a.X, b.Y - a.Y) };
        var drawn = Math.Sqrt((x * x) + (y * y));
        var off = limits.Middle.ToDouble() - drawn;
        if (drawn < 1e-9 || Math.Abs(off) < 1e-9 || drawn < limits.Lower.ToDouble() - 1e-6 || drawn > limits.Upper.ToDouble() + 1e-6)
        {
            return;
        }

        var moved = (a.X * a.X) + (a.Y * a.Y) > (b.X * b.X) + (b.Y * b.Y) ? first : second;
        var way = moved == second ? off : -off;
        Move(moved, Measure.X, way * x / drawn);
        Move(moved, Measure.Y, way * y / drawn);
    }

    private void Move(FeatureDraft feature, Measure measure, double by)
    {
        if (by != 0)
        {
            // A millionth of a micrometre is kept; what a double adds below it is not.
            shifts[(feature, measure)] = shifts.GetValueOrDefault((feature, measure), Exact.Zero) + Exact.Ratio((long)Math.Round(by * 1e9), 1_000_000_000);
        }
    }

    // The feature whose typed place it stands at.
    private static FeatureDraft Root(FeatureDraft feature)
    {
        var root = feature;
        for (var steps = 0; root.At is { } at && steps < 1000; steps++)
        {
            root = at;
        }

        return root;
    }
}
