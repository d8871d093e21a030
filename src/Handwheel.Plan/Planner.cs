using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Steps;
using Handwheel.Plan.Workings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan;

/// <summary>Works a job out: each step into moves with readings and workings, in the order they are cranked. A pure function of job and shop.</summary>
public sealed class Planner
{
    private readonly Job job;
    private readonly Shop shop;
    private readonly AimedDrawing drawing;
    private readonly PlannedMetal metal;
    private readonly Recorder recorder;
    private readonly Figures figures;
    private readonly List<Finding> findings = [];
    private Point3? web;
    private string? releaseAt;

    private Planner(Job job, Shop shop)
    {
        this.job = job;
        this.shop = shop;
        drawing = new(job);
        metal = new(job.Stock);
        recorder = new(metal, shop);
        figures = new(job.Unit);
    }

    /// <summary>Plans a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="shop">The shop; without a mill nothing on a machine is planned.</param>
    /// <returns>The plan; a step that could not be planned has no moves and a finding.</returns>
    public static JobPlan Plan(Job job, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shop);
        return new Planner(job, shop).Whole();
    }

    private JobPlan Whole()
    {
        var stages = new List<PlanStage>();
        var course = new List<CourseStage>();
        foreach (var stage in job.Stages)
        {
            var (plan, facts) = stage is Holding holding ? Held(holding) : ByHand(stage);
            stages.Add(plan);
            course.Add(facts);
        }

        return new()
        {
            Job = job,
            Shop = shop,
            Course = new() { Title = job.Title, Unit = job.Unit, Stages = course, ReleaseAt = releaseAt, JobFile = job.File, ShopFile = job.ShopFile },
            Stages = stages,
            Findings = findings,
        };
    }

    private (PlanStage Plan, CourseStage Course) ByHand(Stage stage)
    {
        var steps = new List<PlanStep>();
        var course = new List<CourseStep>();
        foreach (var step in stage.Steps.OfType<HandStep>())
        {
            var (line, happens) = HandPlanner.Plan(drawing, shop, step, web);
            recorder.Say(line, happens);
            if (step.Work == HandWork.BreakWeb)
            {
                releaseAt = step.Id;
            }

            Close(step, [], [], steps, course);
        }

        return (new() { Stage = stage, Steps = steps }, new() { Name = stage.Name, Steps = course });
    }

    private (PlanStage Plan, CourseStage Course) Held(Holding holding)
    {
        if (shop.Mill is null)
        {
            findings.Add(FindingCatalogue.CannotPlan(new FindingPlace(holding.Name, holding.Where), "The shop has no mill", "Write the mill into the shop."));
            return (new() { Stage = holding, Steps = [] }, new() { Name = holding.Name, Steps = [] });
        }

        var maker = new SetupMaker(drawing, job.Stock, shop);
        var lies = maker.Lay(holding);
        var facts = maker.Facts(holding, lies);
        var desk = Furnish(holding, lies, facts);
        recorder.Holding = lies;
        recorder.Centre = new(facts.Rotary?.X ?? 0, facts.Rotary?.Y ?? 0);
        recorder.Begin(new(0, 0, desk.ChangeAt, 0));
        var rounds = new RoundPlanner(desk);
        var saws = new SawPlanner(desk);
        var steps = new List<PlanStep>();
        var course = new List<CourseStep>();
        for (var i = 0; i < holding.Steps.Count; i++)
        {
            var step = holding.Steps[i];
            if (One(desk, step, holding.Steps.Skip(i + 1), rounds, saws) is { } finding)
            {
                findings.Add(finding);
            }

            Close(step, [.. desk.Shown], [.. desk.Cautions], steps, course);
            desk.Shown.Clear();
            desk.Cautions.Clear();
        }

        if (saws.Web is { } point)
        {
            web = lies.Placement.Back(point);
        }

        return (
            new() { Stage = holding, Setup = facts, HowSet = HowSet.Of(holding, lies, shop, figures), DryCheck = HowSet.DryCheck(lies, drawing, figures), RetractZ = desk.Retract, Steps = steps },
            new() { Name = holding.Name, Setup = facts, Steps = course });
    }

    private Desk Furnish(Holding holding, HoldingPlan lies, SetupFacts facts) => new()
    {
        Job = job,
        Shop = shop,
        Drawing = drawing,
        Plan = lies,
        Setup = facts,
        Holding = holding,
        Work = new(figures, facts.Axes),
        Recorder = recorder,
        Metal = metal,
        Speeds = new(job, shop.Mill!, figures),
    };

    private Finding? One(Desk desk, Step step, IEnumerable<Step> rest, RoundPlanner rounds, SawPlanner saws)
    {
        var cutter = step.Cutter is null ? null : shop.Cutters.GetValueOrDefault(step.Cutter);
        if (step is ZeroStep zero)
        {
            var next = rest.Select(s => s.Cutter).FirstOrDefault(c => c is not null);
            ZeroPlanner.Plan(desk, zero, next is null ? null : shop.Cutters.GetValueOrDefault(next));
            return null;
        }

        return step switch
        {
            MoveStep typed => Typed(desk, typed, cutter),
            MeasureStep measure => rounds.Measure(measure),
            _ when cutter is null => desk.CannotPlan(step, step.Cutter is null ? "No cutter is named" : $"{step.Cutter} is not in the shop", "Name a cutter of the shop."),
            _ => Cutting(desk, step, cutter, rounds, saws),
        };
    }

    private static Finding? Typed(Desk desk, MoveStep step, Cutter? cutter)
    {
        TypedMovePlanner.Plan(desk, step, cutter);
        return null;
    }

    private static Finding? Cutting(Desk desk, Step step, Cutter cutter, RoundPlanner rounds, SawPlanner saws)
    {
        switch (step)
        {
            case FaceStep face:
                FacePlanner.Plan(desk, face, cutter);
                return null;
            case HoleStep { Work: not HoleWork.Bore } hole:
                HolePlanner.Plan(desk, hole, cutter);
                return null;
            case RoundStep round:
                return rounds.Plan(round, cutter);
            case SideStep side:
                return SidePlanner.Plan(desk, side, cutter);
            case SawStep saw:
                return saws.Plan(saw, cutter);
            default:
                return desk.CannotPlan(step, "This step is read but not planned yet", "Write the moves out as typed moves.");
        }
    }

    private void Close(Step step, IReadOnlyList<Working> workings, IReadOnlyList<string> cautions, List<PlanStep> steps, List<CourseStep> course)
    {
        var (lines, events) = recorder.Take();
        steps.Add(new() { Step = step, Lines = lines, Workings = workings, Cautions = cautions, Minutes = recorder.TakeMinutes() });
        course.Add(new() { Id = step.Id, Text = step.Text, Where = step.Where, Events = events });
    }
}
