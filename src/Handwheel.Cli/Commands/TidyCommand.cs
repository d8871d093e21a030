using Handwheel.Jobs.Reading;
using Handwheel.Sheets.Reports;

namespace Handwheel.Cli.Commands;

/// <summary><c>tidy</c>.</summary>
internal static class TidyCommand
{
    /// <summary>Runs it.</summary>
    /// <param name="shell">Where it speaks.</param>
    /// <param name="file">The document.</param>
    /// <param name="check">Whether nothing is written.</param>
    /// <param name="asJson">Whether a program listens.</param>
    /// <returns>The exit code.</returns>
    public static int Run(Shell shell, string file, bool check, bool asJson)
    {
        var text = Files.Read(file, "document");
        var tidied = Tidy.Text(Path.GetFileName(file), text);
        var changed = !string.Equals(text, tidied, StringComparison.Ordinal);
        if (changed && !check)
        {
            Files.Write(file, tidied);
        }

        shell.Out.Write(asJson
            ? ReportJson.Written(json =>
            {
                json.WriteString("file", file);
                json.WriteBoolean("changed", changed);
            })
            : $"{file}: {(!changed ? "tidy already" : check ? "would change" : "tidied")}\n");
        return changed && check ? 1 : 0;
    }
}
