using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Jobs.Stocks;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

// Holds the parts of a job against each other and against its shop.
internal sealed class JobChecks(FindingBag bag, Shop? shop)
{
    private const double Closed = 1e-6;

    public void Check(Job job)
    {
        InStock(job);
        InRound(job);
        foreach (var stage in job.Stages)
        {
            if (stage is Holding holding)
            {
                Jaws(job, holding);
            }

            foreach (var step in stage.Steps)
            {
                CutterOf(step);
            }
        }
    }

    private void InStock(Job job)
    {
        if (Extents.Of(job.Drawing.Features) is not var (least, most))
        {
            return;
        }

        var s = job.Stock;
        (string Axis, double Under, double Over)[] axes =
        [
            ("x", s.Least.X - least.X, most.X - (s.Least.X + s.Used.X)),
            ("y", s.Least.Y - least.Y, most.Y - (s.Least.Y + s.Used.Y)),
            ("z", s.Least.Z - least.Z, most.Z - (s.Least.Z + s.Used.Z)),
        ];
        foreach (var (axis, under, over) in axes)
        {
            if (under > Closed)
            {
                bag.Add(FindingCatalogue.SmallStock(s.Where, FormattableString.Invariant($"The part stands {under:0.###} mm out of its stock towards {axis} minus."), under));
            }

            if (over > Closed)
            {
                bag.Add(FindingCatalogue.SmallStock(s.Where, FormattableString.Invariant($"The part stands {over:0.###} mm out of its stock towards {axis} plus."), over));
            }
        }
    }

    // A round bar is no box: what is drawn along its axis must lie within its round too.
    private void InRound(Job job)
    {
        var s = job.Stock;
        if (s.Form != StockForm.Round)
        {
            return;
        }

        var middle = new Point3(s.Least.X + (s.Used.X / 2), s.Least.Y + (s.Used.Y / 2), s.Least.Z + (s.Used.Z / 2));
        var (view, axis, across) = s.Along switch
        {
            "x" => (View.Right, new Point2(middle.Y, middle.Z), s.Used.Y),
            "y" => (View.Front, new Point2(middle.X, middle.Z), s.Used.X),
            _ => (View.Top, new Point2(middle.X, middle.Y), s.Used.X),
        };
        var over = Extents.Radius(job.Drawing.Features, view, axis) - (across / 2);
        if (over > Closed)
        {
            bag.Add(FindingCatalogue.SmallStock(s.Where, FormattableString.Invariant($"The part stands {over:0.###} mm out of its round bar sideways."), over));
        }
    }

    private void Jaws(Job job, Holding holding)
    {
        if (shop is null || !shop.Holders.TryGetValue(holding.Holder, out var holder) || holder.Kind != HolderKind.Vise)
        {
            return;
        }

        if (holding.Parallels is { } high && !shop.Parallels.Any(p => Math.Abs(p - high.Value) < Closed) && shop.Parallels.Count > 0)
        {
            bag.Add(FindingCatalogue.NotThere(high.Where, FormattableString.Invariant($"The shop has no parallels {high.Text}."), "It has: " + string.Join(", ", shop.Parallels.Select(p => FormattableString.Invariant($"{p:0.###} mm"))) + "."));
        }

        if (holding.Up == FaceUp.Top && holding.TiltX == 0 && holding.TiltY == 0 && job.Stock.Form == StockForm.Bar)
        {
            Upright(job.Stock, holding, holder);
        }
    }

    // With the top up, parallels and jaws both say how high the jaws stand: they must agree.
    private void Upright(Stock stock, Holding holding, Holder holder)
    {
        var on = holding.Parallels?.Value ?? 0;
        var jaws = stock.Least.Z - on + holder.JawsDeep;
        if (holding.JawsAt is { } at && Math.Abs(at.Value - jaws) > 0.01)
        {
            bag.Add(FindingCatalogue.Jaws(
                at.Where,
                FormattableString.Invariant($"On parallels {on:0.###} the jaws of '{holder.Name}', {holder.JawsDeep:0.###} deep, come to z {jaws:0.###}, not {at.Text}: the stock's underside is at z {stock.Least.Z:0.###}."),
                "Correct the parallels or the jaws; or leave 'jaws at' out, and it is worked out."));
        }

        if (holder.JawsDeep - on < Closed && holding.Parallels is { } parallels)
        {
            bag.Add(FindingCatalogue.Jaws(parallels.Where, FormattableString.Invariant($"Parallels {on:0.###} high stand over the jaws, {holder.JawsDeep:0.###} deep: they hold nothing."), "Take lower parallels."));
        }

        var across = holding.JawsAlongY ? stock.Used.X : stock.Used.Y;
        if (Math.Abs(holding.Turn) < Closed && across > holder.Open + Closed)
        {
            bag.Add(FindingCatalogue.Jaws(holding.Where, FormattableString.Invariant($"The stock is {across:0.###} mm across the jaws, and '{holder.Name}' opens {holder.Open:0.###}."), "Take a larger vise, or turn the work."));
        }
    }

    private void CutterOf(Step step)
    {
        if (step.Cutter is not { } name || step.CutterWhere is not { } where || shop is null)
        {
            return;
        }

        if (!shop.Cutters.TryGetValue(name, out var cutter))
        {
            bag.Add(FindingCatalogue.UnknownWord(where, name, "a cutter of the shop", Nearest.To(name, shop.Cutters.Keys), Nearest.Listed("The shop has", shop.Cutters.Keys)));
            return;
        }

        if (CutterUse.Of(step) is var (verb, kinds, takes) && !kinds.Contains(cutter.Kind))
        {
            bag.Add(FindingCatalogue.WrongCutter(where, $"{name} ({CutterWords.Said(cutter.Kind)})", verb, takes));
        }
    }
}
