using System.Globalization;
using Handwheel.Engine.Fuzz;

// With no argument: a target for afl-fuzz (instrument Handwheel.Solids.dll with SharpFuzz.CommandLine first). With a seed and a count: random bytes.
if (args.Length < 2)
{
    SharpFuzz.Fuzzer.OutOfProcess.Run(stream =>
    {
        using var memory = new MemoryStream();
        stream.CopyTo(memory);
        EngineInput.Try(memory.ToArray());
    });
    return 0;
}

var random = new Random(int.Parse(args[0], CultureInfo.InvariantCulture));
var count = int.Parse(args[1], CultureInfo.InvariantCulture);
var refused = 0;
for (var i = 0; i < count; i++)
{
    var bytes = new byte[random.Next(8, 400)];
    random.NextBytes(bytes);
    refused += EngineInput.Try(bytes) ? 0 : 1;
}

Console.Out.WriteLine(FormattableString.Invariant($"{count} tried, {refused} refused by name, none threw anything else or gave an unsound answer"));
return 0;
