using System.Diagnostics;
using System.Globalization;
using System.Text;
using Handwheel.Cli.Commands;

namespace Handwheel.Cli.Tests;

/// <summary>What is no job, or no job that can be made: a finding at its place from every command, soon, and nothing written or lost.</summary>
public sealed class BadInputTests
{
    private static readonly string Crank = File.ReadAllText(Launched.Example("crank.handwheel"));

    // What is written, and a word of what is said of it.
    private static readonly Dictionary<string, (byte[] Bytes, string Said)> Bad = new(StringComparer.Ordinal)
    {
        ["nothing in it"] = (Of(string.Empty), "missing"),
        ["only spaces and comments"] = (Of("  \n-- a comment\n\t\n"), "missing"),
        ["cut off in the drawing"] = (Of(Crank[..700]), "The stock is missing"),
        ["cut off in a holding's line"] = (Of(Crank[..Crank.IndexOf("A in small vise", StringComparison.Ordinal)]), "the holding's letter was expected"),
        ["bytes"] = (Bytes(), "not-text"),
        ["Latin letters of one byte"] = (Encoding.Latin1.GetBytes(Crank.Replace("Winch", "Kurbelstück", StringComparison.Ordinal)), "not-text"),
        ["ten megabytes of steps"] = (Of(Crank + string.Concat(Enumerable.Repeat("  drill pilot through with d4\n", 350_000))), "too-much"),
        ["ten megabytes in one line"] = (Of(new string('x', 10_000_000)), "too-much"),
        ["a hundred thousand brackets"] = (With("28, 0", $"{new string('(', 100_000)}28{new string(')', 100_000)}, 0"), "too-much"),
        ["a hundred thousand open brackets, a line each"] = (Of(Crank + string.Concat(Enumerable.Repeat("(\n", 100_000))), "too-much"),
        ["a hundred thousand steps"] = (With("by hand", string.Concat(Enumerable.Repeat("  move x to 20\n", 100_000)) + "by hand"), "too-much"),
        ["not a number"] = (With("28, 0", "NaN, 0"), "'NaN' is not a feature"),
        ["infinity"] = (With("28, 0", "infinity, 0"), "'infinity' is not a feature"),
        ["an exponent"] = (With("28, 0", "1e999, 0"), "no exponent"),
        ["a number too small"] = (With("28, 0", "1e-300, 0"), "no exponent"),
        ["a thousand digits"] = (With("28, 0", new string('9', 1000) + ", 0"), "absurd-number"),
        ["a kilometre"] = (With("28, 0", "1000000, 0"), "absurd-number"),
        ["a size below nothing"] = (With("round 10", "round -10"), "a size is not negative"),
        ["a size of nothing"] = (With("round 10", "round 0"), "a size is above 0"),
        ["a division by nothing"] = (With("28, 0", "(1/0), 0"), "divided by 0"),
        ["a root of less than nothing"] = (With("28, 0", "(sqrt(-1)), 0"), "no root"),
        ["a feature at itself"] = (With("eye     round 8 at 28, 0", "eye     round 8 at eye"), "eye"),
        ["two features at each other"] = (With("hub     round 10 at 0, 0", "hub     round 10 at eye", "eye     round 8 at 28, 0", "eye     round 8 at hub"), "circular"),
        ["a feature that is not there"] = (With("at hub         through", "at hob         through"), "Write 'hub' if that is meant"),
        ["a name twice"] = (With("  eye     round", "  hub     round"), "said twice"),
        ["a shop that is not there"] = (With("home.handwheel", "none.handwheel"), "The shop 'none.handwheel' is missing"),
        ["itself as its shop"] = (With("home.handwheel", "bad.handwheel"), "bad.handwheel:"),
        ["a folder as its shop"] = (With("home.handwheel", "."), "missing"),
        ["a unit nobody uses"] = (With("unit  mm", "unit  furlong"), "'mm' or 'in' was expected"),
        ["a stock smaller than the part"] = (With("48 long", "20 long"), "mm out of its stock towards x plus"),
        ["a stock that no jaw takes"] = (With("14 wide", "60 wide", "13.96 wide", "59 wide"), "opens 30 mm"),
        ["a cutter the shop has not"] = (With("face to 0 with em10", "face to 0 with em99"), "em99"),
    };

    public static TheoryData<string> Names() => [.. Bad.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_gets_a_finding_soon_and_nothing_is_written(string name)
    {
        var (bytes, said) = Bad[name];
        using var scratch = new Scratch().With("home.handwheel", File.ReadAllText(Launched.Example("home.handwheel"))).With("old.html", "old").With("old.moves", "old");
        File.WriteAllBytes(scratch["bad.handwheel"], bytes);
        var clock = Stopwatch.StartNew();
        foreach (var words in (string[][])[["check"], ["check", "--json"], ["check", "--write-moves", scratch["old.moves"]], ["check", "--write-moves", scratch["new.moves"]], ["sheet", "-o", scratch["old.html"]], ["sheet", "-o", scratch["new.html"]], ["why", "A1"]])
        {
            var (code, output, error) = Run([words[0], scratch["bad.handwheel"], .. words[1..]]);
            Assert.Equal(2, code);
            Assert.DoesNotContain("   at ", output + error, StringComparison.Ordinal);
            Assert.Contains("bad.handwheel", output, StringComparison.Ordinal);
            if (words is ["check"])
            {
                Assert.Contains(said, output, StringComparison.Ordinal);
                Assert.Contains("  halt  ", output, StringComparison.Ordinal);
            }
        }

        Assert.Equal(["bad.handwheel", "home.handwheel", "old.html", "old.moves"], Directory.GetFiles(scratch.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal("oldold", File.ReadAllText(scratch["old.html"]) + File.ReadAllText(scratch["old.moves"]));
        Assert.Equal(bytes, File.ReadAllBytes(scratch["bad.handwheel"]));

        // A bound, not a measurement: seven readings of the largest take a few seconds.
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 120);
    }

    [Theory]
    [InlineData("nothing in it")]
    [InlineData("bytes")]
    [InlineData("Latin letters of one byte")]
    [InlineData("ten megabytes in one line")]
    [InlineData("ten megabytes of steps")]
    [InlineData("a hundred thousand brackets")]
    public void What_cannot_be_tidied_is_left_as_it_is_and_said_so(string name)
    {
        using var scratch = new Scratch();
        File.WriteAllBytes(scratch["bad.handwheel"], Bad[name].Bytes);
        var (code, output, error) = Run(["tidy", scratch["bad.handwheel"]]);
        Assert.Equal(2, code);
        Assert.Contains("bad.handwheel:", output, StringComparison.Ordinal);
        Assert.EndsWith("bad.handwheel is left as it is" + Environment.NewLine, error, StringComparison.Ordinal);
        Assert.Equal(Bad[name].Bytes, File.ReadAllBytes(scratch["bad.handwheel"]));
    }

    [Fact]
    public void A_cutter_bigger_than_the_vise_strikes_it()
    {
        // 90 across on jaws 40 wide whose tops stand at -19: the flanks are asked for below them.
        using var scratch = new Scratch()
            .With("home.handwheel", File.ReadAllText(Launched.Example("home.handwheel")) + "\nem90  end mill 90, 6 flutes carbide, flute 40, shank 20, out 60\n")
            .With("bad.handwheel", Crank.Replace("face to 0 with em10", "face to -20 with em90", StringComparison.Ordinal));
        var (code, output, _) = Run(["check", scratch["bad.handwheel"]]);
        Assert.Equal(1, code);
        Assert.Contains("halt  strike", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Line_endings_may_be_mixed_and_names_in_any_script()
    {
        var text = string.Concat(Crank.Replace("hub", "\u8F6E\u6BC2", StringComparison.Ordinal).Split('\n').Select((l, i) => l + (i % 3) switch { 0 => "\r\n", 1 => "\n", _ => "\r" }));
        using var scratch = new Scratch().With("home.handwheel", File.ReadAllText(Launched.Example("home.handwheel"))).With("good.handwheel", text);
        var (code, output, _) = Run(["check", scratch["good.handwheel"]]);
        Assert.Equal(0, code);
        Assert.Contains("\u8F6E\u6BC2 across", output, StringComparison.Ordinal);
    }

    private static (int Code, string Out, string Error) Run(string[] words)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture), error = new(CultureInfo.InvariantCulture);
        return (CommandLine.Run(words, new(output, error)), output.ToString(), error.ToString());
    }

    private static byte[] Of(string text) => Encoding.UTF8.GetBytes(text);

    private static byte[] With(params string[] changes)
    {
        var text = Crank;
        for (var i = 0; i < changes.Length; i += 2)
        {
            Assert.Contains(changes[i], text, StringComparison.Ordinal);
            text = text.Replace(changes[i], changes[i + 1], StringComparison.Ordinal);
        }

        return Of(text);
    }

    private static byte[] Bytes()
    {
        var bytes = new byte[5000];
        new Random(1).NextBytes(bytes);
        return bytes;
    }
}
