using Handwheel.Jobs;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Sheets.Reports;

namespace Handwheel.Sheets.Tests.Stages;

/// <summary>The example crank brought through every stage, from its document to its sheet.</summary>
internal sealed class CrankRun
{
    private CrankRun()
    {
        var folder = Path.Combine(Snapshot.Root, "examples");
        var (text, shop) = (File.ReadAllText(Path.Combine(folder, "crank.handwheel")), string.Empty);
        Read = JobReader.Read("crank.handwheel", text, name => shop = File.ReadAllText(Path.Combine(folder, name)));
        Plan = Planner.Plan(Read.Value!, Read.Shop!);
        Proof = Prover.Prove(Plan.Course, Plan.Job.Drawing, Plan.Job.Stock, Plan.Shop);
        Report = new()
        {
            Title = Plan.Job.Title,
            Unit = Plan.Job.Unit,
            Findings = [.. Read.Findings, .. Plan.Findings, .. Proof.Findings],
            Course = Plan.Course,
            Plan = Plan,
            Proof = Proof,
            LineOf = (file, line) => Read.Sources.FirstOrDefault(s => s.FileName == file)?.LineAt(line),
        };
        Html = DialSheet.Html(Plan, Proof, DialSheet.Fingerprint(text, shop));
    }

    /// <summary>The first run.</summary>
    public static Lazy<CrankRun> First { get; } = new(() => new());

    /// <summary>A second run, from the files again.</summary>
    public static Lazy<CrankRun> Second { get; } = new(() => new());

    public Read<Job> Read { get; }

    public JobPlan Plan { get; }

    public ProofResult Proof { get; }

    public JobReport Report { get; }

    public string Html { get; }
}
