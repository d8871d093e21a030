using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Proof;

namespace Handwheel.Cases.Tests.Written;

/// <summary>A short job written in a test, read with a shop of the examples, planned and proved.</summary>
internal sealed class Whole
{
    internal Whole(string text, Func<string, string>? shop = null)
    {
        var read = JobReader.Read("written.handwheel", text, name => shop is null ? Example(name) : shop(Example(name)));
        Read = read.Findings;
        if (read is not { Halted: false, Value: { } job, Shop: { } s })
        {
            return;
        }

        Plan = Planner.Plan(job, s);
        Proof = Prover.Prove(Plan.Course, job.Drawing, job.Stock, s);
    }

    internal IReadOnlyList<Finding> Read { get; }

    internal JobPlan? Plan { get; }

    internal ProofResult? Proof { get; }

    internal IEnumerable<Finding> All => [.. Read, .. Plan?.Findings ?? [], .. Proof?.Findings ?? []];

    internal IEnumerable<string> Halts => All.Where(f => f.Grade == Grade.Halt).Select(f => $"{f.Code} {f.Step}: {f.Message}");

    internal IEnumerable<SheetLine> Lines(string step) => Flat(Plan!.Stages.SelectMany(s => s.Steps).Single(s => s.Step.Id == step).Lines);

    internal string Said(string step) => string.Join('\n', Lines(step).OfType<TouchOffLine>().Select(l => l.Says));

    private static string Example(string name) => File.ReadAllText(Path.Combine(Courses.Root, "examples", name));

    private static IEnumerable<SheetLine> Flat(IEnumerable<SheetLine> lines) => lines.SelectMany(l => l is PassBracket b ? [b, .. Flat(b.Lines)] : (IEnumerable<SheetLine>)[l]);
}
