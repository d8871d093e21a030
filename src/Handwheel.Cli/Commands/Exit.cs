using Handwheel.Sheets.Reports;

namespace Handwheel.Cli.Commands;

/// <summary>Exit codes.</summary>
internal static class Exit
{
    /// <summary>The code of a report: 2 where it could not be read or planned, 1 with a halt, else 0.</summary>
    /// <param name="shell">Where a sentence goes.</param>
    /// <param name="report">The report.</param>
    /// <returns>The code.</returns>
    public static int Code(Shell shell, JobReport report)
    {
        if (report.Course is null)
        {
            shell.Error.WriteLine(report.Halted
                ? "handwheel: nothing was cut in simulation: mend what halts first"
                : "handwheel: nothing was cut in simulation: the steps were not worked out");
            return 2;
        }

        return report.Halted ? 1 : 0;
    }
}
