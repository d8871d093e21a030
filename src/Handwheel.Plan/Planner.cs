using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Jobs.Stocks;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Steps;
using Handwheel.Plan.Workings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Plan;

/// <summary>Works a job out: every step into moves with readings and workings. A pure function of job and shop.</summary>
public sealed class Planner
{
    private readonly Job job;
    private readonly Shop shop;
    private readonly AimedDrawing drawing;
    private readonly Figures figures;
    private readonly MoveNumbers numbers = new();
    private readonly List<Finding> findings = [];
    private Workpiece metal;
    private (Place3 At, Place3 Outward)? web;
    private (Place3 At, Place3 Way)? waste;
    private SetupFacts? held;
    private string? sawnOff;
    private string? inSpindle;

    private Planner(Job job, Shop shop)
    {
        this.job = job;
        this.shop = shop;
        drawing = new(job);
        figures = new(job.Unit);
        metal = new(StockSolid.Of(job.Stock));
    }

    /// <summary>Works a job out.</summary>
    /// <param name="job">The job, read without a halt.</param>
    /// <param name="shop">The shop it is made in.</param>
    /// <returns>The plan; findings say what could not be worked out.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static JobPlan Plan(Job job, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shop);
        return new Planner(job, shop).Work();
    }

    private JobPlan Work()
    {
        var stages = new List<PlanStage>();
        var course = new List<CourseStage>();
        foreach (var stage in job.Stages)
        {
            var (planned, moved) = stage is Holding holding ? Held(holding) : ByHand(stage);
            stages.Add(planned);
            course.Add(moved);
        }

        return new()
        {
            Job = job,
            Shop = shop,
            Stages = stages,
            Findings = findings,
            Course = new()
            {
                Title = job.Title,
                JobFile = job.File,
                ShopFile = job.ShopFile,
                Unit = job.Unit,
                Stages = course,
                ReleaseAt = job.Stages.SelectMany(s => s.Steps).FirstOrDefault(s => s is HandStep { Work: HandWork.BreakWeb } or SawStep { Web: null, Slit: null })?.Id ?? sawnOff,
            },
        };
    }

    private (PlanStage Stage, CourseStage Course) Held(Holding holding)
    {
        if (shop.Mill is null)
        {
            findings.Add(FindingCatalogue.Missing(holding.Where, "A mill in the shop", "Write 'mill travels x 400, y 150, quill 100' in the shop's file."));
            return (new() { Stage = holding, Steps = [] }, new() { Name = holding.Name, Steps = [] });
        }

        var setter = new HoldingSetter(job, shop, drawing, figures);
        var (plan, setup, how) = setter.Set(holding, metal);
        findings.AddRange(setter.Findings);
        var machine = new Machine(shop, new(metal, setup), numbers, figures);
        var bench = new Bench(job, shop, holding, plan, machine, drawing);
        var planner = new StepPlanner(bench);
        var (scribed, dry) = Dry(holding, plan, machine);
        var steps = new List<PlanStep>();
        var moved = new List<CourseStep>();
        foreach (var step in holding.Steps)
        {
            planner.Plan(step);
            if (ReferenceEquals(step, holding.Steps[^1]))
            {
                machine.Stop("before hands come near the work");
            }

            var (events, lines, minutes) = machine.Take();
            steps.Add(new() { Step = step, Lines = lines, Workings = bench.TakeWorkings(), Minutes = minutes, Heading = Heading(machine, lines), Cautions = Cautions.Of(step, machine.Cutter, job, BreaksThrough(step, bench.Plan, machine)) });
            moved.Add(new() { Id = step.Id, Text = step.Text, Where = step.Where, Events = events });
        }

        (held, inSpindle) = (setup, machine.Cutter?.Name);
        metal = machine.Metal.Piece;
        (web, waste) = (planner.Web ?? web, planner.Waste ?? waste);
        findings.AddRange(bench.Findings);
        return (
            new() { Stage = holding, Setup = setup, HowSet = [.. scribed, .. how], Steps = steps, RetractZ = Highest(steps) ?? (machine.Cutter is null ? 0 : bench.Safe().Result), DryCheck = dry },
            new() { Name = holding.Name, Setup = setup, Steps = moved });
    }

    // The highest a row of the holding lifts to: clear of all it ever stands over.
    private static double? Highest(IEnumerable<PlanStep> steps) => steps.SelectMany(s => s.Lines).SelectMany(l => l is PassBracket b ? b.Lines : [l])
        .OfType<MoveLine>().Where(m => m is { Axis: Axis.Z, Cutting: false } && m.To > m.From).Select(m => (double?)m.To).Max();

    // Whether a hole of the step, as it now is, has no metal left under it.
    private static bool BreaksThrough(Step step, HoldingPlan plan, Machine machine) => step is HoleStep hole
        && hole.Features.Select(plan.Find).OfType<PlanFeature>().SelectMany(f => f.Centres).Any(c => machine.Metal.TopAt(c, machine.Setup.Rotary is { Lies: true } ? 0 : machine.At.T) is null);

    private static string Heading(Machine machine, IReadOnlyList<SheetLine> lines)
    {
        if (machine.Cutter is not { } cutter || !lines.OfType<MoveLine>().Any() && !lines.OfType<PassBracket>().Any())
        {
            return string.Empty;
        }

        var passes = lines.OfType<PassBracket>().Select(b => b.Depths.Count).DefaultIfEmpty(0).Max();
        var stays = lines.OfType<CutterLine>().Any() ? string.Empty : " stays";
        var speed = machine.Rpm > 0 ? FormattableString.Invariant($", {Math.Round(machine.Rpm)} rpm") : string.Empty;
        return cutter.Name + stays + speed + (passes > 1 ? FormattableString.Invariant($", {passes} passes") : string.Empty);
    }

    // Two places to stand the cutter over a scribed line before the first chip; the lines are scribed on the bare bar, before it is clamped.
    private (IReadOnlyList<string> Scribed, IReadOnlyList<string> Dry) Dry(Holding holding, HoldingPlan plan, Machine machine)
    {
        var places = job.Drawing.Features.Select(plan.Of).OfType<PlanFeature>().Where(f => AimedDrawing.RadiusOf(f.Feature) is not null)
            .SelectMany(f => f.Centres.Select(c => (f.Feature.Name, At: c))).DistinctBy(p => (Math.Round(p.At.X, 3), Math.Round(p.At.Y, 3))).Take(2).ToArray();
        var scribed = places.Length > 0 && job.Stock.Form == StockForm.Bar && ReferenceEquals(holding, job.Stages.OfType<Holding>().FirstOrDefault());
        List<string> said = [];
        if (scribed)
        {
            var box = machine.Metal.Box(0);
            said.Add("Before it is clamped, blue the top and scribe " + string.Join("; ", places.Select(p => $"{p.Name} {figures.LU(p.At.X - box.Min.X)} from the left end, {figures.LU(box.Max.Y - p.At.Y)} from the far side")) + ".");
        }

        var over = scribed ? "over the scribed cross" : "over the middle";
        return (said, [.. places.Select(p => $"X {figures.R(p.At.X, machine.Setup.Axes.X.Step)}, Y {figures.R(p.At.Y, machine.Setup.Axes.Y.Step)}: the spindle stands {over} of {p.Name}.")]);
    }

    private (PlanStage Stage, CourseStage Course) ByHand(Stage stage)
    {
        var worker = new HandWorker(job, shop, figures, web);
        var steps = new List<PlanStep>();
        var moved = new List<CourseStep>();
        foreach (var step in stage.Steps.OfType<HandStep>())
        {
            var done = worker.Plan(step, metal, inSpindle);
            inSpindle = null;
            if (done is null)
            {
                findings.Add(FindingCatalogue.CannotPlan(new FindingPlace(step.Id, step.Where), $"Where '{step.Text}' is done cannot be worked out", "Name the face or the feature: 'file near side to the line'; a web is broken after a saw has left one."));
            }

            steps.Add(new() { Step = step, Lines = done is { } d ? [d.Line] : [], Workings = done?.Line.Workings ?? [], Minutes = 5, Cautions = Cautions.Of(step, null, job, breaksThrough: false) });
            moved.Add(new() { Id = step.Id, Text = step.Text, Where = step.Where, Events = done is { } e ? [e.Work] : [] });
            if (done is { } w)
            {
                sawnOff ??= w.Work.Work == "saw" && HandWaste.Holds(w.Work.At, w.Work.Direction, held) ? step.Id : null;
                Taken(w.Work);
            }
        }

        return (new() { Stage = stage, Steps = steps }, new() { Name = stage.Name, Steps = moved });
    }

    // What falls away by hand, as far as the steps that follow must know of it.
    private void Taken(Handwork work)
    {
        var fallen = work.Work == "saw" ? HandWaste.Beyond(work.At, work.Direction)
            : work.Work == "break web" && waste is { } w ? HandWaste.Beyond(w.At, w.Way) : null;
        if (fallen is not null)
        {
            metal = metal.After(fallen);
        }
    }
}
