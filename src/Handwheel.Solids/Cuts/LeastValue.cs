namespace Handwheel.Solids.Cuts;

// The least value of a function that changes by at most a rate, bounded from below for certain.
internal static class LeastValue
{
    private const int Budget = 600;

    // Halves where the bound is lowest until bound and value are close, or the budget is spent; never above the true least.
    internal static double Over(double lo, double hi, double rate, double close, Func<double, double> f)
    {
        var best = Math.Min(f(lo), f(hi));
        if (!(hi > lo))
        {
            return best;
        }

        var queue = new PriorityQueue<(double Middle, double Half), double>();
        Put((lo + hi) / 2, (hi - lo) / 2);
        for (var i = 0; i < Budget && queue.TryPeek(out var cell, out var bound); i++)
        {
            if (bound >= best - close)
            {
                return bound;
            }

            queue.Dequeue();
            Put(cell.Middle - (cell.Half / 2), cell.Half / 2);
            Put(cell.Middle + (cell.Half / 2), cell.Half / 2);
        }

        return queue.TryPeek(out _, out var least) ? Math.Min(least, best) : best;

        void Put(double middle, double half)
        {
            var value = f(middle);
            best = Math.Min(best, value);
            queue.Enqueue((middle, half), value - (rate * half));
        }
    }
}
