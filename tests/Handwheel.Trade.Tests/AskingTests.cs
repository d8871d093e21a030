using System.Globalization;
using System.Text.Json.Nodes;
using Handwheel.Trade.Asking;

namespace Handwheel.Trade.Tests;

public sealed class AskingTests
{
    private static Reply Ask(string question) => Asker.Ask(question.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    // Each value is also held against its source in the known values; here the words must lead to it.
    [Theory]
    [InlineData("thread 10-32 UNF 2B", "pitch max, 2B", 0.1736, "in", 1e-4)]
    [InlineData("10-32 thread limits class 2b", "minor max, 2B", 0.164, "in", 5e-4)]
    [InlineData("thread M6 6g", "pitch min, 6g", 5.212, "mm", 1e-3)]
    [InlineData("tap drill M6", "its diameter", 5.0, "mm", 1e-9)]
    [InlineData("what drill for a quarter twenty tap", "its diameter", 0.201, "in", 1e-9)]
    [InlineData("what size hole do I drill to tap 8-32 in brass", "its diameter", 0.136, "in", 1e-9)]
    [InlineData("what percent thread 10-32 drill #21", "percent of thread", 76.4, "%", 0.2)]
    [InlineData("clearance M5", "medium (normal)", 5.5, "mm", 1e-9)]
    [InlineData("clearance hole for M5 screw", "medium (normal)", 5.5, "mm", 1e-9)]
    [InlineData("biggest hole for a 10-24 bolt to slip through", "free hole", 0.201, "in", 1e-9)]
    [InlineData("drill #7", "diameter", 0.201, "in", 1e-9)]
    [InlineData("what is a number 30 drill in mm", "diameter", 0.1285, "in", 1e-9)]
    [InlineData("drill f", "diameter", 0.257, "in", 1e-9)]
    [InlineData("what letter drill is closest to 7 mm", "J diameter", 0.277, "in", 1e-9)]
    [InlineData("wires 1/2-13", "best wire", 0.04441, "in", 1e-4)]
    [InlineData("measure M10 over three wires 0.895", "over wires", 10.4117, "mm", 5e-4)]
    [InlineData("taper Morse 2", "included angle", 2.8614, "deg", 2e-4)]
    [InlineData("angle of a number 2 jacobs taper", "half angle", 2.335, "deg", 2e-4)]
    [InlineData("MT3", "small end", 0.778, "in", 1e-9)]
    [InlineData("taper 7/24 40", "diameter at the gauge line", 1.75, "in", 1e-9)]
    [InlineData("does Morse 2 hold, friction 0.15", "force to free it, as a share of the pull that seated it", 0.7145, "", 5e-4)]
    [InlineData("rollers 30 and 33 on blocks 30", "included angle", 5.7248, "deg", 2e-4)]
    [InlineData("divide 17 on 40", "spaces on the 17 circle", 6, "spaces", 0)]
    [InlineData("I need 13 teeth on a 40:1 dividing head", "spaces on the 39 circle", 3, "spaces", 0)]
    [InlineData("divide 14 on 60 plate 21 23 25 26 28", "spaces on the 28 circle", 8, "spaces", 0)]
    [InlineData("rotary 72 turn 48 deg 40 min dial 1 min", "dial divisions beyond the turns", 220, "divisions", 0)]
    [InlineData("6 holes on a 50 mm pitch circle", "hole 2 Y", 21.6506, "mm", 1e-4)]
    [InlineData("bolt circle 6 holes on 50", "hole 2 Y", 21.6506, "mm", 1e-4)]
    [InlineData("torque 1/4-20 grade 5", "proof load, grade 5", 2700, "lbf", 10)]
    [InlineData("chord 7", "chord factor", 0.4339, "", 6e-5)]
    [InlineData("fit 25 H7/g6", "least clearance", 0.007, "mm", 1e-9)]
    [InlineData("H7/g6 25", "greatest clearance", 0.041, "mm", 1e-9)]
    [InlineData("fit 25 h7/g6", "greatest clearance", 0.041, "mm", 1e-9)]
    [InlineData("fit 3/8 RC4", "shaft: lower deviation", -1.1, "thou", 1e-9)]
    [InlineData("ISO 2768 m 75", "length, medium (m), plus and minus", 0.3, "mm", 1e-9)]
    [InlineData("grade IT7 25", "tolerance", 0.021, "mm", 1e-9)]
    [InlineData("key 20 shaft", "key width", 6, "mm", 1e-9)]
    [InlineData("keyway for 3/4 inch shaft", "bottom of keyseat to the opposite side (S)", 0.644, "in", 6e-4)]
    [InlineData("woodruff 404", "depth of keyseat at its side", 0.1355, "in", 1e-9)]
    [InlineData("counterbore for a 1/4 cap screw", "socket head cap: counterbore diameter", 0.4375, "in", 1e-9)]
    [InlineData("speed 10 mm at 25 m/min", "spindle speed", 795.8, "rpm", 0.1)]
    [InlineData("rpm 1/2 in at 100 sfm", "spindle speed", 763.9, "rpm", 0.1)]
    [InlineData("speed 1/2 drill in mild steel", "cutting speed, most", 110, "ft/min", 1e-6)]
    [InlineData("spede 6 mm drill brass", "cutting speed, start", 60.96, "m/min", 1e-6)]
    [InlineData("kc of C45", "specific cutting force kc1.1", 2220, "MPa", 1e-9)]
    [InlineData("bend web 1 thick 15 long 10 wide 20 N supported in mild steel", "bending stress", 45, "MPa", 1e-9)]
    [InlineData("thin wall 1 thick 15 high 10 wide 20 N in mild steel", "bending stress", 180, "MPa", 1e-9)]
    [InlineData("deflection 6 hss end mill 20 out 50 N", "deflection of a solid bar", 0.01012, "mm", 1e-4)]
    [InlineData("will a 2 mm punch 40 mm long buckle at 200 N", "critical load", 251, "N", 1)]
    [InlineData("shear pin 4 load 2000 N double", "shear stress", 79.6, "MPa", 0.1)]
    [InlineData("wedge 5 deg load 1000 N", "force to drive it", 329.7, "N", 0.1)]
    [InlineData("proof load M10 8.8", "proof load, 8.8", 33700, "N", 200)]
    [InlineData("sine bar 5 in 23 deg 41 min", "blocks", 2.0084, "in", 1e-4)]
    [InlineData("dovetail male 60 deg pins 0.25 in width 1.5 in", "over pins", 2.183, "in", 1e-4)]
    [InlineData("countersink 82 deg to 0.385 in", "depth from first touch", 0.2214, "in", 1e-4)]
    [InlineData("drill point 10", "length of the point", 3.0043, "mm", 1e-4)]
    [InlineData("radius chord 60 height 8", "radius", 60.25, "mm", 1e-4)]
    [InlineData("hex 13 across flats", "across corners (corner circle)", 15.0111, "mm", 1e-4)]
    [InlineData("largest square from 20 mm bar", "across flats (inscribed circle)", 14.1421, "mm", 1e-4)]
    [InlineData("tangent radius 25 and 12 centres 80", "slope of the tangent", -9.352, "deg", 1e-3)]
    [InlineData("v-block 60 deg round 20", "top above the sharp bottom", 30, "mm", 1e-4)]
    [InlineData("cusp ball radius 3 step 0.5", "cusp", 0.010435, "mm", 2e-5)]
    [InlineData("stack 0.1 0.05 0.03 0.05", "root of squares, plus and minus", 0.1261, "mm", 1e-4)]
    [InlineData("12.7 mm in inches", "length", 12.7, "mm", 1e-9)]
    [InlineData("wall between bore 10 and M6 centres 12", "wall left", 4, "mm", 1e-9)]
    [InlineData("press 20 interference 0.03 hub 40 long 25 in mild steel friction 0.12", "greatest pressure", 115.31, "MPa", 0.1)]
    [InlineData("drill bit for M3 threads in aluminum", "its diameter", 2.5, "mm", 1e-9)]
    [InlineData("1/4 bolt hole", "B18.2.8 normal hole", 0.28125, "in", 1e-9)]
    [InlineData("hex on a 40:1 indexer", "whole turns", 6, "turns", 0)]
    [InlineData("23 teeth 60 tooth worm plate 15 18 20 23", "spaces on the 23 circle", 14, "spaces", 0)]
    [InlineData("7 equal spaces on 3 inch circle", "chord between neighbours", 1.30165, "in", 1e-4)]
    [InlineData("chord for 11 divisions of 80 mm", "chord between neighbours", 22.5386, "mm", 1e-3)]
    [InlineData("10 mm reamed hole tolerance", "hole H7: upper deviation", 15, "um", 1e-9)]
    [InlineData("sfm for cast iron hss", "cutting speed, start", 80, "ft/min", 1e-6)]
    [InlineData("1/4 key in 1 inch shaft", "bottom of keyseat to the opposite side (S)", 0.859, "in", 6e-4)]
    [InlineData("angle of 25.882 on a 100 sine bar", "angle", 15, "deg", 1e-3)]
    [InlineData("across corners of 3/4 hex", "across corners (corner circle)", 0.86603, "in", 1e-4)]
    [InlineData("what's the minor diameter of 1/2-20", "minor diameter, nut", 0.4459, "in", 1e-4)]
    [InlineData("how deep thread in brass 10-32", "engagement for equal strength", 0.1456, "in", 2e-3)]
    public void Words_lead_to_the_value(string question, string name, double value, string unit, double tolerance)
    {
        var reply = Ask(question);
        Assert.True(reply.Refusal is null, reply.Refusal?.What);
        var answer = reply.Answers.FirstOrDefault(a => a.Name == name);
        Assert.True(answer is not null, $"'{name}' is not among: {string.Join("; ", reply.Answers.Select(a => a.Name))}");
        var shown = answer!.Unit == unit ? answer.Number!.Value : answer.Metric is { } m && m.Unit == unit ? m.Value : answer.Inch!.Value.Value;
        Assert.Equal(value, shown, tolerance + 1e-12);
        Assert.NotEmpty(answer.Basis.Source);
    }

    [Fact]
    public void Every_example_that_is_offered_is_answered()
    {
        foreach (var topic in TopicList.All)
        {
            foreach (var example in topic.Examples)
            {
                var reply = Ask(example);
                Assert.True(reply.Refusal is null, $"{example}: {reply.Refusal?.What}");
                Assert.True(reply.Topic == topic.Name, $"{example} was taken for '{reply.Topic}', not '{topic.Name}'");
                Assert.NotEmpty(reply.Answers);
                Assert.DoesNotContain(reply.Notes, n => n.StartsWith("Not made use of", StringComparison.Ordinal));
            }
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("hello")]
    [InlineData("strip")]
    [InlineData("press fit")]
    [InlineData("thread")]
    [InlineData("thread M0")]
    [InlineData("thread M6x9")]
    [InlineData("thread 99999-99999")]
    [InlineData("divide 0 on 40")]
    [InlineData("divide 17.5 on 40")]
    [InlineData("divide NaN on 40")]
    [InlineData("fit 25 Q99/q9")]
    [InlineData("fit 99999 H7")]
    [InlineData("fit 0 H7")]
    [InlineData("drill #98")]
    [InlineData("drill #0")]
    [InlineData("taper Morse 12")]
    [InlineData("speed 6 end mill in unobtainium")]
    [InlineData("speed 0 drill in brass")]
    [InlineData("key 1000000 shaft")]
    [InlineData("bend web")]
    [InlineData("press 20 hub 10 long 25")]
    [InlineData("radius chord 1e999 height 0")]
    [InlineData("tangent radius 25 and 12 centres 1")]
    [InlineData("wires 1/2-13 9")]
    [InlineData("tap drill M6 500 %")]
    [InlineData("clearance M999")]
    [InlineData("hex 0 across flats")]
    [InlineData("bolt circle 1 holes on 50")]
    [InlineData("(((((((((((((((((((((")]
    public void What_cannot_be_answered_is_refused_with_examples(string question)
    {
        var reply = Ask(question);
        Assert.NotNull(reply.Refusal);
        Assert.NotEmpty(reply.Refusal.What);
        Assert.NotEmpty(reply.Refusal.Examples);
        Assert.Empty(reply.Answers);
        Assert.NotEmpty(ReplyText.Write(reply));
    }

    [Theory]
    [InlineData("tapr", "taper")]
    [InlineData("dril", "drill")]
    [InlineData("clearence", "clearance")]
    [InlineData("dovtail", "dovetail")]
    public void A_word_that_is_not_known_brings_the_nearest(string typed, string known)
    {
        var reply = Ask(typed);
        Assert.NotNull(reply.Refusal);
        Assert.True(reply.Refusal.Nearest.Contains(known) || reply.Topic == known, string.Join(", ", reply.Refusal.Nearest));
    }

    [Fact]
    public void An_unknown_metal_brings_the_nearest()
    {
        var refusal = Ask("metal titanim").Refusal;
        Assert.NotNull(refusal);
        Assert.Contains("titanium", refusal.Nearest);
    }

    // "at least answers[{name, value, unit, working, source, evidence}]".
    [Fact]
    public void Json_carries_every_part()
    {
        var json = JsonNode.Parse(ReplyJson.Write(Ask("wires 1/2-13")))!;
        Assert.Equal("wires 1/2-13", json["question"]!.GetValue<string>());
        var first = json["answers"]![0]!;
        Assert.Equal("best wire", first["name"]!.GetValue<string>());
        Assert.Equal(0.0444, first["value"]!.GetValue<double>(), 1e-4);
        Assert.Equal("in", first["unit"]!.GetValue<string>());
        Assert.Equal(1.128, first["metric"]!["value"]!.GetValue<double>(), 1e-3);
        Assert.NotEmpty(first["working"]!.AsArray());
        Assert.NotEmpty(first["source"]!.GetValue<string>());
        Assert.Equal("formula of a standard", first["evidence"]!.GetValue<string>());
        Assert.NotNull(json["cautions"]);
        Assert.NotNull(json["notes"]);
        Assert.NotNull(JsonNode.Parse(ReplyJson.Write(Ask("strip")))!["refusal"]!["what"]);
    }

    [Fact]
    public void Cautions_stand_where_they_bite()
    {
        Assert.Contains(Ask("speed 6 drill in magnesium").Cautions, c => c.Contains("burn", StringComparison.Ordinal));
        Assert.Contains(Ask("metal becu").Cautions, c => c.Contains("lung", StringComparison.Ordinal));
        Assert.Contains(Ask("speed 6 drill in brass").Cautions, c => c.Contains("Grabs", StringComparison.Ordinal));
        Assert.Contains(Ask("speed 6 drill in 304").Cautions, c => c.Contains("Hardens", StringComparison.Ordinal));
        Assert.Contains(Ask("torque M6 8.8").Cautions, c => c.Contains("estimates", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_words_give_the_same_bytes_in_any_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var first = ReplyJson.Write(Ask("press fit 20 H7/p6 hub 40 long 25")) + ReplyText.Write(Ask("press fit 20 H7/p6 hub 40 long 25"));
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(first, ReplyJson.Write(Ask("press fit 20 H7/p6 hub 40 long 25")) + ReplyText.Write(Ask("press fit 20 H7/p6 hub 40 long 25")));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // Any words in any order: an answer without NaN, or a refusal; never an exception.
    [Fact]
    public void No_salad_of_words_throws()
    {
        string[] words =
        [
            .. TopicList.All.SelectMany(t => t.Words.Keys), .. TopicList.All.SelectMany(t => t.Examples).SelectMany(e => e.Split(' ')),
            "0", "-1", "1e9", "999999999", "NaN", "Infinity", "0.0000001", "1/0", "0/5", "7/0", "#", "##", "x", "\"", "'", "%", "in", "mm", "deg", "M", "M1000", "H7/", "/", "ß", "½",
        ];
        var random = new Random(20);
        for (var round = 0; round < 4000; round++)
        {
            var question = string.Join(' ', Enumerable.Range(0, random.Next(1, 10)).Select(_ => words[random.Next(words.Length)]));
            var reply = Ask(question);
            Assert.True(reply.Refusal is not null || reply.Answers.Count > 0 || reply.Topic.Length > 0, question);
            Assert.All(reply.Answers, a => Assert.True(a.Number is null || double.IsFinite(a.Number.Value), question));
            JsonNode.Parse(ReplyJson.Write(reply));
            Assert.NotNull(ReplyText.Write(reply));
        }
    }
}
