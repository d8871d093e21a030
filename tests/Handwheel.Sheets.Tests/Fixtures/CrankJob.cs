using Handwheel.Jobs;
using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Steps;
using Handwheel.Jobs.Stocks;
using Handwheel.Quantities;

namespace Handwheel.Sheets.Tests.Fixtures;

/// <summary>A winch crank as the reader would give it, made by hand.</summary>
internal static class CrankJob
{
    public static readonly IReadOnlyList<Step> AboveSteps =
    [
        new ZeroStep { Id = "A1", Text = "zero z on bar top by paper 0.05", Where = At(20), Axes = "z", On = ZeroOn.StockTop, By = "paper", Cutter = "em10" },
        new FaceStep { Id = "A2", Text = "face arm to -8 with em10, 1.0 a pass, 0.3 clear of hub, from the bar's end", Where = At(21), Cutter = "em10", Feature = "arm", To = Typed(-8, "-8", 21) },
        new RoundStep { Id = "A3", Text = "round hub to -8 with em10, 1.0 a pass, allow 0.2", Where = At(22), Cutter = "em10", Feature = "hub", To = Typed(-8, "-8", 22) },
        new MeasureStep { Id = "A4", Text = "measure hub across, then last pass at full depth", Where = At(23), Size = "hub across", ThenLastPass = true, FullDepth = true },
        new HoleStep { Id = "A5", Text = "drill pilot through with d4", Where = At(24), Cutter = "d4", Work = HoleWork.Drill, Features = ["pilot"] },
    ];

    public static Job Job { get; } = new()
    {
        Title = "Winch crank, model crane",
        File = "crank.handwheel",
        Unit = LengthUnit.Millimetre,
        Metal = "brass, free-cutting",
        ShopFile = "home.handwheel",
        Drawing = new()
        {
            Features =
            [
                Round("hub", 0, 9.95, 10, 10, -12, 0, cut: false),
                Round("eye", 28, 7.9, 8.1, 8, -12, -8, cut: false),
                new() { Name = "arm", Where = At(9), IsCut = false, Shape = new TangentShape("hub", "eye"), Centre = new(0, 0), Places = [new(new(0, 0), 0, Mirrored: false)], From = Fixed(-12), To = Fixed(-8) },
                Round("pilot", 0, 3.9, 4.1, 4, -12, 0, cut: true) with { Through = true },
                new() { Name = "socket", Where = At(11), IsCut = true, Shape = new PolygonShape(4, new(4, 3.98, 4.08), 0), Centre = new(0, 0), Places = [new(new(0, 0), 0, Mirrored: false)], From = Fixed(-6), To = Fixed(0) },
                Round("pin", 28, 3, 3.014, 3, -12, -8, cut: true) with { Through = true },
            ],
            Sizes =
            [
                Size("hub across", SizeKind.Across, "hub", new(10, 9.95, 10)),
                Size("hub to pin along x", SizeKind.Distance, "hub", new(28, 27.95, 28.05)) with { Other = "pin", Along = "x" },
                Size("arm high", SizeKind.High, "arm", new(4, 3.95, 4.05)),
                Size("socket across flats", SizeKind.AcrossFlats, "socket", new(4, 3.98, 4.08)),
                Size("eye across", SizeKind.Across, "eye", new(8, 7.9, 8.1)) with { Stated = false },
            ],
            Others = new(0, -0.1, 0.1),
        },
        Stock = new()
        {
            Form = StockForm.Bar,
            Nominal = new(48, 14, 30),
            Used = new(48, 13.96, 30),
            Least = new(-9, -6.98, -29.5),
            Measured = ["wide"],
            Where = At(16),
        },
        Stages =
        [
            new Holding { Name = "A", Text = "holding A in small vise on rotary, bar along jaws on parallels 6, jaws at -19", Where = At(19), Steps = AboveSteps, Holder = "small", OnRotary = true },
            new HandStage
            {
                Name = "by hand", Text = "by hand", Where = At(26),
                Steps = [new HandStep { Id = "h1", Text = "press socket with sq4, square to the bar's side", Where = At(27), Work = HandWork.Press, Feature = "socket", Cutter = "sq4" }],
            },
        ],
    };

    public static SourceSpan At(int line) => new("crank.handwheel", line, 3, 4);

    public static Typed Typed(double value, string text, int line) => new(value, text, At(line));

    private static Limits Fixed(double value) => new(value, value, value);

    private static Feature Round(string name, double x, double lower, double upper, double nominal, double from, double to, bool cut) => new()
    {
        Name = name,
        Where = At(8),
        IsCut = cut,
        Shape = new RoundShape(new(nominal, lower, upper)),
        Centre = new(x, 0),
        Places = [new(new(x, 0), 0, Mirrored: false)],
        From = Fixed(from),
        To = Fixed(to),
    };

    private static Size Size(string name, SizeKind kind, string feature, Limits limits) => new()
    {
        Name = name, Kind = kind, Feature = feature, Limits = limits, Stated = true, Where = At(14),
    };
}
