using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Workings;
using Handwheel.Proof;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Tests.Fixtures;

/// <summary>A few steps of the crank worked out by hand, and a proof of them, so that the sheet can be tested without planner or prover.</summary>
internal static class CrankPlan
{
    private static readonly Working Clear = Work("X where the cutter stops clear of the hub", "sqrt((9.975/2 + 10/2 + 0.3)^2 - 3^2)", 9.8404, 9.845, "9.8404 to 0.005, towards metal left: 0.0046") with
    {
        Inputs =
        [
            new("hub across", 9.975, "9.975", InputKind.Aimed, "the middle of hub across 10 +0 -0.05", CrankJob.At(14), null),
            new("em10", 10, "10.000", InputKind.Shop, "em10's true size", CrankShop.At(9), null),
            new("clear", 0.3, "0.3", InputKind.Typed, "0.3 clear of hub", CrankJob.At(21), null),
        ],
    };

    private static readonly Working Row = Work("Y of the far row", "3", 3, 3, string.Empty);
    private static readonly Working Out = Work("clear of the bar's end", "39 + 10/2 + 2", 46, 46, string.Empty);
    private static readonly Working Last = Work("X of the last pass", "9.975/2 + 10/2", 9.9875, 9.99, "9.9875 to 0.005, towards metal left: 0.0025");

    public static SetupFacts Setup { get; } = new()
    {
        Up = "top",
        PartOrigin = default,
        Rotary = new(0, 0, -46, Lies: false, -1, 0, 1.0 / 60),
        Fixtures =
        [
            new() { Name = "fixed jaw", Holds = true, Turns = true, Least = new(-20, 6.98, -31), Most = new(20, 18.98, -19) },
            new() { Name = "moving jaw", Holds = true, Turns = true, Least = new(-20, -18.98, -31), Most = new(20, -6.98, -19) },
            new() { Name = "vise bed", Turns = true, Least = new(-20, -40, -46), Most = new(20, 25, -31) },
            new() { Name = "parallel", Turns = true, Least = new(-20, -6, -31), Most = new(20, 6, -29.5) },
            new() { Name = "rotary", Turns = true, Least = new(0, 0, -126), Most = new(0, 0, -46), Across = 160 },
        ],
        Axes = new(new(-200, 200, Readout: true, 0.005, 0.15), new(-75, 75, Readout: true, 0.005, 0.15), new(-50, 50, Readout: true, 0.005, 0), new(null, null, Readout: false, 1.0 / 60, 0)),
    };

    public static JobPlan Plan()
    {
        var steps = CrankJob.AboveSteps;
        PlanStep[] above = [Touch(steps[0]), Face(steps[1]), Round(steps[2]), Measure(steps[3]), Drill(steps[4])];
        var hand = new PlanStep
        {
            Step = CrankJob.Job.Stages[1].Steps[0],
            Lines = [new HandLine { Says = "Press sq4 6.000 deep into the pilot, square to the bar's side, in the arbor press.", Check = "a 3.98 square goes in, a 4.08 does not", Workings = [Work("push on the punch", "4 * 0.9 * 820", 2952, 2952, string.Empty) with { Unit = "N" }] }],
            Workings = [],
            Cautions = ["Stand clear of the line of the ram: a punch that leans may burst."],
            Minutes = 15,
        };
        return new()
        {
            Job = CrankJob.Job,
            Shop = CrankShop.Shop,
            Findings = [],
            Stages =
            [
                new()
                {
                    Stage = (Holding)CrankJob.Job.Stages[0],
                    Setup = Setup,
                    HowSet = ["Vise jaws along X, fixed jaw at the back, tops at Z -19.000. Bar on parallels, tapped down.", "X 0 Y 0 on the rotary's centre: indicator on the rotary, swept by its own turn round a pin in the spindle."],
                    DryCheck = ["X 0.000, Y 0.000: over the cross at the hub", "T to 90 deg 00', clockwise: long end toward you"],
                    RetractZ = 2,
                    Steps = above,
                },
                new() { Stage = CrankJob.Job.Stages[1], Steps = [hand] },
            ],
            Course = new()
            {
                Title = CrankJob.Job.Title,
                Unit = LengthUnit.Millimetre,
                Stages =
                [
                    new() { Name = "A", Setup = Setup, Steps = [.. above.Select(s => Events(s))] },
                    new() { Name = "by hand", Steps = [new() { Id = "h1", Text = hand.Step.Text, Where = hand.Step.Where, Events = [new Handwork { Work = "press", Cutter = "sq4", Direction = new(0, 0, -1), Depth = 6 }] }] },
                ],
            },
        };
    }

    public static ProofResult Proof() => new()
    {
        Findings = [],
        Sizes = [new("hub across", 9.98, 9.98, 9.95, 10, Ok: true, ByHand: false), new("arm high", 4.1, 4.1, 3.95, 4.05, Ok: false, ByHand: true)],
        Release = new("h1", null, "h1", Decided: true),
        Guarantee = "Rays 0.1 apart.",
        Stocks = [.. new[] { "A1", "A2", "A3", "A4", "A5" }.Select((id, n) => new StepStock(id, p => Top(p, n), p => Top(p, n + 1)))],
    };

    // The stock before step n: a bar, the arm faced after A2, the hub round after A3 and A4, the hole after A5.
    private static double? Top(Point2 p, int n)
    {
        if (p.X is < -9 or > 39 || p.Y is < -6.98 or > 6.98 || (n >= 5 && (p.X * p.X) + (p.Y * p.Y) < 4))
        {
            return null;
        }

        var away = Math.Sqrt((p.X * p.X) + (p.Y * p.Y));
        return n >= 3 && away is > 5.0 and < 15 ? -8 : n >= 2 && p.X > 4.84 && away > 5.3 ? -8 : 0.5;
    }

    private static CourseStep Events(PlanStep step)
    {
        var events = new List<CourseEvent>();
        var at = new Reading(0, 0, 40, 0);
        foreach (var line in step.Lines)
        {
            Add(line, ref at, events);
        }

        return new() { Id = step.Step.Id, Text = step.Step.Text, Where = step.Step.Where, Events = events };
    }

    private static void Add(SheetLine line, ref Reading at, List<CourseEvent> events)
    {
        switch (line)
        {
            case CutterLine cutter:
                events.Add(new CutterIn(cutter.Cutter, cutter.Rpm));
                break;
            case TouchOffLine touch:
                events.Add(touch.TouchOff);
                break;
            case MoveLine move:
                at = move.Axis switch { Axis.X => at with { X = move.To }, Axis.Y => at with { Y = move.To }, Axis.Z => at with { Z = move.To }, _ => at with { T = move.To } };
                events.Add(new Move { Number = move.Number, To = at, Cutting = move.Cutting });
                break;
            case PassBracket bracket:
                foreach (var z in bracket.Depths)
                {
                    at = at with { Z = z };
                    events.Add(new Move { Number = bracket.Number, To = at, Cutting = false });
                    foreach (var inner in bracket.Lines)
                    {
                        Add(inner, ref at, events);
                    }
                }

                break;
        }
    }

    private static Working Work(string name, string putIn, double exact, double result, string rounded) => new()
    {
        Name = name, Formula = putIn, PutIn = putIn, Exact = exact, Result = result, Unit = "mm", Rounded = rounded, Source = "plane geometry", Inputs = [],
    };

    private static MoveLine Move(int number, Axis axis, double from, double to, bool cuts, Working working, bool clockwise = true, string arrive = "", string remark = "") => new()
    {
        Number = number, Axis = axis, From = from, To = to, Cutting = cuts, Working = working, CrankClockwise = clockwise, Arrive = arrive, Remark = remark,
        Turns = axis == Axis.T ? Math.Abs(to - from) / 5 : Math.Abs(to - from) / (axis == Axis.Z ? 2.5 : 5), Pace = cuts ? 5.6 : 0, WorkTurns = axis == Axis.T ? (to < from ? "clockwise" : "counterclockwise") : string.Empty,
    };

    private static PlanStep Touch(Step step) => new()
    {
        Step = step,
        Heading = "em10 in",
        Lines =
        [
            new CutterLine { Cutter = "em10", Rpm = 900, Out = 30 },
            new TouchOffLine { TouchOff = new() { Axis = Axis.Z, On = "metal", Surface = "bar top", At = default, With = "em10", Paper = 0.05, SetTo = 0.55 }, Says = "em10 on paper 0.05 on the raw top, spindle off; then set", Working = Work("Z set on the raw top", "0.5 + 0.05", 0.55, 0.55, string.Empty) },
        ],
        Workings = [Work("Z set on the raw top", "0.5 + 0.05", 0.55, 0.55, string.Empty)],
        Minutes = 10,
    };

    private static PlanStep Face(Step step) => new()
    {
        Step = step,
        Heading = "em10 stays, 900 rpm, two rows of 8 passes",
        Lines =
        [
            Move(1, Axis.Y, 0, 3, cuts: false, Row, arrive: "from -") with { Lock = [Axis.Y] },
            Move(2, Axis.X, 0, 46, cuts: false, Out),
            new PassBracket
            {
                Number = 3, Times = 2, Remark = "first box row 1, second box row 2", Depths = [-1, -2, -3, -4, -5, -6, -7, -8],
                DepthWorkings = [.. Enumerable.Range(1, 8).Select(n => Work("depth of a pass", "-1.0 a pass", -n, -n, string.Empty))],
                Lines = [Move(4, Axis.X, 46, 9.845, cuts: true, Clear, clockwise: false, arrive: "from +") with { ReadBack = true }, Move(5, Axis.X, 9.845, 46, cuts: false, Out, remark: "own slot")],
            },
            Move(6, Axis.Z, -8, 2, cuts: false, Row, clockwise: false),
            Move(7, Axis.Y, 3, -3, cuts: false, Row, arrive: "from +", remark: "again from 3, as the second row; lock the cross slide again before it cuts"),
        ],
        Workings = [Clear, Out, Row],
        Cautions = ["Stop at +9.845. At +9.525 the hub itself is cut: 0.320 to spare."],
        Minutes = 40,
    };

    private static PlanStep Round(Step step) => new()
    {
        Step = step,
        Heading = "em10 stays, 900 rpm, 8 passes",
        Lines =
        [
            Move(8, Axis.Y, -3, 0, cuts: false, Row, arrive: "from -") with { Lock = [Axis.Y] },
            Move(9, Axis.X, 46, 15, cuts: false, Out, clockwise: false),
            new PassBracket
            {
                Number = 10, Depths = [-1, -2, -3, -4, -5, -6, -7, -8],
                DepthWorkings = [.. Enumerable.Range(1, 8).Select(n => Work("depth of a pass", "-1.0 a pass", -n, -n, string.Empty))],
                Lines = [Move(11, Axis.X, 15, 10.19, cuts: true, Last, clockwise: false, arrive: "from +"), Move(12, Axis.T, 0, -360, cuts: true, Row), Move(13, Axis.X, 10.19, 15, cuts: false, Out)],
            },
        ],
        Workings = [Last],
        Cautions = ["Turn the rotary clockwise only. The other way the cut is climb, and slack lets it grab."],
        Minutes = 45,
    };

    private static PlanStep Measure(Step step) => new()
    {
        Step = step,
        Lines =
        [
            Move(14, Axis.Z, -8, 40, cuts: false, Row, clockwise: false, remark: "spindle off"),
            new MeasureLine { Size = "hub across", Expected = 10.38, Corrects = Axis.X, With = "micrometer", Strip = [(10.36, 10), (10.37, 9.995), (10.38, 9.99), (10.39, 9.985), (10.4, 9.98)], Working = Last },
            Move(15, Axis.Z, 40, -8, cuts: false, Row, remark: "spindle on"),
            Move(16, Axis.X, 15, 9.99, cuts: true, Last, clockwise: false, arrive: "from +") with { ReadBack = true },
            Move(17, Axis.T, -360, -720, cuts: true, Row),
            new MeasureLine { Size = "hub across", Expected = 9.98, Limits = (9.95, 10), With = "micrometer" },
        ],
        Workings = [Last],
        Cautions = ["Spindle off and still before the micrometer goes near; quill up, out of its way."],
        Minutes = 15,
    };

    private static PlanStep Drill(Step step) => new()
    {
        Step = step,
        Heading = "d4, 2200 rpm, pecks of 4",
        Lines =
        [
            new CutterLine { Cutter = "d4", Rpm = 2200, Out = 30 },
            Move(18, Axis.X, 9.99, 0, cuts: false, Row, clockwise: false),
            Move(19, Axis.Z, 2, -13.702, cuts: true, Work("tip of d4 for full diameter at -12.5", "-12.5 - 2/tan(118/2)", -13.7017, -13.705, "-13.7017 to 0.005: 0.003"), clockwise: true),
            Move(20, Axis.Z, -13.702, 2, cuts: false, Row, clockwise: false),
        ],
        Workings = [],
        Cautions = ["Brass pulls a drill in: hold the quill back as it breaks through."],
        Minutes = 10,
    };
}
