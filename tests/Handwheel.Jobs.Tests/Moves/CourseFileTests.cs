using CsCheck;
using Handwheel.Draws;
using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Moves;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Tests.Moves;

/// <summary>A moves file reads back to the same course, bit for bit (JSON numbers: RFC 8259 section 6; shortest round-trip text: .NET documentation of double.ToString).</summary>
public sealed class CourseFileTests
{
    private static readonly AxisFacts Plain = new(-100, 300, Readout: true, 0.005, 0.15);

    private static Course Sample(double number = 9.975) => new()
    {
        Title = "Clamp knob, \"two\" up",
        JobFile = "knob.handwheel",
        ShopFile = "home.handwheel",
        Unit = LengthUnit.Inch,
        ReleaseAt = "A2",
        Stages =
        [
            new CourseStage
            {
                Name = "A",
                Setup = new SetupFacts
                {
                    Up = "top",
                    Turn = 12.5,
                    PartOrigin = new Place3(1, number, -3),
                    Rotary = new RotaryFacts(0, 0, -80, Lies: false, -1, 30, 1.0 / 60),
                    Fixtures = [new FixtureFacts { Name = "fixed jaw", Holds = true, Least = new Place3(0, 0, 0), Most = new Place3(1, 1, 1) }],
                    Axes = new AxesFacts(Plain, Plain, Plain with { Least = null }, Plain),
                    Carried = ["x", "y"],
                },
                Steps =
                [
                    new CourseStep
                    {
                        Id = "A1",
                        Text = "zero z on bar top by paper 0.05",
                        Where = new SourceSpan("knob.handwheel", 3, 1, 20),
                        Events =
                        [
                            new CutterIn("em10", 900),
                            new TouchOff { Axis = Axis.Z, On = "metal", Surface = "bar top", At = new Place3(1, 2, 0), With = "em10", Paper = 0.05, SetTo = number },
                            new Move { Number = 1, To = new Handwheel.Jobs.Moves.Reading(number, 1 / 3.0, -0.0, 357.98333333333335), Cutting = true, Feed = 54, Locked = [Axis.Y, Axis.T] },
                            new Measured("hub across", number, Corrects: true),
                            new Spindle(900),
                        ],
                    },
                    new CourseStep
                    {
                        Id = "A2",
                        Text = "press socket",
                        Events = [new Handwork { Work = "press", Cutter = "sq4", At = new Place3(0, 0, 0), Direction = new Place3(0, 0, -1), Depth = 6, Feature = "socket" }],
                    },
                ],
            },
        ],
    };

    [Fact]
    public void What_was_written_reads_back_and_writes_the_same_bytes()
    {
        var text = CourseFile.Write(Sample());
        var (course, findings) = CourseFile.Read("a.json", text);
        Assert.Empty(findings);
        Assert.NotNull(course);
        Assert.Equal(text, CourseFile.Write(course));
        Assert.Equal("knob.handwheel", course.JobFile);
        Assert.DoesNotContain('\r', text);
    }

    [Fact]
    public void A_spindle_that_turns_backwards_is_refused()
    {
        var text = CourseFile.Write(Sample()).Replace("\"event\": \"spindle\",\n        \"rpm\": 900", "\"event\": \"spindle\", \"rpm\": -900", StringComparison.Ordinal);
        Assert.Contains("-900", text, StringComparison.Ordinal);
        Assert.Contains("the spindle is started at -900 rpm", Assert.Single(CourseFile.Read("a.json", text).Findings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_number_within_a_machine_keeps_every_bit() =>
        Gen.Double[-1e6, 1e6].Hold(number =>
        {
            var (course, _) = CourseFile.Read("a.json", CourseFile.Write(Sample(number)));
            var move = (Move)course!.Stages[0].Steps[0].Events[2];
            Assert.Equal(BitConverter.DoubleToInt64Bits(number), BitConverter.DoubleToInt64Bits(move.To.X));
            Assert.Equal(BitConverter.DoubleToInt64Bits(1 / 3.0), BitConverter.DoubleToInt64Bits(move.To.Y));
        }, times: 100);

    [Fact]
    public void What_is_left_out_takes_its_usual_value()
    {
        var text = CourseFile.Write(Sample()).Replace("\"towards\": -1,", string.Empty, StringComparison.Ordinal);
        text = text.Replace("\"carried\": [\n      \"x\",\n      \"y\"\n     ]", "\"carried\": []", StringComparison.Ordinal);
        var (course, findings) = CourseFile.Read("a.json", text);
        Assert.Empty(findings);
        Assert.Equal(-1, ((TouchOff)course!.Stages[0].Steps[0].Events[1]).Towards);
        const string Bare = """
            {"format":"handwheel moves","version":1,"course":{"title":"t","unit":"mm","stages":[{"name":"A","steps":[{"id":"A1","text":"x","events":[
            {"event":"move","number":1,"to":{"x":1,"y":2,"z":3,"t":0},"cutting":false}]}]}]}}
            """;
        (course, findings) = CourseFile.Read("a.json", Bare);
        Assert.Empty(findings);
        Assert.Empty(((Move)course!.Stages[0].Steps[0].Events[0]).Locked);
        Assert.Equal(string.Empty, course.JobFile);
    }

    [Theory]
    [InlineData("", 1, 1)]
    [InlineData("{\n  \"format\": 3}", 2, 13)]
    [InlineData("{\n  \"format\": \"handwheel moves\", \"version\": 1, \"course\": {\"title\": \"\u00e9\u00e9\", \"bogus\": 1}}", 2, 80)]
    [InlineData("[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[", 1, 1)]
    [InlineData("null", 1, 1)]
    [InlineData("{\"format\": \"else\", \"version\": 1, \"course\": {\"title\":\"t\",\"unit\":\"mm\",\"stages\":[]}}", 1, 1)]
    [InlineData("{\"format\": \"handwheel moves\", \"version\": 2, \"course\": {\"title\":\"t\",\"unit\":\"mm\",\"stages\":[]}}", 1, 1)]
    [InlineData("{\"format\": \"handwheel moves\", \"version\": 1, \"course\": {\"title\":\"t\",\"unit\":\"furlong\",\"stages\":[]}}", 1, 84)]
    [InlineData("{\"format\": \"handwheel moves\", \"version\": 1}", 1, 43)]
    public void Bad_text_gives_a_finding_with_its_place(string text, int line, int column)
    {
        var (course, findings) = CourseFile.Read("bad.json", text);
        Assert.Null(course);
        var finding = Assert.Single(findings);
        Assert.Equal("moves-file", finding.Code);
        Assert.Equal(("bad.json", line), (finding.Where!.Value.File, finding.Where.Value.Line));
        Assert.InRange(finding.Where.Value.Column, Math.Max(1, column - 3), column + 3);
        Assert.DoesNotContain("Path:", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("Handwheel.", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1e999")]
    [InlineData("1e7")]
    [InlineData("NaN")]
    [InlineData("\"5\"")]
    [InlineData("null")]
    public void A_number_no_machine_has_is_refused(string number)
    {
        var text = CourseFile.Write(Sample()).Replace("\"setTo\": 9.975", "\"setTo\": " + number, StringComparison.Ordinal);
        var (course, findings) = CourseFile.Read("bad.json", text);
        Assert.Null(course);
        Assert.True(Assert.Single(findings).Where!.Value.Line > 10);
    }

    [Fact]
    public void Unknown_words_and_twice_used_ids_are_each_told()
    {
        var text = CourseFile.Write(Sample())
            .Replace("\"up\": \"top\"", "\"up\": \"sideways\"", StringComparison.Ordinal)
            .Replace("\"id\": \"A2\"", "\"id\": \"A1\"", StringComparison.Ordinal)
            .Replace("\"work\": \"press\"", "\"work\": \"wish\"", StringComparison.Ordinal);
        var (course, findings) = CourseFile.Read("bad.json", text);
        Assert.Null(course);
        Assert.Equal(3, findings.Count);
    }

    [Fact]
    public void Cut_short_anywhere_it_is_refused_and_never_throws()
    {
        var text = CourseFile.Write(Sample());
        for (var length = 0; length < text.Length - 2; length += 7)
        {
            var (course, findings) = CourseFile.Read("bad.json", text[..length]);
            Assert.Null(course);
            Assert.Single(findings);
        }
    }
}
