namespace Handwheel.Trade.Metals;

/// <summary>Cutting speeds by machining group, operation and cutter material.</summary>
/// <remarks>
/// Read: US Navy manual 14345 (drilling), T.O. 1-1A-9 Table 2-8 (stainless, turning), "Machine tool speeds and feeds" (milling, lathe). Where no
/// source gave a figure it is common practice: carbide milling at 2 to 3 times high-speed steel, carbide drills likewise, reaming at half of drilling,
/// tapping at a third, countersinking at half, saws at 0.7 of milling, carbon steel at half. Expect plus or minus 30 % either way.
/// </remarks>
public static class SpeedTable
{
    private static readonly Basis Read = new("US Navy manual 14345 (drilling); 'Machine tool speeds and feeds' (mill, lathe)", Evidence.HandbookTable);
    private static readonly Basis Stainless = new("T.O. 1-1A-9 Table 2-8 (turning); drilling and milling 'Machine tool speeds and feeds'", Evidence.HandbookTable);
    private static readonly Basis Practice = new("common practice", Evidence.CommonPractice);

    private static readonly SpeedGroup[] Groups =
    [
        new("free-cutting steel", (100, 150), (90, 150), (100, 200), (150, 300), (200, 450), (300, 550), (400, 800), Practice),
        new("low-carbon steel", (80, 110), (70, 120), (100, 175), (150, 250), (170, 350), (250, 450), (350, 650), Read),
        new("medium-carbon steel", (70, 80), (60, 100), (70, 130), (100, 200), (150, 300), (200, 400), (300, 550), Read),
        new("high-carbon steel", (50, 60), (40, 70), (50, 90), (80, 150), (100, 220), (150, 300), (200, 400), Read),
        new("alloy steel", (50, 70), (30, 60), (50, 90), (80, 150), (100, 220), (150, 300), (200, 450), Read),
        new("tool steel", (40, 60), (40, 70), (50, 90), (80, 150), (90, 200), (130, 260), (180, 400), Read),
        new("cast steel", (40, 60), (80, 100), (70, 100), (100, 150), (150, 250), (150, 300), (250, 400), Read),
        new("hard steel", (15, 30), (15, 30), (20, 40), (30, 60), (60, 120), (80, 160), (120, 250), Practice),
        new("austenitic stainless", (30, 50), (30, 60), (20, 40), (50, 80), (80, 170), (150, 200), (150, 300), Stainless),
        new("free-cutting stainless", (60, 90), (50, 90), (25, 55), (65, 105), (120, 250), (175, 240), (195, 350), Stainless),
        new("martensitic stainless", (40, 70), (40, 70), (20, 40), (55, 90), (100, 200), (165, 220), (165, 330), Stainless),
        new("free-cutting martensitic stainless", (60, 90), (50, 90), (30, 60), (75, 120), (120, 250), (225, 300), (225, 450), Stainless),
        new("hardening stainless", (25, 45), (25, 50), (20, 40), (45, 75), (80, 150), (120, 180), (140, 260), Practice),
        new("soft cast iron", (70, 150), (80, 120), (100, 160), (150, 250), (150, 350), (200, 350), (300, 450), Read),
        new("hard cast iron", (50, 80), (50, 100), (50, 100), (80, 150), (120, 250), (130, 250), (200, 350), Read),
        new("ductile iron", (60, 90), (60, 100), (70, 120), (100, 200), (150, 300), (200, 350), (300, 450), Practice),
        new("aluminium", (200, 300), (250, 500), (350, 500), (500, 700), (500, 1200), (700, 1200), (900, 2000), Read),
        new("cast aluminium", (150, 250), (200, 400), (250, 400), (400, 600), (400, 900), (500, 1000), (700, 1500), Practice),
        new("magnesium", (250, 400), (200, 400), (400, 600), (500, 800), (500, 1000), (700, 1200), (900, 1800), Read),
        new("brass", (200, 300), (150, 450), (250, 400), (300, 500), (300, 800), (400, 700), (500, 1000), Read),
        new("bronze", (150, 300), (100, 250), (150, 300), (200, 400), (200, 500), (300, 500), (400, 700), Practice),
        new("hard bronze", (70, 150), (60, 120), (70, 130), (100, 200), (150, 300), (200, 350), (250, 500), Practice),
        new("copper", (60, 100), (100, 200), (100, 180), (150, 250), (200, 450), (250, 450), (350, 650), Read),
        new("titanium", (20, 40), (40, 60), (60, 100), (90, 150), (90, 180), (100, 180), (130, 250), Read),
        new("nickel-copper", (30, 50), (30, 60), (40, 70), (60, 100), (80, 160), (120, 200), (150, 260), Practice),
        new("nickel superalloy", (10, 20), (10, 20), (12, 20), (15, 30), (40, 80), (50, 100), (70, 130), Practice),
        new("manganese steel", (10, 20), (20, 40), (30, 60), (40, 100), (50, 100), (60, 120), (80, 160), Read),
        new("zinc", (200, 300), (200, 400), (250, 400), (300, 500), (400, 800), (500, 900), (600, 1200), Practice),
        new("lead", (200, 300), (200, 400), (250, 400), (300, 500), (300, 600), (300, 600), (300, 600), Practice),
        new("precious metal", (80, 150), (100, 200), (100, 200), (150, 300), (200, 400), (250, 400), (300, 500), Practice),
        new("plastic", (100, 300), (200, 500), (250, 400), (300, 600), (300, 1000), (400, 800), (500, 1000), Practice),
        new("laminate", (80, 150), (150, 300), (150, 250), (200, 350), (300, 700), (300, 600), (400, 800), Practice),
    ];

    /// <summary>Names of the machining groups.</summary>
    public static IReadOnlyList<string> GroupNames { get; } = [.. Groups.Select(g => g.Name)];

    /// <summary>The cutting speeds of a metal.</summary>
    /// <param name="metal">The metal.</param>
    /// <param name="operation">What is done.</param>
    /// <param name="cutter">What the edge is made of.</param>
    /// <returns>The range and its basis; a factor of a rule of thumb makes it common practice.</returns>
    /// <exception cref="ArgumentException">The metal's group is unknown.</exception>
    public static (SpeedRange Range, Basis Basis) Of(Metal metal, Operation operation, CutterMaterial cutter)
    {
        ArgumentNullException.ThrowIfNull(metal);
        var group = Array.Find(Groups, g => g.Name == metal.Group) ?? throw new ArgumentException($"no speeds for '{metal.Group}'", nameof(metal));
        var (low, high) = cutter == CutterMaterial.Carbide ? WithCarbide(group, operation) : WithSteel(group, operation);
        if (cutter == CutterMaterial.CarbonSteel)
        {
            (low, high) = (low / 2, high / 2);
        }

        return (SpeedRange.FromFeetPerMinute(low, high), IsRead(group, operation, cutter) ? group.Basis : Practice);
    }

    private static (double Low, double High) WithSteel(SpeedGroup group, Operation operation) => operation switch
    {
        Operation.Mill => group.Mill,
        Operation.Drill => group.Drill,
        Operation.TurnRough => group.TurnRough,
        Operation.TurnFinish => group.TurnFinish,
        Operation.Ream => Times(group.Drill, 0.5, 0.6),
        Operation.Tap => Times(group.Drill, 0.25, 0.4),
        Operation.Countersink => Times(group.Drill, 0.4, 0.5),
        _ => Times(group.Mill, 0.6, 0.8),
    };

    private static (double Low, double High) WithCarbide(SpeedGroup group, Operation operation) => operation switch
    {
        Operation.Mill => group.CarbideMill,
        Operation.Drill => Times(group.Drill, 2, 3),
        Operation.TurnRough => group.CarbideRough,
        Operation.TurnFinish => group.CarbideFinish,
        Operation.Ream => Times(group.Drill, 1, 1.3),
        Operation.Tap => Times(group.Drill, 0.5, 0.7),
        Operation.Countersink => Times(group.Drill, 0.8, 1.2),
        _ => Times(group.CarbideMill, 0.6, 0.8),
    };

    private static bool IsRead(SpeedGroup group, Operation operation, CutterMaterial cutter)
    {
        var turning = operation is Operation.TurnRough or Operation.TurnFinish;
        return cutter switch
        {
            CutterMaterial.HighSpeedSteel => turning || operation is Operation.Mill or Operation.Drill,
            CutterMaterial.Carbide => turning && group.Basis == Stainless,
            _ => false,
        };
    }

    private static (double Low, double High) Times((double Low, double High) range, double low, double high) => (range.Low * low, range.High * high);
}
