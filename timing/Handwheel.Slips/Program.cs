using System.Globalization;
using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Jobs.Shops;
using Handwheel.Membership;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Slips;
using Course = Handwheel.Jobs.Moves.Course;

// Handwheel.Slips JOB... [--count N] [--seed S] [--kind TEXT] [--log FOLDER]: damages each job's course, proves and judges each slip, and logs it;
// Handwheel.Slips JOB --only TEXT|TEXT: proves and judges just the slips whose words hold a text, and prints everything;
// Handwheel.Slips --report: writes docs/slips.md from the logs.
var root = Root();
var log = Option("--log") ?? Path.Combine(root, "timing", "slips");
Directory.CreateDirectory(log);
if (args.Contains("--report"))
{
    File.WriteAllText(Path.Combine(root, "docs", "slips.md"), Report.Of(log));
    return;
}

var options = new[] { "--count", "--seed", "--kind", "--log", "--only" };
var jobs = args.Where((a, i) => !a.StartsWith("--", StringComparison.Ordinal) && (i == 0 || !options.Contains(args[i - 1])));
foreach (var name in jobs)
{
    Bench(name);
}

void Bench(string name)
{
    string Example(string file) => File.ReadAllText(Path.Combine(root, "examples", file));
    var job = JobReader.Read(name + ".handwheel", Example(name + ".handwheel"), Example).Value!;
    var shop = ShopReader.Read(job.ShopFile, Example(job.ShopFile)).Value!;
    var (course, from) = CourseOf(name, job, shop);
    var sound = Prove(course, job, shop);
    var judge = new Judge(CourseFile.Write(course), Plain.Of(job.Stock), Plain.Of(job.Drawing), Plain.Of(shop));
    var soundHalts = sound.Findings.Count(f => f.Grade == Grade.Halt);
    var harm = judge.Harm(CourseFile.Write(course));
    if (Option("--only") is { } only)
    {
        Console.WriteLine($"{name}: {from}; sound {soundHalts} halts; harm {harm ?? "none"}; {judge.Sound}");
        foreach (var slip in new Generator(course, shop, 7).Only(only.Split('|')))
        {
            Tell(slip, Prove(slip.Course, job, shop), judge.Harm(CourseFile.Write(slip.Course)));
        }

        return;
    }

    using var to = new StreamWriter(Path.Combine(log, name + ".tsv"));
    to.WriteLine($"#\t{name}\tmoves {from}; sound: {soundHalts} halts, harm {harm ?? "none"}; {judge.Sound}");
    Console.WriteLine($"{name}: {from}; sound {soundHalts} halts; harm {harm ?? "none"}; {judge.Sound}");
    var count = int.Parse(Option("--count") ?? "300", CultureInfo.InvariantCulture);
    var seed = int.Parse(Option("--seed") ?? "7", CultureInfo.InvariantCulture);
    var watch = System.Diagnostics.Stopwatch.StartNew();
    var (done, harmless) = (0, 0);
    foreach (var slip in new Generator(course, shop, seed).Make(count).Where(s => Option("--kind") is not { } k || s.Kind.Contains(k, StringComparison.Ordinal)))
    {
        // Every harmful slip is proved, and every fourth of the harmless.
        var harmful = judge.Harm(CourseFile.Write(slip.Course));
        var halts = harmful is null && harmless++ % 4 != 0
            ? ["-"]
            : Prove(slip.Course, job, shop).Findings.Where(f => f.Grade == Grade.Halt).Select(f => $"{f.Code} {f.Step}".Trim()).Distinct().ToArray();
        to.WriteLine($"{slip.Kind}\t{slip.What}\t{harmful ?? string.Empty}\t{string.Join(", ", halts)}");
        to.Flush();
        done++;
        if (done % 20 == 0)
        {
            Console.WriteLine($"{name}: {done} in {watch.Elapsed.TotalSeconds:F0} s");
        }
    }
}

static void Tell(Slip slip, ProofResult proved, string? harm)
{
    Console.WriteLine($"{slip.Kind}: {slip.What}: harm: {harm ?? "none"}");
    foreach (var f in proved.Findings.Where(f => f.Grade != Grade.Note))
    {
        Console.WriteLine($"  {f.Grade} {f.Code} {f.Step} {f.Move}: {f.Message}");
    }

    foreach (var size in proved.Sizes)
    {
        Console.WriteLine(FormattableString.Invariant($"  {size.Name} {size.Least:F4} to {size.Greatest:F4} of {size.Lower:F4} to {size.Upper:F4} ok {size.Ok} by hand {size.ByHand}"));
    }
}

static ProofResult Prove(Course course, Job job, Shop shop) => Prover.Prove(course, job.Drawing, job.Stock, shop);

// The plan's own moves where it plans the whole job without a halt; else those worked out by hand.
(Course Course, string From) CourseOf(string name, Job job, Shop shop)
{
    var plan = Planner.Plan(job, shop);
    if (plan.Findings.All(f => f.Grade != Grade.Halt) && !args.Contains("--by-hand"))
    {
        return (plan.Course, "planned");
    }

    var file = Path.Combine(root, "timing", "courses", name + ".moves.json");
    return (CourseFile.Read(file, File.ReadAllText(file)).Course!, "worked out by hand");
}

string? Option(string option)
{
    var at = Array.IndexOf(args, option);
    return at >= 0 && at + 1 < args.Length ? args[at + 1] : null;
}

static string Root()
{
    var folder = AppContext.BaseDirectory;
    while (!File.Exists(Path.Combine(folder, "Handwheel.slnx")))
    {
        folder = Path.GetDirectoryName(folder)!;
    }

    return folder;
}
