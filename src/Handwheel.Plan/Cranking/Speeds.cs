using Handwheel.Jobs;
using Handwheel.Jobs.Shops;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Trade.Metals;

namespace Handwheel.Plan.Cranking;

// Spindle speed and feed of a cutter on this machine, in this metal.
internal sealed class Speeds
{
    private readonly Job job;
    private readonly Mill mill;
    private readonly Figures figures;

    internal Speeds(Job job, Mill mill, Figures figures)
    {
        this.job = job;
        this.mill = mill;
        this.figures = figures;
        Metal = MetalTable.FindSaid(job.Metal) ?? MetalTable.Find("mild steel")!;
        Known = MetalTable.FindSaid(job.Metal) is not null;
    }

    internal Metal Metal { get; }

    // The hole that goes down already where the next drill cuts, across; 0 for the solid.
    internal double Bored { get; set; }

    private QuillFeed Quill(Cutter cutter) => new(cutter, mill, Metal, Bored, figures.Unit);

    internal bool Known { get; }

    // The highest speed of the machine that is not above what the low end of the table asks, with a twentieth of grace.
    internal Working Rpm(Cutter cutter)
    {
        var operation = OperationOf(cutter);
        var material = cutter.Material == "tool steel" ? CutterMaterial.CarbonSteel : CutterMaterial.HighSpeedSteel;
        var (range, basis) = SpeedTable.Of(Metal, operation == Operation.Ream ? Operation.Drill : operation, material);
        var wanted = range.LowMPerMin * 1000 / (Math.PI * cutter.TrueAcross);
        var drills = Pick(wanted);
        var (picked, less) = operation switch
        {
            Operation.Ream => (Pick(drills / 3 / 1.05), $"{Figures.Bare(drills, 1)} for a drill, a third of it or less: "),
            Operation.Tap => (Pick(drills / 4 / 1.05), $"{Figures.Bare(drills, 1)} for a drill, a quarter of it or less: "),
            _ => (drills, string.Empty),
        };

        var inch = figures.Unit == LengthUnit.Inch;
        var said = Surface(range.LowMPerMin, cutter.TrueAcross, wanted);
        var slow = operation switch
        {
            Operation.Ream => "; a reamer runs at a third of a drill's speed",
            Operation.Tap => "; a tap under power at a quarter of a drill's speed",
            _ => string.Empty,
        };
        return new()
        {
            Name = $"speed of {cutter.Name}",
            Formula = "surface speed / (pi x diameter), the machine's next lower speed",
            PutIn = inch
                ? $"12 x {said} ft/min / (pi x {figures.LU(cutter.TrueAcross)}) = {Figures.Bare(wanted, 0)}: {less}{Figures.Bare(picked, 1)}"
                : $"1000 x {said} m/min / (pi x {figures.LU(cutter.TrueAcross)}) = {Figures.Bare(wanted, 0)}: {less}{Figures.Bare(picked, 1)}",
            Exact = wanted,
            Result = picked,
            Unit = "rpm",
            Source = basis.Source,
            Inputs =
            [
                new("surface speed", range.LowMPerMin, said, InputKind.Rule, $"{Metal.Name}: the low end of {said} to {Surface(range.HighMPerMin, cutter.TrueAcross, range.HighMPerMin * 1000 / (Math.PI * cutter.TrueAcross))} {(inch ? "ft/min" : "m/min")}, as a machine cranked by hand asks{slow}", null, null),
                new(cutter.Name, cutter.TrueAcross, figures.L(cutter.TrueAcross), InputKind.Shop, $"shop: {cutter.Name}'s true size", cutter.Where, null),
                new("speeds", picked, Figures.Bare(picked, 1), InputKind.Shop, "shop: the mill's speeds", mill.Where, null),
            ],
            Note = "An estimate: the cutter maker's data and the machine's manual come first.",
        };
    }

    // Brass draws a drill in: a hand that holds it back feeds less than half of what steel would have (common practice, no source).
    private bool HeldBack => job.Metal.Contains("brass", StringComparison.OrdinalIgnoreCase);

    internal double ChipATooth(Cutter cutter) => cutter.Kind switch
    {
        CutterKind.Saw => 0.005,
        CutterKind.Drill or CutterKind.SpottingDrill or CutterKind.CentreDrill => Math.Clamp(0.01 * cutter.TrueAcross * (HeldBack ? 0.4 : 1), 0.005, 0.1),
        CutterKind.Reamer => Math.Clamp(0.02 * cutter.TrueAcross / Math.Max(1, Teeth(cutter)), 0.01, 0.1),
        CutterKind.BoringBar or CutterKind.FlyCutter => 0.05,
        _ => Math.Clamp(0.003 * cutter.TrueAcross, 0.005, 0.05),
    };

    internal static int Teeth(Cutter cutter) => cutter.Kind switch
    {
        CutterKind.Saw when cutter.Teeth <= 2 => 40,
        CutterKind.BoringBar or CutterKind.FlyCutter => Math.Max(1, Math.Min(cutter.Teeth, 1)),
        _ => Math.Max(1, cutter.Teeth),
    };

    // A surface speed as the trade tells it, feet a minute in an inch job, with so many figures that the sum as printed gives the speed printed.
    private string Surface(double metresPerMinute, double across, double wanted)
    {
        var inch = figures.Unit == LengthUnit.Inch;
        var speed = inch ? metresPerMinute * 1000 / LengthUnits.MillimetresPerInch / 12 : metresPerMinute;
        var round = Math.PI * double.Parse(figures.L(across), System.Globalization.CultureInfo.InvariantCulture) / (inch ? 12 : 1000);
        for (var decimals = inch ? 0 : 1; decimals < 5; decimals++)
        {
            if (Figures.Bare(Math.Round(speed, decimals, MidpointRounding.AwayFromZero) / round, 0) == Figures.Bare(wanted, 0))
            {
                return Figures.Bare(speed, decimals);
            }
        }

        return Figures.Bare(speed, 5);
    }

    // The chip of a drill that the quill could not push as fast as wished; null where it can.
    internal Working? Eased(Cutter cutter)
    {
        var wished = ChipATooth(cutter);
        var chip = cutter is { Kind: CutterKind.Tap } ? wished : Quill(cutter).Chip(wished);
        return chip >= wished ? null : new()
        {
            Name = $"chip of {cutter.Name} at each lip",
            Formula = "chip wished x (push of the quill / push asked)^(1 / (1 - mc))",
            PutIn = Quill(cutter).PutIn(wished, figures.LU(wished)),
            Exact = figures.Unit.FromMillimetres(chip),
            Result = figures.Unit.FromMillimetres(chip),
            Unit = figures.Symbol,
            Source = Trade.Cutting.Kienzle.Basis.Source,
            Inputs = [new("chip wished", wished, figures.L(wished), InputKind.Rule, Quill(cutter).Told(wished, figures.LU(wished)), mill.Where, null)],
        };
    }

    // Millimetres a minute, or inches a minute in an inch job.
    internal Working Feed(Cutter cutter, Working rpm)
    {
        if (cutter is { Kind: CutterKind.Tap, Pitch: > 0 })
        {
            return Screwed(cutter, rpm);
        }

        var wished = ChipATooth(cutter);
        var chip = Quill(cutter).Chip(wished);
        var teeth = Teeth(cutter);
        return new()
        {
            Name = $"feed of {cutter.Name}",
            Formula = "speed x chip a tooth x teeth",
            PutIn = $"{Figures.Bare(rpm.Result, 1)} x {figures.L(chip)} x {teeth.ToString(System.Globalization.CultureInfo.InvariantCulture)}",
            Exact = figures.Unit.FromMillimetres(rpm.Result * chip * teeth),
            Result = figures.Unit.FromMillimetres(rpm.Result * chip * teeth),
            Unit = figures.Symbol + "/min",
            Source = Work.Practice,
            Inputs =
            [
                new("speed", rpm.Result, Figures.Bare(rpm.Result, 1), InputKind.WorkedOut, rpm.Name, null, rpm),
                chip < wished
                    ? new("chip a tooth", chip, figures.L(chip), InputKind.Rule, Quill(cutter).Told(wished, figures.LU(wished)), mill.Where, null)
                    : new("chip a tooth", chip, figures.L(chip), InputKind.Rule, "common practice for a cutter fed by hand", null, null),
                new("teeth", teeth, teeth.ToString(System.Globalization.CultureInfo.InvariantCulture), InputKind.Shop, $"shop: {cutter.Name}", cutter.Where, null),
            ],
        };
    }

    // A tap goes on by its pitch each turn, whatever else is wished.
    private Working Screwed(Cutter tap, Working rpm) => new()
    {
        Name = $"feed of {tap.Name}",
        Formula = "speed x pitch",
        PutIn = $"{Figures.Bare(rpm.Result, 1)} x {figures.L(tap.Pitch)}",
        Exact = figures.Unit.FromMillimetres(rpm.Result * tap.Pitch),
        Result = figures.Unit.FromMillimetres(rpm.Result * tap.Pitch),
        Unit = figures.Symbol + "/min",
        Source = Work.Geometry,
        Inputs =
        [
            new("speed", rpm.Result, Figures.Bare(rpm.Result, 1), InputKind.WorkedOut, rpm.Name, null, rpm),
            new("pitch", tap.Pitch, figures.L(tap.Pitch), InputKind.Shop, $"shop: {tap.Name}", tap.Where, null),
        ],
        Note = "Only with a head made for tapping, which follows the tap.",
    };

    private double Pick(double wanted)
    {
        if (mill.Speeds.Count == 0)
        {
            return Math.Round(wanted, 0);
        }

        var fit = mill.Speeds.Where(s => s <= wanted * 1.05).ToList();
        return fit.Count > 0 ? fit.Max() : mill.Speeds.Min();
    }

    private static Operation OperationOf(Cutter cutter) => cutter.Kind switch
    {
        CutterKind.Drill or CutterKind.SpottingDrill or CutterKind.CentreDrill => Operation.Drill,
        CutterKind.Reamer => Operation.Ream,
        CutterKind.Tap => Operation.Tap,
        CutterKind.Countersink or CutterKind.Counterbore => Operation.Countersink,
        CutterKind.Saw => Operation.Saw,
        _ => Operation.Mill,
    };
}
