using System.Text.Json;
using Handwheel.Jobs.Moves;
using Handwheel.Quantities;

namespace Handwheel.Cli.Tests;

public sealed class CommandTests
{
    [Theory]
    [InlineData("check", "--write-moves")]
    [InlineData("sheet", "-o FILE")]
    [InlineData("why", "STEP")]
    [InlineData("tidy", "--check")]
    [InlineData("ask", "WORDS")]
    public void Each_command_tells_how_it_is_used(string command, string tells)
    {
        var (code, output, error) = Launched.Run(Launched.Root, command, "--help");
        Assert.Equal(0, code);
        Assert.StartsWith("handwheel " + command, output, StringComparison.Ordinal);
        Assert.Contains(tells, output, StringComparison.Ordinal);
        Assert.Empty(error);
    }

    [Fact]
    public void Tidy_writes_once_and_then_finds_it_tidy()
    {
        using var scratch = new Scratch().With("home.handwheel", File.ReadAllText(Launched.Example("home.handwheel")).Replace("  ", " ", StringComparison.Ordinal));
        Assert.Equal(1, Launched.Run(scratch.Folder, "tidy", "home.handwheel", "--check").Code);
        Assert.Equal(0, Launched.Run(scratch.Folder, "tidy", "home.handwheel").Code);
        var (code, output, _) = Launched.Run(scratch.Folder, "tidy", "home.handwheel", "--check", "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(output);
        Assert.False(json.RootElement.GetProperty("changed").GetBoolean());
        Assert.Single(Directory.GetFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void A_mistake_in_a_job_is_shown_at_its_place()
    {
        using var scratch = new Scratch()
            .With("home.handwheel", File.ReadAllText(Launched.Example("home.handwheel")))
            .With("crank.handwheel", File.ReadAllText(Launched.Example("crank.handwheel")).Replace("round 10 at 0, 0", "round 1,0 at 0, 0", StringComparison.Ordinal));
        var (code, output, _) = Launched.Run(scratch.Folder, "check", "crank.handwheel", "--json");
        Assert.Equal(2, code);
        using var json = JsonDocument.Parse(output);
        var first = json.RootElement.GetProperty("findings")[0];
        Assert.Equal("halt", first.GetProperty("grade").GetString());
        Assert.Equal("crank.handwheel", first.GetProperty("file").GetString());
        Assert.Equal(7, first.GetProperty("line").GetInt32());
    }

    [Fact]
    public void A_sound_job_ends_in_nought_and_tells_how_far_it_is()
    {
        var (code, output, error) = Launched.Run(Launched.Root, "check", Launched.Example("crank.handwheel"), "--progress");
        Assert.True(code == 0, output);
        Assert.Contains("no halt", output, StringComparison.Ordinal);
        Assert.NotEmpty(error);
    }

    // A course that faces nothing and frees nothing: the stock stays a bar, and the proof says so with no plan behind it.
    [Fact]
    public void Moves_are_proved_with_no_plan_against_the_job_they_name()
    {
        using var scratch = new Scratch()
            .With("home.handwheel", File.ReadAllText(Launched.Example("home.handwheel")))
            .With("crank.handwheel", File.ReadAllText(Launched.Example("crank.handwheel")))
            .With("idle.moves", CourseFile.Write(Idle()));
        var (code, output, error) = Launched.Run(scratch.Folder, "check", "--moves", "idle.moves", "--json");
        Assert.True(code == 1, error);
        using var json = JsonDocument.Parse(output);
        Assert.NotEqual(0, json.RootElement.GetProperty("sizes").GetArrayLength());
        var step = json.RootElement.GetProperty("steps")[0];
        Assert.Equal("A1", step.GetProperty("name").GetString());
        Assert.Equal(12.5, step.GetProperty("moves")[0].GetProperty("x").GetDouble());
        Assert.Equal(JsonValueKind.Null, step.GetProperty("moves")[0].GetProperty("working").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("release").GetProperty("step").ValueKind);
        Assert.NotEmpty(json.RootElement.GetProperty("guarantee").GetString()!);
        Assert.Equal(output, Launched.Run(scratch.Folder, "check", "crank.handwheel", "--moves", "idle.moves", "--json").Out);
    }

    [Fact]
    public void Moves_that_name_no_job_ask_for_one()
    {
        using var scratch = new Scratch().With("idle.moves", CourseFile.Write(Idle() with { JobFile = string.Empty }));
        var (code, _, error) = Launched.Run(scratch.Folder, "check", "--moves", "idle.moves");
        Assert.Equal(2, code);
        Assert.Contains("the moves name no job; give it: handwheel check JOB --moves idle.moves", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spoiled_moves_file_gets_a_finding()
    {
        using var scratch = new Scratch().With("idle.moves", CourseFile.Write(Idle())[..200]);
        var (code, output, _) = Launched.Run(scratch.Folder, "check", "--moves", "idle.moves");
        Assert.Equal(2, code);
        Assert.Contains("idle.moves:", output, StringComparison.Ordinal);
    }

    private static Course Idle()
    {
        var axis = new AxisFacts(-200, 200, Readout: true, 0.005, 0.15);
        return new()
        {
            Title = "Idle",
            JobFile = "crank.handwheel",
            Unit = LengthUnit.Millimetre,
            Stages =
            [
                new()
                {
                    Name = "A",
                    Setup = new()
                    {
                        Up = "top",
                        PartOrigin = default,
                        Axes = new(axis, axis, axis, new(null, null, Readout: false, 1.0 / 60, 0)),
                        Fixtures = [new() { Name = "fixed jaw", Holds = true, Least = new(-20, 6.98, -31), Most = new(20, 17, -19) }],
                    },
                    Steps = [new() { Id = "A1", Text = "stand aside", Events = [new CutterIn("em10", 900), new Move { Number = 1, To = new(12.5, 0, 50, 0), Cutting = false }] }],
                },
            ],
        };
    }
}
