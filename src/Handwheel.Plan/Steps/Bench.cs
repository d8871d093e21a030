using Handwheel.Jobs;
using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Plan.Steps;

// One holding as its steps are worked out: the part as it lies, the machine, and the arithmetic they share.
internal sealed class Bench(Job job, Shop shop, Holding holding, HoldingPlan plan, Machine machine, AimedDrawing drawing)
{
    private readonly List<Working> workings = [];
    private readonly List<Finding> findings = [];
    private (double At, HoldingPlan Plan)? indexed;

    internal Job Job => job;

    internal Shop Shop => shop;

    internal Holding Holding => holding;

    // The part as it lies now: at theta 0, or as the indexer stands.
    internal HoldingPlan Plan
    {
        get
        {
            if (machine.Setup.Rotary is not { Lies: true } axis || machine.At.T == 0)
            {
                return plan;
            }

            if (indexed is not { } known || known.At != machine.At.T)
            {
                indexed = (machine.At.T, new(drawing, plan.Stock, plan.Placement.AboutAxis(machine.At.T / Setting.Plane.ToDegrees, axis.Y, axis.Z)));
            }

            return indexed.Value.Plan;
        }
    }

    // The part at theta 0, whatever turns.
    internal HoldingPlan AtZero => plan;

    internal Machine Machine => machine;

    internal AimedDrawing Drawing => drawing;

    internal HeldMetal Metal => machine.Metal;

    internal Figures Figures { get; } = new(job.Unit);

    internal Work Work { get; } = new(new(job.Unit), machine.Setup.Axes);

    internal Speeds Speeds { get; } = new(job, shop.Mill!, new(job.Unit));

    // Where the spindle stands beside each edge of the last side cut, with nothing left on it.
    internal List<EdgeOff> Offs { get; } = [];

    internal Step? OffsOf { get; set; }

    // The step worked out before this one in the holding.
    internal Step? StepBefore { get; set; }

    // Whether the last typed cut met no metal: of several in a row the first is told.
    internal bool Idle { get; set; }

    // Whether a line of this holding says what Z is found on.
    internal bool ZeroZ { get; set; }

    // Whether the last pass is of a size closer than the dial: then its reading is the nearest, as the strip's are; leaving metal would leave it at its limit.
    internal bool IsClose { get; set; }

    // How far that last pass goes beyond its face as drawn, for what the face opposite stands off.
    internal double Beyond { get; set; }

    // The side on which a reading beside metal is rounded.
    internal Toward Leaving(bool plus) => IsClose ? Toward.Nearest : plus ? Toward.Plus : Toward.Minus;

    // How hands get room at the work: depths are made by the quill, or by the knee.
    internal string Retracted => shop.Mill is { DepthByQuill: false } ? "table well down" : "quill right up";

    // Whether a line of this holding says that the knee is locked.
    internal bool KneeLocked { get; set; }

    // The steps of this holding that tell a cutter off its size from a zero off its place, by the cutter.
    internal Dictionary<string, string> ToldApart { get; } = new(StringComparer.Ordinal);

    // The paper this holding's Z is found with.
    internal double Paper { get; set; }

    internal IReadOnlyList<Finding> Findings => findings;

    // A step that goes through goes this far past the solid: 0.5 mm, or 0.020 in.
    internal double Past => job.Unit == LengthUnit.Inch ? 0.02 * LengthUnit.Inch.MillimetresPerUnit() : 0.5;

    // What is kept clear of metal on free moves: 2 mm, or a tenth of an inch less a quarter.
    internal double Clear => job.Unit == LengthUnit.Inch ? 0.08 * LengthUnit.Inch.MillimetresPerUnit() : 2;

    internal Cutter? Cutter => machine.Cutter;

    internal double Radius => machine.Cutter!.TrueAcross / 2;

    internal IReadOnlyList<Working> TakeWorkings()
    {
        IReadOnlyList<Working> taken = [.. workings.Distinct()];
        workings.Clear();
        return taken;
    }

    internal void Cannot(Step step, string why, string mend) => Say(FindingCatalogue.CannotPlan(new FindingPlace(step.Id, step.Where), why.TrimEnd('.'), mend));

    // A finding of this holding; what was told of a step is told once.
    internal void Say(Finding finding)
    {
        if (!findings.Exists(f => f.Step == finding.Step && f.Code == finding.Code && f.Message == finding.Message))
        {
            findings.Add(finding);
        }
    }

    internal Working Show(Working working)
    {
        workings.Add(working);
        return working;
    }

    // A reading that needs no working of its own: where the cutter is clear of everything. Whole millimetres or hundredths of an inch outwards.
    internal Working Clearing(Axis axis, string name, double at, bool up)
    {
        var grain = job.Unit == LengthUnit.Inch ? 0.05 * LengthUnit.Inch.MillimetresPerUnit() : 1;
        var step = Work.Facts(axis).Step;
        grain = Math.Ceiling((grain / step) - 1e-9) * step;
        var whole = (up ? Math.Ceiling((at / grain) - 1e-9) : Math.Floor((at / grain) + 1e-9)) * grain;
        var reading = Rounding.ToStep(whole, step, Toward.Nearest);
        return new()
        {
            Name = name,
            Formula = "the metal there, the cutter and some room",
            PutIn = Figures.L(at) + (Figures.L(at) == Figures.L(reading) ? string.Empty : (up ? ", up to " : ", down to ") + Figures.L(reading)),
            Exact = reading,
            Result = reading,
            Unit = "mm",
            Source = Work.Practice,
            Inputs = [],
            IsClear = true,
        };
    }

    internal Working Reading(Axis axis, string name, string formula, string putIn, double exact, Toward toward, params WorkingInput[] inputs) =>
        Work.Reading(axis, new(name, formula, putIn, exact, Work.Geometry), toward, inputs);

    internal WorkingInput CutterInput => Work.Shop(Cutter!.Name, Cutter.TrueAcross, $"shop: {Cutter.Name}'s true size", Cutter.Where);

    // Where a line of the holding meets the drawn part as it lies, all sizes at the middle of their limits.
    internal Spans Drawn(Line3 line, double theta) => drawing.Part.Solid.Sound(line.Placed(Poses.At(machine.Setup, theta).Inverse())).Cleaned(1e-6);

    // Height of the highest drawn metal at a place; null where the part has none there.
    internal double? DrawnTopAt(Point2 p, double theta)
    {
        var spans = Drawn(Line3.AlongZ(p.X, p.Y), theta);
        return spans.Count == 0 ? null : spans[^1].To;
    }

    // Height to lift to: above all metal and all that holds, with what hangs below the cutter's edges.
    internal Working Safe()
    {
        var top = Math.Max(Metal.Heights().High, machine.Setup.Fixtures.Where(f => f.Holds).Select(f => f.Most.Z).DefaultIfEmpty(double.NegativeInfinity).Max());
        if (machine.Setup.Rotary is { Lies: true } axis)
        {
            // As it turns, its corners come up.
            top = Math.Max(top, axis.Z + plan.Swing(axis.Y, axis.Z));
        }

        var hangs = Math.Max(0, -(machine.Shape?.LowestPoint ?? 0));
        return Clearing(Axis.Z, "clear above the work", top + hangs + (2 * Clear), up: true);
    }

    // The way a dial is to go as it is set; 0 on a readout, where it does not matter.
    internal int Way(Axis axis, int way) => machine.Dials.Slack(axis) > 0 ? way : 0;

    internal void Up() => machine.Go(new(Axis.Z, Safe(), false));

    internal void Free(Axis axis, Working to) => machine.Go(new(axis, to, false));

    // The indexer brought to an angle, the cutter lifted first: by its plate, always forward.
    internal void Index(Working theta)
    {
        var to = new Crank(Axis.T, theta, false) { Counterclockwise = true };
        var by = to.From(machine.At.T) - machine.At.T;
        if (Math.Abs(by) < 1e-9)
        {
            return;
        }

        Up();
        machine.Go(to with { Remark = Indexing.Said(shop.Indexer, by) });
    }

    internal void Cut(Axis axis, Working to) => machine.Go(new(axis, to, true));

    // A theta, degrees in [0, 360).
    internal Working Angle(string name, string formula, string putIn, double degrees, Toward toward, params WorkingInput[] inputs)
    {
        var exact = ((degrees % 360) + 360) % 360;
        exact = Math.Abs(exact - 360) < 1e-9 ? 0 : exact;
        var turns = Math.Round((exact - degrees) / 360);
        var round = turns == 0 ? string.Empty : $" {(turns > 0 ? "+" : "-")} {Figures.Bare(Math.Abs(turns) * 360)}";
        return Work.Reading(Axis.T, new(name, formula, putIn + round, exact, Work.Geometry), toward, inputs);
    }

    internal Working AngleZero => Angle("theta as set up", "0", "0", 0, Toward.Nearest);

    // Turns back to theta 0 where the rotary stands turned; the cutter is lifted first.
    internal void Straighten()
    {
        if (machine.Setup.Rotary is { Lies: false } && Math.Abs(machine.At.T % 360) > 1e-9)
        {
            Up();
            machine.Go(new(Axis.T, AngleZero, false));
        }
    }

    // Depths of passes from a top down to a height. The last is the height itself, rounded with metal left.
    internal IReadOnlyList<Working> Depths(double top, double to, Typed? perPass, string what)
    {
        var depths = new List<Working>();
        if (perPass is { Value: > 0 } per)
        {
            var inputs = new[] { Work.Typed("a pass", per) };
            for (var i = 1; top - (i * per.Value) > to + 1e-6 && i < 2000; i++)
            {
                depths.Add(Reading(Axis.Z, $"Z of pass {Bare(i)}", "top - passes x depth of a pass", $"{Figures.L(top)} - {Bare(i)} x {Figures.L(per.Value)}", top - (i * per.Value), Toward.Plus, inputs));
            }
        }

        depths.Add(Reading(Axis.Z, $"Z of {what}", "as typed", Figures.L(to), to, Toward.Plus));
        return depths;
    }

    internal static string Bare(double value) => Figures.Bare(value);

    internal void Add(CourseEvent one, SheetLine line) => machine.Add(one, line);
}
