using Handwheel.Sheets;
using Handwheel.Sheets.Reports;

namespace Handwheel.Cli.Commands;

/// <summary><c>sheet</c>.</summary>
internal static class SheetCommand
{
    /// <summary>Runs it.</summary>
    /// <param name="shell">Where it speaks.</param>
    /// <param name="job">The job.</param>
    /// <param name="file">Where the sheet goes.</param>
    /// <param name="asJson">Whether a program listens.</param>
    /// <param name="asked">Whether progress was asked for.</param>
    /// <returns>The exit code.</returns>
    public static int Run(Shell shell, string job, string file, bool asJson, bool asked)
    {
        var progress = new Progress(shell.Error, asked);
        var (report, fingerprint) = Work.Whole(job, progress);
        if (report.Plan is not { } plan)
        {
            progress.Done();
            shell.Out.Write(asJson ? ReportJson.Check(report) : CheckText.Write(report));
            var code = Exit.Code(shell, report);
            shell.Error.WriteLine(CheckCommand.LeftAlone("no sheet was made", file));
            return code;
        }

        var html = DialSheet.Html(plan with { Findings = [.. report.Findings.Except(report.Proof?.Findings ?? [])] }, report.Proof, fingerprint, progress);
        progress.Done();
        Files.Write(file, html);
        shell.Out.Write(asJson ? ReportJson.Sheet(report, file, fingerprint) : $"{CheckText.Summary(report)}\n{file}  fingerprint {fingerprint}\n");
        return Exit.Code(shell, report);
    }
}
