using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Plan.Lines;

namespace Handwheel.Plan.Tests.Jobs;

/// <summary>One of the example jobs, planned, and its readings by step.</summary>
internal sealed class PlannedJob
{
    internal PlannedJob(string name, Func<string, string>? changed = null, string folder = "examples")
    {
        var read = JobReader.Read(name, Changed(name), Changed);
        Plan = Planner.Plan(read.Value!, read.Shop!);
        string Changed(string file) => changed is null ? Text(file, folder) : changed(Text(file, folder));
    }

    internal JobPlan Plan { get; }

    internal double[] Readings(string step, Axis axis, bool? cutting = null) =>
        [.. Lines(step).OfType<MoveLine>().Where(m => m.Axis == axis && (cutting is null || m.Cutting == cutting)).Select(m => m.To)];

    internal double[] Depths(string step) => [.. Lines(step).OfType<PassBracket>().SelectMany(b => b.Depths)];

    internal double[] Set(string step, Axis axis) => [.. Lines(step).OfType<TouchOffLine>().Where(t => t.TouchOff.Axis == axis).Select(t => t.TouchOff.SetTo)];

    // Angles on the rotary's rim in [0, 360), in the order they are turned to; without those it is turned back past a place to.
    internal double[] Angles(string step, bool? cutting = null) => [.. Lines(step).OfType<MoveLine>()
        .Where(m => m.Axis == Axis.T && (cutting is null || m.Cutting == cutting) && (m.Cutting || m.To < m.From)).Select(m => m.To).Select(t => Math.Round(((t % 360) + 360) % 360, 6))];

    internal IEnumerable<SheetLine> Lines(string step) => Flat(Plan.Stages.SelectMany(s => s.Steps).Single(s => s.Step.Id == step).Lines);

    internal static string Text(string name, string within = "examples")
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Handwheel.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return File.ReadAllText(Path.Combine(folder, within, name));
    }

    private static IEnumerable<SheetLine> Flat(IEnumerable<SheetLine> lines) => lines.SelectMany(l => l is PassBracket b ? [b, .. Flat(b.Lines)] : (IEnumerable<SheetLine>)[l]);
}
