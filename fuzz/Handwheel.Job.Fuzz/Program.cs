using System.Diagnostics;
using System.Globalization;
using Handwheel.Jobs.Findings;
using Handwheel.Job.Fuzz;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Sheets;
using Handwheel.Sheets.Reports;

// A seed, how many, a folder for what fails, and jobs whose shops lie beside them: changes the jobs as a person slips; what still reads is planned, proved
// and printed. What throws, or takes longer than a minute, is written into the folder.
var random = new Random(int.Parse(args[0], CultureInfo.InvariantCulture));
var count = int.Parse(args[1], CultureInfo.InvariantCulture);
var folder = args[2];
var files = args.Skip(3).ToArray();
var slippers = files.Select(f => new Slipper(random, File.ReadAllText(f))).ToArray();
int read = 0, planned = 0, sound = 0, failed = 0;
for (var i = 0; i < count; i++)
{
    var which = random.Next(files.Length);
    var text = slippers[which].Next();
    var clock = Stopwatch.StartNew();
    try
    {
        Whole(files[which], text);
    }
    catch (Exception problem)
    {
        Keep("threw", problem.ToString());
    }

    if (clock.Elapsed.TotalSeconds > 60)
    {
        Keep("slow", FormattableString.Invariant($"{clock.Elapsed.TotalSeconds:F0} s"));
    }

    void Keep(string what, string why)
    {
        failed++;
        var name = FormattableString.Invariant($"{what}-{args[0]}-{i}");
        File.WriteAllText(Path.Combine(folder, name + ".handwheel"), text);
        File.WriteAllText(Path.Combine(folder, name + ".txt"), files[which] + "\n" + why);
        Console.WriteLine($"{name}: {why.Split('\n')[0]}");
    }
}

Console.WriteLine(FormattableString.Invariant($"{count} jobs: {read} read without a halt, {planned} planned, {sound} without any halt; {failed} failed"));

void Whole(string file, string text)
{
    string? Shop(string name) => File.Exists(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(file))!, name)) ? File.ReadAllText(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(file))!, name)) : null;
    var job = JobReader.Read(Path.GetFileName(file), text, Shop);
    if (job is { Halted: true } or { Value: null } or { Shop: null })
    {
        return;
    }

    read++;
    var plan = Planner.Plan(job.Value, job.Shop);
    var proof = plan.Course.Stages.Count == 0 ? null : Prover.Prove(plan.Course, plan.Job.Drawing, plan.Job.Stock, plan.Shop, null);
    planned += proof is null ? 0 : 1;
    IReadOnlyList<Finding> findings = [.. job.Findings, .. plan.Findings, .. proof?.Findings ?? []];
    var report = new JobReport { Title = job.Value.Title, Unit = job.Value.Unit, Findings = findings, Course = plan.Course, Plan = plan, Proof = proof, LineOf = (_, line) => job.Sources[0].LineAt(line) };
    var said = CheckText.Write(report) + ReportJson.Check(report);
    var html = DialSheet.Html(plan with { Findings = findings.Except(proof?.Findings ?? []).ToList() }, proof, "0", null);
    var sheet = html[html.IndexOf("<body", StringComparison.Ordinal)..];
    if ((said + sheet).Contains("NaN", StringComparison.Ordinal) || (said + sheet).Contains("Infinity", StringComparison.Ordinal) || sheet.Contains('\u221E'))
    {
        throw new InvalidOperationException("the sheet holds a number that is none");
    }

    sound += findings.Any(f => f.Grade == Grade.Halt) ? 0 : 1;
}
