using Handwheel.Jobs.Drawings;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Steps;

// Aimed sizes as inputs of workings: the middle of their limits, and where they were typed.
internal static class Sizes
{
    internal static WorkingInput Across(Desk desk, PlanFeature feature)
    {
        var value = 2 * (AimedDrawing.RadiusOf(feature.Feature) ?? 0);
        var size = desk.Drawing.SizeOf(feature.Feature.Name, SizeKind.Across);
        var f = desk.Work.Figures;
        var says = size is null
            ? $"{feature.Feature.Name} across"
            : $"aimed: the middle of {size.Name}, {f.L(size.Limits.Lower)} to {f.L(size.Limits.Upper)}";
        return new($"{feature.Feature.Name} across", value, f.L(value), InputKind.Aimed, says, size?.Where ?? feature.Feature.Where, null);
    }
}
