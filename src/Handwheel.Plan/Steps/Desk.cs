using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// What every step planner works with in one holding: the part as it lies, the machine as it stands, and the few moves common to all steps.
internal sealed class Desk
{
    internal const double ClearAbove = 2;
    internal const double Past = 0.5;

    internal required Job Job { get; init; }

    internal required Shop Shop { get; init; }

    internal required AimedDrawing Drawing { get; init; }

    internal required HoldingPlan Plan { get; init; }

    internal required SetupFacts Setup { get; init; }

    internal required Holding Holding { get; init; }

    internal required Work Work { get; init; }

    internal required Recorder Recorder { get; init; }

    internal required PlannedMetal Metal { get; init; }

    internal required Speeds Speeds { get; init; }

    internal List<Working> Shown { get; } = [];

    internal List<string> Cautions { get; } = [];

    internal bool Turns => Setup.Rotary is not null;

    internal double Top => Plan.Most.Z;

    internal double Retract => Rounding.ToStep(Top + ClearAbove, Setup.Axes.Z.Step, Toward.Plus);

    internal double ChangeAt => Rounding.ToStep(Top + 40, Setup.Axes.Z.Step, Toward.Plus);

    internal void Show(Working w)
    {
        if (!Shown.Contains(w))
        {
            Shown.Add(w);
        }
    }

    internal Working Rule(Axis axis, double value, string name, string why, Toward toward = Toward.Nearest) => Work.Reading(
        axis,
        new(name, why, axis == Axis.T ? Figures.Deg(value) : Work.Figures.L(value), value, Work.Practice),
        toward,
        Work.Rule(name, value, why));

    internal void Up() => Recorder.Go(Axis.Z, Rule(Axis.Z, Retract, "height clear of the work", "2 above the bare stock"));

    // Puts the step's cutter in and touches it off, where it is not in already.
    internal void Take(Cutter cutter)
    {
        if (Recorder.Cutter?.Name == cutter.Name && Recorder.ZKnown)
        {
            return;
        }

        Put(cutter);
        TouchOffPlanner.Touch(this, null, null);
    }

    internal void Put(Cutter cutter)
    {
        if (Recorder.Cutter?.Name == cutter.Name)
        {
            return;
        }

        var rpm = Speeds.Rpm(cutter);
        var feed = Speeds.Feed(cutter, rpm);
        Recorder.Put(cutter, rpm.Result, ChangeAt);
        Recorder.Feed = feed.Result;
        Show(rpm);
        Show(feed);
    }

    // Depths from the metal's top down to a height, a pass at a time.
    internal IReadOnlyList<Working> Depths(double top, double to, DepthTyped typed)
    {
        var count = typed.PerPass is { } p ? Math.Max(1, (int)Math.Ceiling(((top - to) / p.Value) - 1e-6)) : 1;
        var found = new List<Working>();
        for (var i = 1; i <= count; i++)
        {
            var z = i == count ? to : top - (i * typed.PerPass!.Value);
            var inputs = new List<WorkingInput> { Work.Typed("depth typed", typed.To) };
            if (typed.PerPass is { } pass)
            {
                inputs.Add(Work.Typed("a pass", pass));
            }

            found.Add(Work.Reading(
                Axis.Z,
                new($"Z of pass {Figures.Bare(i)}", i == count ? "the depth typed" : "top of the metal - passes x depth of one", i == count ? typed.To.Text : $"{Work.Figures.L(top)} - {Figures.Bare(i)} x {typed.PerPass!.Text}", z, Work.Practice),
                Toward.Plus,
                [.. inputs]));
        }

        return found;
    }

    // Whether a cutter standing at a reading and height is clear of the metal as planned so far, from there up.
    internal bool Clear(double x, double y, double t, double z, double radius, double extra = 0.2)
    {
        var reach = radius + extra;
        for (var ring = 0; ring <= 5; ring++)
        {
            var spokes = ring == 0 ? 1 : 32;
            for (var i = 0; i < spokes; i++)
            {
                var at = Plane.Polar(new(x, y), reach * ring / 5, 2 * Math.PI * i / spokes);
                var p = Plane.Turned(at, Recorder.Centre, -t / Plane.ToDegrees);
                if (Metal.TopAt(Plan, p) > z + 1e-6)
                {
                    return false;
                }
            }
        }

        return true;
    }

    internal Finding CannotPlan(Step step, string why, string mend) => FindingCatalogue.CannotPlan(new FindingPlace(step.Id, step.Where), why, mend);
}
