using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Jobs.Stocks;
using Handwheel.Quantities;
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
                TapFits(job, step);
            }
        }
    }

    private void InStock(Job job)
    {
        if (Extents.Of(job.Drawing.Features) is not { } drawn)
        {
            return;
        }

        // What the limits allow to be smaller may be.
        var part = bag.Halts ? drawn : DrawnPart.Of(job.Drawing, PartVariant.LeastMetal).Solid.Bounds;
        var (least, most) = (part.Min, part.Max);
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
                bag.Add(FindingCatalogue.SmallStock(s.Where, $"The part stands {job.Unit.Said(under)} out of its stock towards {axis} minus.", under));
            }

            if (over > Closed)
            {
                bag.Add(FindingCatalogue.SmallStock(s.Where, $"The part stands {job.Unit.Said(over)} out of its stock towards {axis} plus.", over));
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
            bag.Add(FindingCatalogue.SmallStock(s.Where, $"The part stands {job.Unit.Said(over)} out of its round bar sideways.", over));
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
            bag.Add(FindingCatalogue.NotThere(high.Where, $"The shop has no parallels {high.Text}.", "It has: " + string.Join(", ", shop.Parallels.Select(p => job.Unit.Said(p))) + "."));
        }

        if (holding.Up == FaceUp.Top && holding.TiltX == 0 && holding.TiltY == 0 && job.Stock.Form == StockForm.Bar)
        {
            Upright(job, holding, holder);
        }
    }

    // With the top up, parallels and jaws both say how high the jaws stand: they must agree.
    private void Upright(Job job, Holding holding, Holder holder)
    {
        var (stock, u) = (job.Stock, job.Unit);
        var on = holding.Parallels?.Value ?? 0;
        var jaws = stock.Least.Z - on + holder.JawsDeep;
        if (holding.JawsAt is { } at && Math.Abs(at.Value - jaws) > 0.01)
        {
            bag.Add(FindingCatalogue.Jaws(
                at.Where,
                $"On parallels {u.Said(on)} the jaws of '{holder.Name}', {u.Said(holder.JawsDeep)} deep, come to z {u.Said(jaws)}, not {at.Text}: the stock's underside is at z {u.Said(stock.Least.Z)}.",
                "Correct the parallels or the jaws; or leave 'jaws at' out, and it is worked out."));
        }

        if (holder.JawsDeep - on < Closed && holding.Parallels is { } parallels)
        {
            bag.Add(FindingCatalogue.Jaws(parallels.Where, $"Parallels {u.Said(on)} high stand over the jaws, {u.Said(holder.JawsDeep)} deep: they hold nothing.", "Take lower parallels."));
        }

        var across = holding.JawsAlongY ? stock.Used.X : stock.Used.Y;
        if (Math.Abs(holding.Turn) < Closed && across > holder.Open + Closed)
        {
            bag.Add(FindingCatalogue.Jaws(holding.Where, $"The stock is {u.Said(across)} across the jaws, and '{holder.Name}' opens {u.Said(holder.Open)}.", "Take a larger vise, or turn the work."));
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

    // A tap is of the thread that is drawn, and a hole is smaller than its tap and no smaller than the thread's core.
    private void TapFits(Job job, Step step)
    {
        if (step is not HoleStep { Work: HoleWork.Tap, Cutter: { } name } tapping || shop is null || !shop.Cutters.TryGetValue(name, out var tap) || tap.Kind != CutterKind.Tap)
        {
            return;
        }

        foreach (var feature in job.Drawing.Features.Where(f => tapping.Features.Contains(f.Name, StringComparer.Ordinal)))
        {
            TapFits(job.Unit, tapping, tap, feature);
        }
    }

    private void TapFits(LengthUnit u, HoleStep tapping, Cutter tap, Feature feature)
    {
        var where = tapping.CutterWhere ?? tapping.Where;
        var said = $"{tap.Name} ({u.Said(tap.Across)} across{(tap.Pitch > 0 ? $", pitch {u.Said(tap.Pitch)}" : string.Empty)})";
        if (feature.Thread is { } thread && TapSizes.Of(thread) is var (major, pitch))
        {
            if (Math.Abs(major - tap.Across) > 0.01 || (tap.Pitch > 0 && Math.Abs(pitch - tap.Pitch) > 0.005))
            {
                bag.Add(FindingCatalogue.Contradiction(where, $"{said} does not cut the thread of '{feature.Name}', {thread}: that is {u.Said(major)} across, pitch {u.Said(pitch)}.", $"Take a tap {thread}, or write the thread it cuts into the drawing."));
                return;
            }
        }

        if (feature.Shape is RoundShape { Across.Middle: var hole } && (hole >= tap.Across || hole < tap.Across - (2 * Math.Max(tap.Pitch, 0.15 * tap.Across))))
        {
            bag.Add(FindingCatalogue.Contradiction(where, $"{said} does not fit the hole '{feature.Name}' of {u.Said(hole)}.", "Drill the thread's tapping size ('handwheel ask tap drill M6' tells it), or take the tap that fits."));
        }
    }
}
