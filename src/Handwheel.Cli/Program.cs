namespace Handwheel.Cli;

/// <summary>The command line's entry: thin, no arithmetic of the trade.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        if (args.Length > 0 && args[0] == "ask")
        {
            var words = args[1..].Where(a => a != "--json").ToArray();
            return AskCommand.Run(words, args.Contains("--json", StringComparer.Ordinal), Console.Out, Console.Error);
        }

        Console.Out.WriteLine(args.Length == 0 ? "handwheel" : string.Join(' ', args));
        return 0;
    }
}
