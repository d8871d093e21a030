using Handwheel.Jobs;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;

namespace Handwheel.Plan;

// Cautions that bite at a step (common practice, no source).
internal static class Cautions
{
    internal static IReadOnlyList<string> Of(Step step, Cutter? cutter, Job job, bool breaksThrough)
    {
        var said = new List<string>();
        var brass = job.Metal.Contains("brass", StringComparison.OrdinalIgnoreCase);
        switch (step)
        {
            case SawStep:
                said.Add("A saw grabs where it is fed fast or with climb: lock every slide but the one that feeds, low speed, oil, hands away.");
                break;
            case HoleStep { Work: HoleWork.Drill } when brass:
                said.Add(breaksThrough
                    ? "Brass pulls a drill in as it breaks through: dull the lips, hold the quill back to the pace told, to half of it at the end."
                    : "Brass grabs a drill: dull the lips, hold the quill back to the pace told, feed by the wheel.");
                break;
            case HoleStep { Work: HoleWork.Tap }:
                said.Add("Tap by hand with the spindle off and free; a power tap needs a head made for it.");
                break;
            case HoleStep { Work: HoleWork.Bore }:
                said.Add("Turn the head round by hand once before the motor: see that the bar swings clear. Low speed, the head is out of balance.");
                break;
            case BitesStep:
                said.Add("Plunged at the edge the cutter is pushed aside: fine feed, quill lock nipped.");
                break;
            case HandStep { Work: HandWork.Press }:
                said.Add("Stand clear of the line of the ram: a punch that leans may burst.");
                break;
            case HandStep { Work: HandWork.BreakWeb }:
                said.Add("A broken web is sharp.");
                break;
            default:
                break;
        }

        if (cutter is { Kind: CutterKind.FlyCutter })
        {
            said.Add("A fly cutter throws: guard up, low speed, stand aside.");
        }

        return said;
    }
}
