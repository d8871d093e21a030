using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;

namespace Handwheel.Plan.Steps;

// One planner a verb.
internal sealed class StepPlanner(Bench bench)
{
    private readonly Toucher toucher = new(bench);
    private Step? allowed;

    // A place of the web that the last saw left, part frame, and the way out of the part there.
    internal (Place3 At, Place3 Outward)? Web { get; private set; }

    // What falls away with it.
    internal (Place3 At, Place3 Way)? Waste { get; private set; }

    internal void Plan(Step step)
    {
        new Uprighting(bench).Turn(step);
        if (step is not MeasureStep)
        {
            bench.Machine.Dials.Forget();
        }

        switch (step)
        {
            case ZeroStep zero:
                new ZeroPlanner(bench, toucher).Plan(zero);
                break;
            case HoleStep { Work: HoleWork.Bore } bored:
                allowed = bored.Allow is { Value: > 0 } ? bored : allowed;
                new Boring(bench, toucher).Plan(bored, bored.Allow?.Value ?? 0);
                break;
            case HoleStep hole:
                new HoleMaking(bench, toucher).Plan(hole);
                break;
            case MeasureStep measure:
                Measure(measure);
                break;
            case MoveStep move when move.Cutter is null || toucher.Use(move):
                new TypedMoves(bench).Plan(move);
                break;
            case FaceStep or RoundStep or SideStep or SlotStep or PocketStep or BitesStep or SawStep or ChamferStep or FlatsStep when toucher.Use(step):
                Mill(step);
                break;
            case BroachStep broach:
                new Broaching(bench, toucher).Plan(broach);
                break;
            default:
                break;
        }

        bench.StepBefore = step;
    }

    private static Typed? AllowOf(Step step) => step switch
    {
        FaceStep s => s.Allow,
        FlatsStep s => s.Allow,
        RoundStep s => s.Allow,
        SideStep s => s.Allow,
        SlotStep s => s.Allow,
        PocketStep s => s.Allow,
        _ => null,
    };

    private static Typed? PassOf(Step step) => step switch
    {
        FaceStep s => s.PerPass,
        FlatsStep s => s.PerPass,
        RoundStep s => s.PerPass,
        SideStep s => s.PerPass,
        PocketStep s => s.PerPass,
        _ => null,
    };

    private void Mill(Step step)
    {
        allowed = AllowOf(step) is not null ? step : allowed;
        Mill(step, AllowOf(step)?.Value ?? 0, PassOf(step));
    }

    private void Mill(Step step, double allow, Typed? perPass)
    {
        switch (step)
        {
            case FaceStep face:
                new Facing(bench).Plan(face, allow, perPass);
                break;
            case RoundStep round:
                new RoundMilling(bench).Plan(round, allow, perPass);
                break;
            case SideStep side:
                new SideMilling(bench).Plan(side, allow, perPass);
                break;
            case SlotStep slot:
                new SlotMilling(bench).Plan(slot, allow);
                break;
            case PocketStep pocket:
                new PocketMilling(bench).Plan(pocket, allow, perPass, onlyWalls: allow <= 0 && pocket.Allow is { Value: > 0 });
                break;
            case BitesStep bites:
                new Biting(bench).Plan(bites);
                break;
            case FlatsStep flats:
                new FlatMilling(bench).Plan(flats, allow, perPass);
                break;
            case ChamferStep chamfer:
                new ChamferMilling(bench).Plan(chamfer);
                break;
            case SawStep saw:
                var sawing = new Sawing(bench);
                sawing.Plan(saw);
                (Web, Waste) = (sawing.Web, sawing.Waste);
                break;
            default:
                break;
        }
    }

    // Measured, then the step that left metal is done again with none left: at full depth at once, or in its passes.
    private void Measure(MeasureStep step)
    {
        new Measuring(bench).Plan(step, allowed);
        if (!step.ThenLastPass)
        {
            return;
        }

        if (allowed is null)
        {
            bench.Cannot(step, "No step before this one left metal for a last pass.", "Write 'allow 0.2' in the step before, or leave 'then last pass' out.");
            return;
        }

        if (allowed is HoleStep bored)
        {
            new Boring(bench, toucher).Plan(bored, 0, measured: true);
            allowed = null;
            return;
        }

        Mill(allowed, 0, step.FullDepth ? null : PassOf(allowed));
        (bench.IsClose, bench.Beyond) = (false, 0);
        allowed = null;
    }
}
