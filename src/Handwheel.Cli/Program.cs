namespace Handwheel.Cli;

/// <summary>The command line's entry: thin, no arithmetic of the trade.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        Console.Out.WriteLine(args.Length == 0 ? "handwheel" : string.Join(' ', args));
        return 0;
    }
}
