using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// Moves as they were typed: readings of the holding. Where a turn or a plunge stands at a place, that place is gone to first, above the work.
internal static class TypedMovePlanner
{
    internal static void Plan(Desk desk, MoveStep step, Cutter? cutter)
    {
        if (cutter is not null)
        {
            desk.Take(cutter);
        }

        if (step.TurnsRotary)
        {
            Place(desk, step, false);
            var turn = step.T is { } t ? t.Value * Setting.Plane.ToDegrees : desk.Recorder.At.T + ((step.Clockwise ? -360 : 360) * step.Turns);
            var to = desk.Work.Reading(Axis.T, new("T typed", "as typed", step.T?.Text ?? Figures.Bare(step.Turns), turn, Work.Practice), Toward.Nearest);
            desk.Recorder.Go(Axis.T, to, step.Cutting, Math.Abs(desk.Recorder.At.X - desk.Recorder.Centre.X), step.Text, Axis.X, Axis.Y, Axis.Z);
            return;
        }

        Place(desk, step, step.Cutting);
    }

    private static void Place(Desk desk, MoveStep step, bool cutting)
    {
        Bring(desk, Axis.X, step.X, cutting || step.TurnsRotary);
        Bring(desk, Axis.Y, step.Y, cutting || step.TurnsRotary);
        Bring(desk, Axis.Z, step.Z, cutting || step.TurnsRotary);
        if (step is { TurnsRotary: false, T: { } t })
        {
            desk.Recorder.Go(Axis.T, desk.Work.Reading(Axis.T, new("T typed", "as typed", t.Text, t.Value * Setting.Plane.ToDegrees, Work.Practice), Toward.Nearest), cutting, 0, step.Text);
        }
    }

    private static void Bring(Desk desk, Axis axis, Typed? typed, bool cutting)
    {
        if (typed is not null)
        {
            desk.Recorder.Go(axis, desk.Work.Reading(axis, new($"{axis} typed", "as typed", typed.Text, typed.Value, Work.Practice), Toward.Nearest, desk.Work.Typed($"{axis}", typed)), cutting);
        }
    }

}
