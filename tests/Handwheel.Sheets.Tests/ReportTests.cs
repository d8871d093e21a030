using System.Text.Json;
using Handwheel.Jobs.Findings;
using Handwheel.Sheets.Reports;
using Handwheel.Sheets.Tests.Fixtures;

namespace Handwheel.Sheets.Tests;

public sealed class ReportTests
{
    private static JobReport Report()
    {
        var plan = CrankPlan.Plan();
        Finding gouge = new() { Grade = Grade.Halt, Code = "gouge", Message = "The hub is gone.", Mend = "Stand further off.", Step = "A3", Move = 11, Where = CrankJob.At(22), Amount = 8, Unit = "mm", At = new(4, 0, -8), AtReading = new(4, 0.0004, -8) };
        return new() { Title = plan.Job.Title, Unit = plan.Job.Unit, Findings = [gouge], Course = plan.Course, Plan = plan, Proof = CrankPlan.Proof(), LineOf = (_, line) => line == 22 ? "  round hub to -8 with em10" : null };
    }

    [Fact]
    public void Json_has_the_fields_programs_rely_on()
    {
        using var json = JsonDocument.Parse(ReportJson.Check(Report()));
        var root = json.RootElement;
        var finding = root.GetProperty("findings")[0];
        foreach (var name in new[] { "grade", "code", "file", "line", "column", "step", "move", "message", "amount", "unit", "at" })
        {
            Assert.True(finding.TryGetProperty(name, out _), name);
        }

        Assert.Equal("halt", finding.GetProperty("grade").GetString());
        Assert.Equal(22, finding.GetProperty("line").GetInt32());
        Assert.Equal(-8, finding.GetProperty("at").GetProperty("z").GetDouble());
        var size = root.GetProperty("sizes")[0];
        foreach (var name in new[] { "name", "planned", "lower", "upper", "ok" })
        {
            Assert.True(size.TryGetProperty(name, out _), name);
        }

        var step = root.GetProperty("steps")[1];
        Assert.Equal("A2", step.GetProperty("name").GetString());
        Assert.Equal("A", step.GetProperty("holding").GetString());
        Assert.Equal("em10", step.GetProperty("cutter").GetString());
        var cut = step.GetProperty("moves").EnumerateArray().First(m => m.GetProperty("cutting").GetBoolean());
        Assert.Equal(9.845, cut.GetProperty("x").GetDouble());
        Assert.Equal(3, cut.GetProperty("y").GetDouble());
        Assert.Equal(-1, cut.GetProperty("z").GetDouble());
        Assert.Equal(0, cut.GetProperty("t").GetDouble());
        Assert.Contains("9.975/2 + 10/2 + 0.3", cut.GetProperty("working").GetString(), StringComparison.Ordinal);
        Assert.Equal("h1", root.GetProperty("release").GetProperty("step").GetString());
        Assert.Equal("h1", root.GetProperty("release").GetProperty("declared").GetString());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("release").GetProperty("move").ValueKind);
        Assert.Equal("Rays 0.1 apart.", root.GetProperty("guarantee").GetString());
    }

    [Fact]
    public void Text_shows_place_mend_sizes_and_release()
    {
        var text = CheckText.Write(Report());
        Assert.Contains("crank.handwheel:22:3  halt  gouge", text, StringComparison.Ordinal);
        Assert.Contains("  round hub to -8 with em10".TrimStart(), text, StringComparison.Ordinal);
        Assert.Contains("Stand further off.", text, StringComparison.Ordinal);
        Assert.Contains("\n  at step A3, move 11; reading X 4.000, Y 0.000, Z -8.000; on the part X 4.000, Y 0.000, Z -8.000\n", text, StringComparison.Ordinal);
        Assert.Matches("hub across +9\\.950 +10\\.000 +9\\.980 +within", text);
        Assert.Contains("release  at h1, by hand, as the job says", text, StringComparison.Ordinal);
        Assert.EndsWith("Winch crank, model crane: 1 halt, 0 cautions, 0 notes\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Why_ends_at_what_was_typed()
    {
        var plan = CrankPlan.Plan();
        var text = WhyText.Write(plan, plan.Stages[0], plan.Stages[0].Steps[1]);
        Assert.Contains("move 4  X +9.845", text, StringComparison.Ordinal);
        Assert.Contains("= sqrt((9.975/2 + 10/2 + 0.3)^2 - 3^2)", text, StringComparison.Ordinal);
        Assert.Contains("hub across 9.975  aimed: the middle of hub across 10 +0 -0.05  crank.handwheel:14:3", text, StringComparison.Ordinal);
        Assert.Contains("em10 10.000  shop: em10's true size  home.handwheel:9:1", text, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(ReportJson.Why(plan.Stages[0].Steps[1]));
        Assert.Contains(json.RootElement.GetProperty("readings").EnumerateArray(), r => r.GetProperty("working").GetProperty("inputs").GetArrayLength() == 3);
    }
}
