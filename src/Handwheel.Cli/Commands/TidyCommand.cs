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
        var name = Path.GetFileName(file);
        if (Tidy.Hindrances(name, text) is { Count: > 0 } hindrances)
        {
            var lines = new SourceText(name, text);
            var report = new JobReport { Title = string.Empty, Unit = default, Findings = hindrances, LineOf = (_, line) => lines.LineAt(line) };
            shell.Out.Write(asJson ? ReportJson.Check(report) : CheckText.Write(report));
            shell.Error.WriteLine($"handwheel: {file} is left as it is");
            return 2;
        }

        var tidied = Tidy.Text(name, text);
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
