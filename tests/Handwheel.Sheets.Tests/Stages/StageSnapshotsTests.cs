using System.Text.Json;
using System.Text.Json.Nodes;
using Handwheel.Jobs.Moves;
using Handwheel.Sheets.Reports;

namespace Handwheel.Sheets.Tests.Stages;

/// <summary>Each stage of the example crank reads as it read before, and a second run gives the same bytes.</summary>
public sealed class StageSnapshotsTests
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    [Fact]
    public void The_job_reads_as_before() => Snapshot.Holds("crank-1-job", StageText.Job(CrankRun.First.Value.Plan.Job, CrankRun.First.Value.Plan.Shop));

    [Fact]
    public void The_course_reads_as_before() => Snapshot.Holds("crank-2-course", StageText.Course(CrankRun.First.Value.Plan.Course));

    [Fact]
    public void The_proofs_report_reads_as_before() => Snapshot.Holds("crank-3-proof", CheckText.Write(CrankRun.First.Value.Report));

    // Of the steps' moves the saw's alone: the course's snapshot has them all.
    [Fact]
    public void The_proofs_report_for_programs_reads_as_before()
    {
        var report = JsonNode.Parse(ReportJson.Check(CrankRun.First.Value.Report))!.AsObject();
        report["steps"] = new JsonArray([.. report["steps"]!.AsArray().Where(s => (string?)s!["name"] == "B4").Select(s => s!.DeepClone())]);
        Snapshot.Holds("crank-4-proof-json", report.ToJsonString(Indented) + "\n");
    }

    [Fact]
    public void The_sheet_reads_as_before() => Snapshot.Holds("crank-5-sheet", SheetExtract.Of(CrankRun.First.Value.Html));

    [Fact]
    public void A_second_run_gives_the_same_bytes()
    {
        var (a, b) = (CrankRun.First.Value, CrankRun.Second.Value);
        Assert.Equal(CourseFile.Write(a.Plan.Course), CourseFile.Write(b.Plan.Course));
        Assert.Equal(ReportJson.Check(a.Report), ReportJson.Check(b.Report));
        Assert.Equal(CheckText.Write(a.Report), CheckText.Write(b.Report));
        Assert.Equal(a.Html, b.Html);
    }
}
