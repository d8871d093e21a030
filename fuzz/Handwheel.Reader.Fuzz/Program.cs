using System.Text;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;
using Handwheel.Reader.Fuzz;

// With no argument: a target for afl-fuzz (instrument Handwheel.Jobs.dll with SharpFuzz.CommandLine first). With a seed and a count: mutates the
// documents given after them by tokens, at random from that seed, and reads each; the first that throws is written to standard error and ends the run.
if (args.Length < 3)
{
    SharpFuzz.Fuzzer.OutOfProcess.Run(stream =>
    {
        using var reader = new StreamReader(stream, Encoding.UTF8);
        ReadOne(reader.ReadToEnd());
    });
    return 0;
}

var random = new Random(int.Parse(args[0], System.Globalization.CultureInfo.InvariantCulture));
var count = int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture);
var documents = args.Skip(2).Select(File.ReadAllText).ToArray();
var mutator = new Mutator(random, documents);
for (var i = 0; i < count; i++)
{
    var text = mutator.Next();
    var whole = false;
    try
    {
        ReadOne(text);
        whole = true;
    }
    finally
    {
        Console.Error.Write(whole ? string.Empty : text);
    }
}

Console.Out.WriteLine(FormattableString.Invariant($"{count} read, none threw"));
return 0;

static void ReadOne(string text)
{
    var job = JobReader.Read("job.handwheel", text, _ => text);
    var shop = ShopReader.Read("shop.handwheel", text);
    foreach (var finding in job.Findings.Concat(shop.Findings))
    {
        _ = FindingPrinter.Print(finding, (file, line) => job.Sources.Concat(shop.Sources).FirstOrDefault(s => s.FileName == file)?.LineAt(line));
    }

    var tidied = Tidy.Text("job.handwheel", text);
    var again = Tidy.Text("job.handwheel", tidied);
    if (again != tidied)
    {
        var (once, twice) = tidied.Split('\n').Zip(again.Split('\n')).First(p => p.First != p.Second);
        throw new InvalidOperationException($"tidied twice is not tidied once: '{once}' became '{twice}'");
    }
}
