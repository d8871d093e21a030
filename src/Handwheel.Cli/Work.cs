using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Sheets;
using Handwheel.Sheets.Reports;

namespace Handwheel.Cli;

/// <summary>From a file to a report: reads, plans and proves as far as it can be done.</summary>
internal static class Work
{
    /// <summary>Reads a job and its shop.</summary>
    /// <param name="path">The job's path.</param>
    /// <returns>What was read, and the texts' fingerprint.</returns>
    public static (Read<Job> Read, string Fingerprint) Read(string path)
    {
        var text = Files.Read(path, "job");
        var shop = string.Empty;
        var read = JobReader.Read(Path.GetFileName(path), text, name =>
        {
            if (Files.Beside(path, name) is not { } file)
            {
                return null;
            }

            shop = Files.Read(file, "shop");
            return shop;
        });
        return (read, DialSheet.Fingerprint(text, shop));
    }

    /// <summary>Reads, plans and proves a job.</summary>
    /// <param name="path">The job's path.</param>
    /// <param name="progress">Told how far the proof has come.</param>
    /// <returns>The report, and the texts' fingerprint.</returns>
    public static (JobReport Report, string Fingerprint) Whole(string path, IProgress<ProofProgress>? progress)
    {
        var (read, fingerprint) = Read(path);
        if (Planned(read) is not { } plan)
        {
            return (Report(read, read.Findings, null, null, null), fingerprint);
        }

        var proof = plan.Findings.Any(f => f.Grade == Grade.Halt) && plan.Course.Stages.Count == 0
            ? null
            : Prover.Prove(plan.Course, plan.Job.Drawing, plan.Job.Stock, plan.Shop, progress);
        return (Report(read, [.. read.Findings, .. plan.Findings, .. proof?.Findings ?? []], plan.Course, plan, proof), fingerprint);
    }

    /// <summary>Proves a file of moves against the job it names, or another, with no plan.</summary>
    /// <param name="moves">The moves' path.</param>
    /// <param name="job">The job's path; null: the one the file names, beside it.</param>
    /// <param name="progress">Told how far the proof has come.</param>
    /// <returns>The report.</returns>
    /// <exception cref="RefusedException">No job is named or found.</exception>
    public static JobReport Moves(string moves, string? job, IProgress<ProofProgress>? progress)
    {
        var text = Files.Read(moves, "moves file");
        var name = Path.GetFileName(moves);
        var (course, findings) = CourseFile.Read(name, text);
        if (course is null)
        {
            var lines = text.Length > 1_000_000 ? null : new SourceText(name, text);
            return new() { Title = string.Empty, Unit = default, Findings = findings, LineOf = (file, line) => file == name ? lines?.LineAt(line) : null };
        }

        var path = job ?? Files.Beside(moves, course.JobFile) ?? (File.Exists(course.JobFile) ? course.JobFile : null)
            ?? throw new RefusedException(course.JobFile.Length > 0
                ? $"the moves name the job '{course.JobFile}', which is not beside them; give it: handwheel check JOB --moves {moves}"
                : $"the moves name no job; give it: handwheel check JOB --moves {moves}");
        var (read, _) = Read(path);
        if (read is { Halted: true } or { Value: null } or { Shop: null })
        {
            return Report(read, [.. findings, .. read.Findings], null, null, null);
        }

        var proof = Prover.Prove(course, read.Value.Drawing, read.Value.Stock, read.Shop, progress);
        return Report(read, [.. findings, .. read.Findings, .. proof.Findings], course, null, proof);
    }

    /// <summary>Works a job out, where it was read without a halt.</summary>
    /// <param name="read">What was read.</param>
    /// <returns>The plan; null where it cannot be planned.</returns>
    public static JobPlan? Planned(Read<Job> read) => read is { Halted: false, Value: { } job, Shop: { } shop } ? Planner.Plan(job, shop) : null;

    private static JobReport Report(Read<Job> read, IReadOnlyList<Finding> findings, Course? course, JobPlan? plan, ProofResult? proof) => new()
    {
        Title = read.Value?.Title ?? string.Empty,
        Unit = read.Value?.Unit ?? default,
        Findings = findings,
        Course = course,
        Plan = plan,
        Proof = proof,
        LineOf = (file, line) => read.Sources.FirstOrDefault(s => s.FileName == file)?.LineAt(line),
    };
}
