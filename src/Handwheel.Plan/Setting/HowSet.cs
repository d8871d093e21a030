using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Shops;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Setting;

// How a holding is set up, in sentences with their numbers; and where to stand the cutter over scribed lines before the first chip.
internal static class HowSet
{
    internal static IReadOnlyList<string> Of(Holding holding, HoldingPlan plan, Shop shop, Figures f)
    {
        var says = new List<string>();
        if (shop.Holders.GetValueOrDefault(holding.Holder) is { Kind: HolderKind.Vise } vise)
        {
            var top = SetupMaker.JawsTop(holding, vise, plan);
            says.Add($"Vise {vise.Name}: jaws along X, fixed jaw at the back, its face at Y {f.L(plan.Most.Y)}; tops of the jaws at Z {f.L(top)}; swept parallel to X.");
            says.Add($"The bar stands on {(holding.Parallels is { } p ? "parallels " + p.Text : "the bed")}, tapped down; the jaws hold {f.L(top - plan.Least.Z)} of it.");
            says.Add($"Its ends lie at X {f.L(plan.Least.X)} and X {f.L(plan.Most.X)}; its raw top at Z {f.L(plan.Most.Z)}.");
        }

        if (holding.OnRotary)
        {
            says.Add("Zero lost: sweep the rotary again by its own turn for X and Y; touch Z again on what then is the top.");
        }

        return says;
    }

    internal static IReadOnlyList<string> DryCheck(HoldingPlan plan, AimedDrawing drawing, Figures f)
    {
        var places = drawing.Features.Select(plan.Of).OfType<PlanFeature>().SelectMany(p => p.Centres.Select(c => (p.Feature.Name, c)))
            .DistinctBy(p => (Math.Round(p.c.X, 3), Math.Round(p.c.Y, 3))).Take(2);
        return [.. places.Select(p => $"Spindle off: at X {f.L(p.c.X)}, Y {f.L(p.c.Y)} the point stands over the cross scribed for the {p.Name}.")];
    }
}
