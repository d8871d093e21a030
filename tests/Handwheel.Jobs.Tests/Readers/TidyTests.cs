using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

public sealed class TidyTests
{
    [Fact]
    public void Lines_up_and_keeps_comments() => Assert.Equal(
        """
        job  Knob
        unit mm

        drawing                                  -- from above
          hub   round 10 at 0, 0  from -12 to 0  -- the boss
          -- a word between
          eye   round 8 at 28, 0  from -12 to -8
          size  hub across        10 +0 -0.05

        holding A in small vise
          face to 0 with em10, 1 a pass  -- light
        """.ReplaceLineEndings("\n") + "\n",
        Tidy.Text("x", "job Knob\r\nunit\tmm\n\n\n\ndrawing -- from above\nhub   round 10 at 0 ,0   from -12 to 0 -- the boss\n    -- a word between\n\teye round 8 at 28, 0 from -12 to -8\n size hub   across 10 +0 -0.05\n\nholding A in small vise\nface to 0 with em10 , 1 a pass   -- light\n\n"));

    public static TheoryData<string> Names => [.. Directory.GetFiles(Path.Combine(Examples.Folder, "examples"), "*.handwheel").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_it_wrote_it_leaves_as_it_is_and_reads_the_same(string name)
    {
        var text = Examples.Text(name);
        var once = Tidy.Text(name, text);
        Assert.Equal(once, Tidy.Text(name, once));
        var shop = ShopReader.Read(name, text);
        if (shop.Value is { Mill: not null } written && shop.Findings.Count == 0)
        {
            Assert.Equal(Facts.Of(written), Facts.Of(ShopReader.Read(name, once).Value!));
            return;
        }

        var (before, after) = (JobReader.Read(name, text, Examples.Open), JobReader.Read(name, once, Examples.Open));
        Assert.Equal(string.Empty, Reads.Said(after));
        Assert.Equal(Facts.Of(before.Value!), Facts.Of(after.Value!));
    }

    [Fact]
    public void Reads_as_the_same_job()
    {
        var tidied = Tidy.Text("crank", Reads.Crank);
        Assert.Equal(Facts.Of(Reads.Sound(Reads.Crank)), Facts.Of(Reads.Sound(tidied)));
        Assert.Equal(Reads.Crank.Split("--").Length, tidied.Split("--").Length);
    }

    // Found by damaging documents at random.
    [Theory]
    [InlineData("a sign against a heading", "job\u247D a\nunit mm\nadrawing\n")]
    [InlineData("a sign against a name", "28\u247D , mm\nlonger name here\n")]
    [InlineData("a number against a semicolon", "job a\ndrawing\n  hub round 1\n  x;9 12 to -8\n")]
    [InlineData("a parenthesis against a comma", "job a\ndrawing\nholding A in vise\n  ,(\u247D'\t)\n")]
    [InlineData("two dashes of different kinds", "job a\ndrawing\n  hub round 1 +/\u2212 -0.05\n  hib round 1 +/\u2212-0.05\n")]
    [InlineData("a name alone in a drawing", "job a\ndrawing\n  hub\n")]
    [InlineData("a parenthesis never opened", "job a\ndrawing\nholding A in small )8a*967\n")]
    public void Damaged_lines_are_tidied_once(string name, string text)
    {
        var once = Tidy.Text(name, text);
        Assert.Equal(once, Tidy.Text(name, once));
        Assert.Equal(Reads.Job(text).Findings.Select(f => f.Message), Reads.Job(once).Findings.Select(f => f.Message));
    }

    [Fact]
    public void What_is_no_text_is_left() => Assert.Equal("\0\0", Tidy.Text("x", "\0\0"));

    [Fact]
    public void Mistakes_stay_the_same_mistakes()
    {
        var text = Reads.With("drill pilot", "  dril   pilot through with d4 ,  5,5");
        Assert.Equal(Reads.Job(text).Findings.Select(f => f.Message), Reads.Job(Tidy.Text("x", text)).Findings.Select(f => f.Message));
    }
}
