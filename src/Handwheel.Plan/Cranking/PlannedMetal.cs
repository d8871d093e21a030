using Handwheel.Jobs.Stocks;
using Handwheel.Plan.Setting;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Cranking;

// The stock as the plan has cut it so far, asked point by point. It finds entries, tops to touch on and where a pass begins; it proves nothing.
internal sealed class PlannedMetal(Stock stock)
{
    private readonly List<PlannedCut> cuts = [];

    internal void Add(PlannedCut cut) => cuts.Add(cut);

    internal bool Contains(Point3 part)
    {
        if (!InStock(part))
        {
            return false;
        }

        for (var i = cuts.Count - 1; i >= 0; i--)
        {
            if (cuts[i].Covers(part))
            {
                return false;
            }
        }

        return true;
    }

    // Height of the highest metal under a place of a holding's plan (theta 0); negative infinity where there is none.
    internal double TopAt(HoldingPlan plan, Point2 p)
    {
        var heights = Heights(plan);
        for (var i = 0; i + 1 < heights.Count; i++)
        {
            double high = heights[i], low = heights[i + 1];
            var middle = (high + low) / 2;
            if (!At(plan, p, middle))
            {
                continue;
            }

            return Boundary(plan, p, middle, high);
        }

        return double.NegativeInfinity;
    }

    // Places in plan (theta 0) at which there is metal between two heights, spaced so that there are no more than some thousands.
    internal List<Point2> Between(HoldingPlan plan, double low, double high)
    {
        double wide = plan.Most.X - plan.Least.X, deep = plan.Most.Y - plan.Least.Y;
        var spacing = Math.Max(0.25, Math.Sqrt(wide * deep / 12000));
        int nx = Math.Max(1, (int)Math.Ceiling(wide / spacing)), ny = Math.Max(1, (int)Math.Ceiling(deep / spacing));
        double a = Math.Max(low, plan.Least.Z), b = Math.Min(high, plan.Most.Z);
        var found = new List<Point2>();
        if (a >= b)
        {
            return found;
        }

        double[] levels = [a + ((b - a) * 0.02), (a + b) / 2, b - ((b - a) * 0.02)];
        for (var i = 0; i <= nx; i++)
        {
            for (var j = 0; j <= ny; j++)
            {
                Point2 p = new(Inset(plan.Least.X, wide, i, nx), Inset(plan.Least.Y, deep, j, ny));
                if (Array.Exists(levels, z => At(plan, p, z)))
                {
                    found.Add(p);
                }
            }
        }

        return found;
    }

    private static double Inset(double least, double wide, int i, int n) => least + 1e-6 + ((wide - 2e-6) * i / n);

    private bool At(HoldingPlan plan, Point2 p, double z) => Contains(plan.Placement.Back(new(p.X, p.Y, z)));

    private double Boundary(HoldingPlan plan, Point2 p, double inside, double outside)
    {
        if (At(plan, p, outside - 1e-9))
        {
            return outside;
        }

        for (var i = 0; i < 60; i++)
        {
            var middle = (inside + outside) / 2;
            (inside, outside) = At(plan, p, middle) ? (middle, outside) : (inside, middle);
        }

        return outside;
    }

    private List<double> Heights(HoldingPlan plan)
    {
        var set = new SortedSet<double> { plan.Most.Z, plan.Least.Z };
        foreach (var cut in cuts.Where(c => ReferenceEquals(c.Placement, plan.Placement) || c.Placement.Direction(new(0, 0, 1)) == plan.Placement.Direction(new(0, 0, 1))))
        {
            var shift = plan.Placement.Shift.Z - cut.Placement.Shift.Z;
            set.Add(cut.LowZ + shift);
            set.Add(cut.TopZ + shift);
        }

        for (var i = 1; i < 40; i++)
        {
            set.Add(plan.Least.Z + ((plan.Most.Z - plan.Least.Z) * i / 40));
        }

        return [.. set.Where(z => z >= plan.Least.Z && z <= plan.Most.Z).Reverse()];
    }

    private bool InStock(Point3 p)
    {
        double x = p.X - stock.Least.X, y = p.Y - stock.Least.Y, z = p.Z - stock.Least.Z;
        if (x < 0 || y < 0 || z < 0 || x > stock.Used.X || y > stock.Used.Y || z > stock.Used.Z)
        {
            return false;
        }

        if (stock.Form == StockForm.Bar)
        {
            return true;
        }

        var (u, v, du, dv) = stock.Along switch
        {
            "x" => (y, z, stock.Used.Y, stock.Used.Z),
            "y" => (x, z, stock.Used.X, stock.Used.Z),
            _ => (x, y, stock.Used.X, stock.Used.Y),
        };
        u -= du / 2;
        v -= dv / 2;
        return stock.Form == StockForm.Round ? InRound(u, v, Math.Min(du, dv)) : InHex(u, v, Math.Min(du, dv) / 2);
    }

    private bool InRound(double u, double v, double across)
    {
        var d = Math.Sqrt((u * u) + (v * v));
        return d <= across / 2 && d >= stock.Bore / 2;
    }

    private bool InHex(double u, double v, double half)
    {
        var start = stock.FlatsUp ? Math.PI / 2 : 0;
        for (var i = 0; i < 3; i++)
        {
            var a = start + (i * Math.PI / 3);
            if (Math.Abs((u * Math.Cos(a)) + (v * Math.Sin(a))) > half + 1e-9)
            {
                return false;
            }
        }

        return true;
    }
}
