using Handwheel.Jobs.Findings;
using Handwheel.Proof.Designs;
using Handwheel.Sheets.Reports;

namespace Handwheel.Cli.Commands;

/// <summary><c>why</c>.</summary>
internal static class WhyCommand
{
    /// <summary>Runs it.</summary>
    /// <param name="shell">Where it speaks.</param>
    /// <param name="job">The job.</param>
    /// <param name="step">The step's id.</param>
    /// <param name="asJson">Whether a program listens.</param>
    /// <returns>The exit code.</returns>
    /// <exception cref="RefusedException">The step is not there.</exception>
    public static int Run(Shell shell, string job, string step, bool asJson)
    {
        var (read, _) = Work.Read(job);
        if (string.Equals(step, "design", StringComparison.OrdinalIgnoreCase) && read is { Halted: false, Value: { Drawing.Designs.Count: > 0 } designed })
        {
            var designs = DesignProof.Of(designed.Drawing, designed.Stock, read.Shop, designed.Unit);
            shell.Out.Write(asJson ? DesignJson.Alone(designs) : DesignText.Write(designs, designed.Unit, sources: true));
            return 0;
        }

        if (Work.Planned(read) is not { } plan)
        {
            var report = new JobReport { Title = read.Value?.Title ?? string.Empty, Unit = read.Value?.Unit ?? default, Findings = [.. read.Findings.Where(f => f.Grade == Grade.Halt)], LineOf = (file, line) => read.Sources.FirstOrDefault(s => s.FileName == file)?.LineAt(line) };
            shell.Out.Write(asJson ? ReportJson.Check(report) : CheckText.Write(report));
            return Exit.Code(shell, report);
        }

        foreach (var stage in plan.Stages)
        {
            if (stage.Steps.FirstOrDefault(s => string.Equals(s.Step.Id, step, StringComparison.OrdinalIgnoreCase)) is { } found)
            {
                shell.Out.Write(asJson ? ReportJson.Why(found) : WhyText.Write(plan, stage, found));
                return 0;
            }
        }

        var known = plan.Stages.SelectMany(s => s.Steps).Select(s => s.Step.Id).ToArray();
        throw new RefusedException($"the job has no step '{step}'; it has {string.Join(", ", known.Take(60))}{(known.Length > 60 ? " and more" : string.Empty)}");
    }
}
