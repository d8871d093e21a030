using Handwheel.Jobs.Moves;
using Handwheel.Sheets.Reports;

namespace Handwheel.Cli.Commands;

/// <summary><c>check</c>.</summary>
internal static class CheckCommand
{
    /// <summary>Runs it.</summary>
    /// <param name="shell">Where it speaks.</param>
    /// <param name="job">The job; null with <paramref name="moves"/> alone.</param>
    /// <param name="moves">A file of moves to prove instead of a plan.</param>
    /// <param name="writeMoves">Where the moves go.</param>
    /// <param name="asJson">Whether a program listens.</param>
    /// <param name="asked">Whether progress was asked for.</param>
    /// <returns>The exit code.</returns>
    /// <exception cref="RefusedException">It cannot be done.</exception>
    public static int Run(Shell shell, string? job, string? moves, string? writeMoves, bool asJson, bool asked)
    {
        if (job is null && moves is null)
        {
            throw new RefusedException("check needs a job: handwheel check JOB");
        }

        if (moves is not null && writeMoves is not null)
        {
            throw new RefusedException("--moves proves a file and --write-moves writes one; ask for one of them");
        }

        var progress = new Progress(shell.Error, asked);
        var report = moves is not null ? Work.Moves(moves, job, progress) : Work.Whole(job!, progress).Report;
        progress.Done();
        if (writeMoves is not null && report.Course is { } course)
        {
            Files.Write(writeMoves, CourseFile.Write(course with { JobFile = Path.GetFileName(job!), ShopFile = report.Plan?.Job.ShopFile ?? course.ShopFile }));
        }

        shell.Out.Write(asJson ? ReportJson.Check(report) : CheckText.Write(report));
        var code = Exit.Code(shell, report);
        if (writeMoves is not null && report.Course is null)
        {
            shell.Error.WriteLine(LeftAlone("no moves were written", writeMoves));
        }

        return code;
    }

    /// <summary>The sentence that a file was not written.</summary>
    /// <param name="what">What was not done.</param>
    /// <param name="file">The file.</param>
    /// <returns>The sentence.</returns>
    public static string LeftAlone(string what, string file) => $"handwheel: {what}{(File.Exists(file) ? $"; {file} is left as it was" : string.Empty)}";
}
