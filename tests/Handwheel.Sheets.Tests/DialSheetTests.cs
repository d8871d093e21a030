using System.Text.RegularExpressions;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Sheets.Tests.Fixtures;

namespace Handwheel.Sheets.Tests;

public sealed partial class DialSheetTests
{
    private static readonly string Html = DialSheet.Html(CrankPlan.Plan(), CrankPlan.Proof(), "eec6 279a");

    [Fact]
    public void The_same_input_gives_the_same_bytes() => Assert.Equal(Html, DialSheet.Html(CrankPlan.Plan(), CrankPlan.Proof(), "eec6 279a"));

    [Fact]
    public void The_sheet_needs_nothing_from_outside()
    {
        Assert.DoesNotContain("http:", Html, StringComparison.Ordinal);
        Assert.DoesNotContain("https:", Html, StringComparison.Ordinal);
        Assert.Contains("font/woff2;base64,", Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", Html, StringComparison.OrdinalIgnoreCase);
        Assert.True(Html.Length < 400_000, "the sheet grew");
        if (Environment.GetEnvironmentVariable("HANDWHEEL_SHEET") is { Length: > 0 } path)
        {
            File.WriteAllText(path, Html);
        }
    }

    [Fact]
    public void The_sheet_reads_as_it_read_before()
    {
        var file = SheetExtract.Snapshot("crank-sheet");
        var extract = SheetExtract.Of(Html);
        if (Environment.GetEnvironmentVariable("HANDWHEEL_SNAPSHOTS") == "write")
        {
            File.WriteAllText(file, extract);
        }

        Assert.Equal(File.ReadAllText(file), extract);
    }

    [Fact]
    public void Every_page_tells_its_number_and_how_many_there_are()
    {
        var pages = Regex.Count(Html, "<section class=\"page\"");
        Assert.True(pages >= 3);
        for (var page = 1; page <= pages; page++)
        {
            Assert.Contains(FormattableString.Invariant($"<big>{page}</big> of {pages}<"), Html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_halt_says_do_not_cut_on_every_page()
    {
        var proof = CrankPlan.Proof() with { Findings = [Found(Grade.Halt, "gouge", "A3")] };
        var html = DialSheet.Html(CrankPlan.Plan(), proof, "0000 0000");
        Assert.Equal(Regex.Count(html, "<section class=\"page\""), Regex.Count(html, "DO NOT CUT"));
        Assert.DoesNotContain("DO NOT CUT", Html, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unproved_sheet_says_so() => Assert.Contains("DO NOT CUT. This sheet was not proved.", DialSheet.Html(CrankPlan.Plan(), null, "0000 0000"), StringComparison.Ordinal);

    [Fact]
    public void What_a_person_typed_cannot_become_markup()
    {
        var plan = CrankPlan.Plan();
        const string Hostile = "</title><script>alert('1')</script>\" & <b>";
        var html = DialSheet.Html(
            plan with
            {
                Job = plan.Job with { Title = Hostile, Metal = Hostile },
                Stages = [plan.Stages[0] with { HowSet = [Hostile], DryCheck = [Hostile], Steps = [.. plan.Stages[0].Steps.Select(s => s with { Heading = Hostile, Cautions = [Hostile] })] }, .. plan.Stages.Skip(1)],
            },
            CrankPlan.Proof() with { Findings = [Found(Grade.Halt, Hostile, "A2") with { Message = Hostile, Mend = Hostile }] },
            Hostile);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_grade_has_a_shape_and_a_word()
    {
        var proof = CrankPlan.Proof() with { Findings = [Found(Grade.Halt, "gouge", "A3"), Found(Grade.Caution, "climb", "A3"), Found(Grade.Note, "pace", "A3")] };
        var html = DialSheet.Html(CrankPlan.Plan(), proof, "0000 0000");
        foreach (var word in new[] { "halt", "caution", "note" })
        {
            Assert.Contains($"<use href=\"#{word}\"/>", html, StringComparison.Ordinal);
            Assert.Contains($"<b>{word}</b>", html, StringComparison.Ordinal);
        }
    }

    // FIPS 180-4: SHA-256 over "abc" is ba7816bf...; here over the two texts parted by a nought, so the value is checked by its two properties only.
    [Fact]
    public void The_fingerprint_moves_with_either_text()
    {
        Assert.NotEqual(DialSheet.Fingerprint("a", "b"), DialSheet.Fingerprint("a", "c"));
        Assert.NotEqual(DialSheet.Fingerprint("ab", "c"), DialSheet.Fingerprint("a", "bc"));
        Assert.Matches(Marks(), DialSheet.Fingerprint("a", "b"));
    }

    [Fact]
    public void A_long_step_goes_on_over_the_page_and_loses_no_line()
    {
        var plan = CrankPlan.Plan();
        var face = plan.Stages[0].Steps[1];
        var many = face with { Lines = [.. Enumerable.Range(0, 30).SelectMany(_ => face.Lines)] };
        var html = DialSheet.Html(plan with { Stages = [plan.Stages[0] with { Steps = [plan.Stages[0].Steps[0], many] }] }, CrankPlan.Proof(), "0000 0000");
        Assert.Contains("continued", html, StringComparison.Ordinal);
        Assert.Equal(30 * 6, Regex.Count(html, "<div class=\"mv(?: cut)?\">"));
    }

    // A rim that counts the other way shows 88 deg where theta is -88: it is come to from lesser readings, so from minus.
    [Fact]
    public void The_side_to_arrive_from_agrees_with_the_readings_printed()
    {
        var turn = Move(Axis.T, 0, -88) with { Arrive = "from +", WorkTurns = "clockwise" };
        Assert.Contains("T 0\u00B000\u2032 88\u00B000\u2032 from \u2212", Extract(CrankPlan.Plan(), turn), StringComparison.Ordinal);
        var plan = CrankPlan.Plan();
        var along = Move(Axis.X, 2, 7) with { Arrive = "from -" };
        Assert.Contains("X +2.000 +7.000 from \u2212", Extract(plan, along), StringComparison.Ordinal);
        var mill = plan.Shop.Mill! with { X = plan.Shop.Mill.X with { CountsOtherWay = true } };
        Assert.Contains("X \u22122.000 \u22127.000 from +", Extract(plan with { Shop = plan.Shop with { Mill = mill } }, along), StringComparison.Ordinal);
    }

    private static MoveLine Move(Axis axis, double from, double to) => new()
    {
        Number = 40, Axis = axis, From = from, To = to, Cutting = false, CrankClockwise = true, Turns = 1,
        Working = new() { Name = "there", Formula = "as typed", PutIn = "7", Exact = to, Result = to, Unit = axis == Axis.T ? "deg" : "mm", Source = "common practice", Inputs = [] },
    };

    // What a reader reads of the crank's first holding with a second step of these lines alone.
    private static string Extract(JobPlan plan, params SheetLine[] lines) => SheetExtract.Of(DialSheet.Html(
        plan with { Stages = [plan.Stages[0] with { Steps = [plan.Stages[0].Steps[0], plan.Stages[0].Steps[1] with { Lines = lines, Workings = [] }] }] },
        CrankPlan.Proof(),
        "0000 0000"));

    private static Finding Found(Grade grade, string code, string step) => new() { Grade = grade, Code = code, Message = "The hub is gone.", Mend = "Stand further off.", Step = step, Move = 11 };

    [GeneratedRegex("^[0-9a-f]{4} [0-9a-f]{4}$", RegexOptions.None, 2000)]
    private static partial Regex Marks();
}
