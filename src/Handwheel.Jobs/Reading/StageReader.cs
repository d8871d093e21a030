using System.Globalization;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Reading;

// Reads holdings and work by hand with their steps, in order.
internal sealed class StageReader(FindingBag bag, FeatureNames names, NumberReader numbers, Evaluator evaluator, HashSet<string> sizes, Shop? shop)
{
    private const int MostSteps = 5_000;
    private readonly Dictionary<string, Statement> letters = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> drilled = new(StringComparer.Ordinal);
    private bool unread;
    private int byHand;
    private int all;

    public IReadOnlyList<Stage> Read(IReadOnlyList<(Statement Heading, List<Statement> Lines)> stages)
    {
        var read = new List<Stage>();
        foreach (var (heading, lines) in stages.TakeWhile(_ => !bag.Full && all < MostSteps))
        {
            read.Add(heading.Tokens[0].Is("by") ? ByHand(heading, lines) : Held(heading, lines));
        }

        return read;
    }

    private HandStage ByHand(Statement heading, List<Statement> lines)
    {
        _ = new Cursor(heading, bag) { At = 2 }.ExpectEnd("Work by hand stands on the lines below 'by hand'.");
        var reader = new HandReader(names, numbers, evaluator, IsSize, DrilledWith);
        var steps = Steps(lines, (c, _) => reader.Read(c, new StepHead(Id("h", ++byHand), c.Statement.Text, c.Statement.Where)));
        return new HandStage { Name = "by hand", Steps = steps, Where = heading.Where, Text = heading.Text };
    }

    private Holding Held(Statement heading, List<Statement> lines)
    {
        var holding = new HoldingReader(numbers, evaluator, shop).Read(new Cursor(heading, bag));
        var name = holding?.Name ?? (heading.Tokens.Count > 1 ? heading.Tokens[1].Text : "?");
        if (!letters.TryAdd(name, heading))
        {
            bag.Add(FindingCatalogue.SaidTwice(heading.SpanOf(1, 1), $"Holding {name}", letters[name].Where));
        }

        var reader = new StepReader(names, numbers, evaluator, IsSize, shop?.Rotary?.Sense is { } sense and not 0 ? sense : 1);
        var steps = Steps(lines, (c, number) => reader.Read(c, new StepHead(Id(name, number), c.Statement.Text, c.Statement.Where)));
        var plain = holding ?? new Holding { Name = name, Holder = string.Empty, Steps = [], Where = heading.Where, Text = heading.Text };
        return plain with { Steps = steps };
    }

    private List<Step> Steps(List<Statement> lines, Func<Cursor, int, Step?> read)
    {
        var steps = new List<Step>();
        var number = 0;
        foreach (var line in lines.TakeWhile(_ => !bag.Full))
        {
            if (++all > MostSteps)
            {
                bag.Add(FindingCatalogue.TooMuch(line.Where, FormattableString.Invariant($"The job has more than {MostSteps} steps; the rest was not read."), "Split it into several jobs."));
                break;
            }

            var step = read(new Cursor(line, bag), ++number);
            unread = unread || step is null;
            if (step is not null)
            {
                steps.Add(Spotted(step));
                if (step is HoleStep { Work: HoleWork.Drill, Cutter: { } cutter } hole)
                {
                    drilled[cutter] = hole.Features[0];
                }
            }
        }

        return steps;
    }

    // A spot without a cutter takes the shop's only spotting drill; what cuts otherwise names its cutter.
    private Step Spotted(Step step)
    {
        if (step.Cutter is not null || step is not (HoleStep or FaceStep or SideStep or SlotStep or PocketStep or RoundStep or BitesStep or FlatsStep or BroachStep or ChamferStep or SawStep or HandStep { Work: HandWork.Press }))
        {
            return step;
        }

        var spotting = shop?.Cutters.Values.Where(k => k.Kind == CutterKind.SpottingDrill).ToList() ?? [];
        if (step is HoleStep { Work: HoleWork.Spot } && (spotting.Count == 1 || shop is null))
        {
            return spotting.Count == 1 ? step with { Cutter = spotting[0].Name } : step;
        }

        bag.Add(FindingCatalogue.Missing(step.Where, "The cutter", spotting.Count > 1 && step is HoleStep { Work: HoleWork.Spot } ? "The shop has several spotting drills: write 'with' and its name." : "Write 'with' and a cutter of the shop."));
        return step;
    }

    // The hole a drill made last; empty where a line that may have told was not understood.
    private string? DrilledWith(string cutter) => drilled.GetValueOrDefault(cutter) ?? (unread ? string.Empty : null);

    // A size of the drawing; a size of a feature whose line is to be mended first is taken on trust.
    private bool IsSize(string name) =>
        sizes.Contains(name) || names.All.Exists(f => f.Broken && name.StartsWith(f.Name + " ", StringComparison.Ordinal));

    private static string Id(string letter, int number) => letter + number.ToString(CultureInfo.InvariantCulture);
}
