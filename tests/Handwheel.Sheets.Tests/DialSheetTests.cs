using System.Text.RegularExpressions;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Proof;
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
    public void The_sheet_reads_as_it_read_before() => Snapshot.Holds("fixture-sheet", SheetExtract.Of(Html));

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

    // A worm of 72 turns the work 5 deg a turn of the crank (360/72): 87 deg 59' is 17 turns and 2 deg 59'.
    [Fact]
    public void The_rotarys_turns_are_told_in_degrees_of_its_dial()
    {
        var turn = Move(Axis.T, 0, -(87 + (59 / 60.0))) with { Turns = (87 + (59 / 60.0)) / 5 };
        Assert.Contains("17 turns + 2\u00B059\u2032", Extract(CrankPlan.Plan(), turn), StringComparison.Ordinal);
    }

    // 50 divisions a turn on the quill's dial: 1.4 turns are 1 and 20 divisions.
    [Fact]
    public void A_slide_without_a_readout_is_told_in_turns_and_divisions()
    {
        var plan = CrankPlan.Plan();
        var setup = CrankPlan.Setup with { Axes = CrankPlan.Setup.Axes with { Z = CrankPlan.Setup.Axes.Z with { Readout = false } } };
        var up = Move(Axis.Z, -1, 2.5) with { Turns = 1.4, Last = Move(Axis.Z, -3.5, 2.5) with { Turns = 2.4 } };
        Assert.Contains("1 turn + 20 div to 2 turns + 20 div", Extract(plan with { Stages = [plan.Stages[0] with { Setup = setup }] }, up), StringComparison.Ordinal);
    }

    [Fact]
    public void Passes_tell_where_from_which_way_how_far_and_what_is_locked()
    {
        MoveLine[] down = [.. new[] { (4.0, -1.0), (-1.0, -1.5) }.Select(z => Move(Axis.Z, z.Item1, z.Item2) with { Arrive = "from +", Turns = (z.Item1 - z.Item2) / 2.5, Pace = 5.6, Lock = [Axis.X, Axis.Y, Axis.T] })];
        var up = Move(Axis.Z, -1, 4) with { Arrive = "from -", Turns = 2, CrankClockwise = false, Last = Move(Axis.Z, -1.5, 4) with { Turns = 2.2 } };
        var text = Extract(CrankPlan.Plan(), new PassBracket { Number = 39, Depths = [-1, -1.5], DepthWorkings = [.. down.Select(m => m.Working)], DepthMoves = down, Lines = [up] });
        Assert.Contains("Z from +4.000, then from the depth reached, arrive from +; clockwise, 0.2 to 2.0 turns, 5.6 s a turn, lock X Y T", text, StringComparison.Ordinal);
        Assert.Contains("the depthreached +4.000 from \u2212 counter2.0 to 2.2 turns free", text, StringComparison.Ordinal);
    }

    // T0 + s theta with T0 = 0, s = -1: a theta of -87 deg 59' shows as 87 deg 59'.
    [Fact]
    public void A_working_of_an_angle_ends_at_the_reading_of_the_rim()
    {
        var turn = Move(Axis.T, 0, -(87 + (59 / 60.0)));
        var plan = CrankPlan.Plan();
        var step = plan.Stages[0].Steps[1] with { Lines = [turn], Workings = [turn.Working] };
        var html = DialSheet.Html(plan with { Stages = [plan.Stages[0] with { Steps = [step] }] }, CrankPlan.Proof(), "0000 0000");
        Assert.Contains("T = 360 \u2212 theta = 87\u00B059\u2032", SheetExtract.Of(html), StringComparison.Ordinal);
    }

    [Fact]
    public void The_heights_lifted_to_are_those_of_the_rows()
    {
        var up = Extract(CrankPlan.Plan(), Move(Axis.Z, -1, 4), Move(Axis.Z, -2, 4), Move(Axis.Z, -1, 6.5));
        Assert.Contains("A to Z +4.000, but +6.500 in A2", up, StringComparison.Ordinal);
    }

    // The faced arm is planned to -8 and sounded 0.03 lower: the picture's tag says what was planned.
    [Fact]
    public void A_pictures_tags_are_the_depths_planned()
    {
        var proof = CrankPlan.Proof();
        var sounded = proof with { Stocks = [.. proof.Stocks.Select(s => new StepStock(s.Step, p => s.TopBefore(p) is < -1 and { } z ? z - 0.03 : s.TopBefore(p), s.TopAfter))] };
        var text = SheetExtract.Of(DialSheet.Html(CrankPlan.Plan(), sounded, "eec6 279a"));
        Assert.DoesNotContain("\u22128.03", text, StringComparison.Ordinal);
        Assert.Equal(Regex.Count(SheetExtract.Of(Html), "\u22128 "), Regex.Count(text, "\u22128 "));
    }

    [Fact]
    public void What_is_worked_out_for_a_hand_is_told_once()
    {
        var plan = CrankPlan.Plan();
        var hand = plan.Stages[1].Steps[0];
        var workings = ((HandLine)hand.Lines[0]).Workings;
        var html = DialSheet.Html(plan with { Stages = [plan.Stages[0], plan.Stages[1] with { Steps = [hand with { Workings = workings }] }] }, CrankPlan.Proof(), "0000 0000");
        Assert.Equal(1, Regex.Count(SheetExtract.Of(html), "push on the punch:"));
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
