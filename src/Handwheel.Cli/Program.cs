using System.Text;
using Handwheel.Cli.Commands;

namespace Handwheel.Cli;

/// <summary>The command line's entry: thin, no arithmetic of the trade.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        using var output = new StreamWriter(Console.OpenStandardOutput(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), 65536);
        using var error = new StreamWriter(Console.OpenStandardError(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = true };
        try
        {
            var code = CommandLine.Run(args, new(output, error));
            output.Flush();
            return code;
        }
        catch (IOException)
        {
            // Whoever read our output has gone (a closed pipe): there is no one to tell.
            return 2;
        }
    }
}
