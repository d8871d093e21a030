using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Shops;

namespace Handwheel.Sheets.Tests.Fixtures;

/// <summary>A shop made by hand: a mill with readout, a rotary, a vise, a few cutters.</summary>
internal static class CrankShop
{
    public static SourceSpan At(int line) => new("home.handwheel", line, 1, 4);

    public static Shop Shop { get; } = new()
    {
        Title = "Home",
        Mill = new()
        {
            Name = "mill",
            X = new() { Travel = 400, ReadoutStep = 0.005, PerTurn = 5, Divisions = 100, Backlash = 0.15 },
            Y = new() { Travel = 150, ReadoutStep = 0.005, PerTurn = 5, Divisions = 100, Backlash = 0.15, ClockwiseGrows = false },
            Z = new() { Travel = 100, ReadoutStep = 0.005, PerTurn = 2.5, Divisions = 50, ClockwiseGrows = false },
            Speeds = [80, 140, 260, 480, 900, 1600, 2200],
            QuillPush = 500,
            Where = At(3),
        },
        Rotary = new() { Worm = 72, DialStep = Math.PI / 180 / 60, Sense = -1, Across = 160, Where = At(7) },
        Holders = new SortedDictionary<string, Holder>(StringComparer.Ordinal)
        {
            ["small"] = new() { Name = "small", Kind = HolderKind.Vise, JawsWide = 40, Open = 30, JawsDeep = 12, Where = At(8) },
        },
        Cutters = new SortedDictionary<string, Cutter>(StringComparer.Ordinal)
        {
            ["em10"] = new() { Name = "em10", Kind = CutterKind.EndMill, Across = 10, TrueAcross = 10, Flute = 22, Shank = 10, Out = 30, CutsToCentre = true, Material = "carbide", Where = At(9) },
            ["d4"] = new() { Name = "d4", Kind = CutterKind.Drill, Across = 4, TrueAcross = 4, PointAngle = 118 * Math.PI / 180, Flute = 43, Shank = 4, Out = 30, Where = At(10) },
            ["sq4"] = new() { Name = "sq4", Kind = CutterKind.Broach, Across = 4, TrueAcross = 4.03, Sides = 4, Where = At(11) },
        },
    };
}
