using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// Moves as a person wrote them: X, then Y, then Z where it is a free move that goes down, else as cut; then the turn.
internal sealed class TypedMoves(Bench bench)
{
    internal void Plan(MoveStep step)
    {
        if (step is { Cutting: true, TurnsRotary: false, X: null, Y: null, Z: { } z } && step.Text.StartsWith("plunge", StringComparison.OrdinalIgnoreCase) && z.Value > bench.Machine.At.Z + 1e-9)
        {
            var stands = bench.Figures.R(bench.Machine.At.Z, bench.Work.Facts(Axis.Z).Step);
            bench.Cannot(step, $"This plunge goes up: the cutter stands at Z {stands}, and {z.Text} is above that", "Z goes down towards minus: 'plunge z to -3'. To lift the cutter write 'move z to 5'.");
            return;
        }

        bench.Machine.Watch();
        Moves(step);
        if (GoesToDepth(step) && !bench.Machine.Met)
        {
            return;
        }

        var idle = step.Cutting && bench.Machine.Shape is not null && !bench.Machine.Met;
        (idle, bench.Idle) = (idle && !bench.Idle, idle || (bench.Idle && !step.Cutting));
        if (idle)
        {
            bench.Say(FindingCatalogue.CutsNothing(new FindingPlace(step.Id, step.Where)));
        }
    }

    // Down beside the work to the depth of the cut that follows: a plunge that is meant to meet nothing.
    private bool GoesToDepth(MoveStep step) => step is { Cutting: true, TurnsRotary: false, X: null, Y: null, Z: not null }
        && bench.Holding.Steps.SkipWhile(s => !ReferenceEquals(s, step)).Skip(1).FirstOrDefault() is MoveStep { Cutting: true } next && (next.X is not null || next.Y is not null || next.TurnsRotary);

    private void Moves(MoveStep step)
    {
        (Axis Axis, Typed? Value)[] asked = [(Axis.X, step.X), (Axis.Y, step.Y), (Axis.Z, step.Z)];
        var cuts = step.Cutting && !step.TurnsRotary;
        foreach (var (axis, value) in asked)
        {
            if (value is not null)
            {
                bench.Machine.Go(new(axis, Typed(axis, value), cuts || (step.Cutting && axis != Axis.Z)) { AsTyped = true });
            }
        }

        if (!step.TurnsRotary)
        {
            return;
        }

        for (var i = 0; i < (int)step.Turns; i++)
        {
            bench.Machine.Go(new(Axis.T, bench.AngleZero, step.Cutting) { WholeTurn = true, Counterclockwise = !step.Clockwise });
        }

        var rest = step.Turns - Math.Floor(step.Turns);
        if (step.T is not null || rest > 1e-9)
        {
            var to = step.T is { } typed ? typed.Value * Plane.ToDegrees : bench.Machine.At.T + ((step.Clockwise ? -360 : 360) * rest);
            bench.Machine.Go(new(Axis.T, bench.Angle("theta as typed", "as typed", Figures.Deg(to), to, Toward.Nearest), step.Cutting) { Counterclockwise = !step.Clockwise, Told = true, AsTyped = true });
        }
    }

    private Working Typed(Axis axis, Typed value) =>
        bench.Show(bench.Reading(axis, $"{axis} as typed", "as typed", value.Text, value.Value, Toward.Nearest, bench.Work.Typed(axis.ToString(), value)));
}
