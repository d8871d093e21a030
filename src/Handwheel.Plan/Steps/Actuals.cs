using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Steps;

namespace Handwheel.Plan.Steps;

// What to do with an actual that no pass of its own step follows.
internal sealed class Actuals(Bench bench)
{
    internal string Said(MeasureStep step, Size size, double? stands)
    {
        if (stands is not { } expected)
        {
            return " Its faces are not all cut yet.";
        }

        var figures = bench.Figures;
        var limits = size.Limits;
        var wanted = size.Kind == SizeKind.Angle ? string.Empty : $" (aimed at {figures.L(limits.Middle)})";
        var later = Later(step, size);
        if (later.OfType<HoleStep>().FirstOrDefault(h => h.Work == HoleWork.Bore) is { } bore && size.Kind is SizeKind.Across or SizeKind.Bore)
        {
            return $" Write it down: in {bore.Id} the head is opened by what is then wanted - what it measured, half of that on the head's radius.";
        }

        if (later.Count > 0)
        {
            return $" {(limits.Contains(expected) ? "Within its limits already" : "Not yet to size")}{wanted}. Write it down: by what it measures over or under {figures.L(expected)} the readings of {later[0].Id} are put right, half of it where it cuts both faces.";
        }

        return limits.Contains(expected)
            ? $" Nothing cuts it after this{wanted}. Is metal left beyond its limits, cut the last pass again, closer by what is too much (half of it on each of two faces); too little cannot be mended."
            : $" It is not to size{wanted} and nothing cuts it after this.";
    }

    // The steps after this one that name what it measures, those that drill or break edges aside.
    private List<Step> Later(MeasureStep step, Size size) =>
        [.. bench.Job.Stages.SelectMany(s => s.Steps).SkipWhile(s => !ReferenceEquals(s, step)).Skip(1).Where(s => Named(s).Any(n => n == size.Feature || n == size.Other))];

    private static IReadOnlyList<string> Named(Step step) => step switch
    {
        HoleStep { Work: HoleWork.Bore or HoleWork.Ream or HoleWork.Counterbore } s => s.Features,
        RoundStep s => [s.Feature],
        SideStep s => [s.Feature],
        SlotStep s => [s.Feature],
        PocketStep s => [s.Feature],
        FlatsStep s => [s.Feature],
        FaceStep { Feature: { } name } => [name],
        HandStep { Work: HandWork.File or HandWork.Rub, Feature: { } name } => [name],
        _ => [],
    };
}
