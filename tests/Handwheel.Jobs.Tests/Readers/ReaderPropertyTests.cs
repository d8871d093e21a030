using System.Globalization;
using CsCheck;
using Handwheel.Draws;
using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

public sealed class ReaderPropertyTests
{
    private static readonly int Damages = int.TryParse(Environment.GetEnvironmentVariable("HANDWHEEL_DAMAGES"), NumberStyles.None, CultureInfo.InvariantCulture, out var more) ? more : 300;

    // A job of rounds, blocks and holes with sizes in hundredths of the unit, written with any unit.
    private static readonly Gen<Func<Func<int, string>, string>> Jobs =
        from count in Gen.Int[1, 6]
        from numbers in Gen.Int[1, 4000].Array[count * 6]
        from kinds in Gen.Int[0, 3].Array[count]
        from deep in Gen.Int[100, 900]
        select (Func<Func<int, string>, string>)(n => Written(n, kinds, numbers, deep));

    [Fact]
    public void Metric_and_inch_writings_of_one_job_are_one_job() => Jobs.Hold(
        write =>
        {
            // The numbers count hundredths of an inch; 0.01 in is exactly 0.254 mm.
            var inch = "unit in\n" + write(n => ((decimal)n / 100).ToString(CultureInfo.InvariantCulture));
            var metric = "unit mm\n" + write(n => (n * 0.254m).ToString(CultureInfo.InvariantCulture));
            var mixed = "unit mm\n" + write(n => $"{((decimal)n / 100).ToString(CultureInfo.InvariantCulture)} in");
            var fraction = "unit in\n" + write(n => n < 100 ? $"{(n < 0 ? "-" : string.Empty)}{Math.Abs(n).ToString(CultureInfo.InvariantCulture)}/100" : $"{(n / 100).ToString(CultureInfo.InvariantCulture)} {(n % 100).ToString(CultureInfo.InvariantCulture)}/100");
            var facts = Facts.Of(Reads.Sound(inch));
            Assert.Equal(facts, Facts.Of(Reads.Sound(metric)));
            Assert.Equal(facts, Facts.Of(Reads.Sound(mixed)));
            Assert.Equal(facts, Facts.Of(Reads.Sound(fraction)));
        },
        times: 200);

    [Fact]
    public void What_tidy_wrote_reads_as_the_same_job() => Jobs.Hold(
        write =>
        {
            var text = "unit mm\n" + write(n => (n / 100m).ToString(CultureInfo.InvariantCulture));
            var untidy = text.Replace(", ", "  ,   ", StringComparison.Ordinal).Replace("  ", "\t", StringComparison.Ordinal);
            var tidied = Tidy.Text("x", untidy);
            Assert.Equal(Facts.Of(Reads.Sound(text)), Facts.Of(Reads.Sound(tidied)));
            Assert.Equal(tidied, Tidy.Text("x", tidied));
        },
        times: 200);

    [Fact]
    public void Any_damage_to_a_job_is_read_without_throwing() => Gen.Select(Gen.Int[0, 5000], Gen.Int[0, 40], Gen.String[Gen.Char["0123456789.,()+-*/ \n\"'abxyz;\u00e9\u6e2c\ud835\u0301\t#"], 0, 12]).Hold(
        (at, length, put) =>
        {
            var text = Reads.Crank;
            at = Math.Min(at, text.Length);
            var damaged = string.Concat(text.AsSpan(0, at), put, text.AsSpan(Math.Min(text.Length, at + length)));
            var read = Reads.Job(damaged);
            Assert.All(read.Findings, f => Assert.True(f.Where is { Line: >= 1, Column: >= 1 }));
            _ = Reads.Said(read);
            var tidied = Tidy.Text("x", damaged);
            Assert.Equal(tidied, Tidy.Text("x", tidied));
            Assert.Equal(read.Findings.Select(f => f.Code), Reads.Job(tidied).Findings.Select(f => f.Code));
        },
        times: Damages);

    [Fact]
    public void Any_damage_to_a_shop_is_read_without_throwing() => Gen.Select(Gen.Int[0, 4000], Gen.Int[0, 40], Gen.String[Gen.Char["0123456789.,()+-*/ \n\"'abxyz;#"], 0, 12]).Hold(
        (at, length, put) =>
        {
            var text = Examples.Text("home.handwheel");
            at = Math.Min(at, text.Length);
            var read = ShopReader.Read("s", string.Concat(text.AsSpan(0, at), put, text.AsSpan(Math.Min(text.Length, at + length))));
            _ = Reads.Said(read);
        },
        times: Damages);

    private static string Written(Func<int, string> n, int[] kinds, int[] numbers, int deep)
    {
        // A foot under all of it, so that every cut has metal to cut.
        var text = $"job a\nmetal brass\nshop home.handwheel\ndrawing\n  foot block {n(20000)} by {n(20000)} at 0, 0 from {n(-deep - 100)} to {n(-deep + 50)}\n";
        for (var i = 0; i < kinds.Length; i++)
        {
            var v = numbers.AsSpan(i * 6, 6);
            text += kinds[i] switch
            {
                0 => $"  f{N(i)} round {n(v[0])} +{n(v[1])} -{n(1)} at {n(v[2])}, {n(v[3])} from {n(-deep)} to {n(deep)}\n",
                1 => $"  f{N(i)} block {n(v[0])} by {n(v[1])} at {n(v[2])}, {n(v[3])} from {n(-deep)} to {n(deep)}\n",
                2 => $"  f{N(i)} hole {n(v[0])} at {n(v[2])}, {n(v[3])} from {n(-deep)} to {n(v[4])}\n",
                _ => $"  f{N(i)} ring {n(v[0] + 5000)} bore {n(v[0])} at {n(v[2])}, {n(v[3])}, {n(v[4])} high from {n(-deep)}\n",
            };
        }

        return text + $"  others +/-{n(1)}\nstock bar {n(90000)} wide, {n(90000)} high, {n(90000)} long\n  x from {n(-45000)}\n  z top {n(45000)}\nholding A in step clamps\n  zero z on bar top by paper {n(1)}\n  move x to {n(deep)}\n";
    }

    private static string N(int i) => i.ToString(CultureInfo.InvariantCulture);
}
