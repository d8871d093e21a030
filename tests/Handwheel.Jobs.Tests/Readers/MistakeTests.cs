using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

// Each mistake a person makes: one finding, at its place, with the nearest word.
public sealed class MistakeTests
{
    [Theory]
    [InlineData("face to 0 with", "  face to 0 with em1O", "unknown-word", "em1O", "em10")]
    [InlineData("drill pilot", "  dril pilot through with d4", "unknown-word", "dril", "drill")]
    [InlineData("drill pilot", "  drill pilt through with d4", "unknown-word", "pilt", "pilot")]
    [InlineData("drill pin", "  drill pin through with sq4", "wrong-cutter", "sq4", "a drill")]
    [InlineData("ream pin", "  ream pin through with d2.9", "wrong-cutter", "d2.9", "a reamer")]
    [InlineData("face arm", "  face arm to -8 with em10, 1,0 a pass, 0.3 clear of hub", "comma", "1,0", "1.0")]
    [InlineData("face arm", "  face arm to -8 with em10, web 0.3 along far flank", "not-understood", "web", "clear of")]
    [InlineData("face arm", "  face arm to -8 mm mm with em10", "not-understood", "mm", "with")]
    [InlineData("face arm", "  face arm to 8 deg with em10", "wrong-unit", "8 deg", "mm")]
    [InlineData("size    hub across", "  size hub diameter 10 +0 -0.05", "not-understood", "diameter", "'across'")]
    [InlineData("drill pilot", "  drill pilot thru with d4", "not-understood", "thru", "'through'")]
    [InlineData("round hub to", "  round hub to -8 with em10, 1.0 a pass, leaving 0.2", "not-understood", "leaving", "'allow'")]
    [InlineData("holding A", "holding in small vise on rotary", "not-understood", "in", "holding A in")]
    [InlineData("face arm", "  face arm to -0.8 cm with em10", "wrong-unit", "0.8 cm", "mm")]
    [InlineData("face arm", "  face arm to 1e300 with em10", "absurd-number", "1e300", "number")]
    [InlineData("face arm", "  face arm to NaN with em10", "not-understood", "NaN", "number")]
    [InlineData("face arm", "  face arm to -8 with em10, 0 a pass", "absurd-number", "0", "above 0")]
    [InlineData("face arm", "  face arm to -8 with em10, 1/0 a pass", "absurd-number", "1/0", "number")]
    [InlineData("face arm", "  face arm to -8 with em10, (1 - 1)", "not-understood", "(", "pass")]
    [InlineData("face arm", "  face arm to (hub/(eye - eye)) with em10", "absurd-number", "hub", "length")]
    [InlineData("face arm", "  face arm to (hub*eye*arm) with em10", "not-there", "arm", "top")]
    [InlineData("face arm", "  face arm to (hub + eye with em10", "not-understood", "with", "')'")]
    [InlineData("face arm", "  face arm to 99999999999999999999999999999999999999999 with em10", "absurd-number", "99999999999999999999999999999999999999999", "meant")]
    [InlineData("measure hub", "  measure hub acros", "not-there", "hub acros", "measure hub across")]
    [InlineData("rub underside", "  rub underside to arm hihg", "not-there", "arm hihg", "rub underside")]
    [InlineData("holding A", "holding A in smal vise on rotary", "unknown-word", "smal", "small")]
    [InlineData("holding A", "holding A in small vise on rotary, bar along jaws on parallels 6, jaws at -15", "jaws", "-15", "parallels")]
    [InlineData("holding A", "holding A in small vise on rotary, bar along jaws on parallels 7, jaws at -20", "not-there", "7", "6 mm")]
    [InlineData("holding A", "holding B in small vise on rotary, bar along jaws on parallels 6", "said-twice", "B", "one")]
    [InlineData("unit", "unit cm", "not-understood", "cm", "unit mm")]
    [InlineData("metal", "metal", "missing", "metal", "brass")]
    [InlineData("size    hub across", "  size hub accross 10 +0 -0.05", "not-understood", "accross", "across")]
    [InlineData("size    hub across", "  size hub across 11 +0 -0.05", "contradiction", "11", "same")]
    [InlineData("size    hub across", "  size hub long 10 +0 -0.05", "not-there", "hub long", "across")]
    [InlineData("size    hub across", "  size socket high 6 +0 -0.05", "not-there", "socket high", "deep")]
    [InlineData("size    hub across", "  size hub across 10 +0 0.05", "not-understood", "0.05", "+0 -0.05")]
    [InlineData("size    hub across", "  size hub across 10 +0 -0", "limits", "+0 -0", "+/-0.05")]
    [InlineData("size    hub across", "  size hub across 10 H19", "not-understood", "H19", "limits")]
    [InlineData("size    hub to pin", "  size hub to pin along x 27 +/-0.05", "contradiction", "27", "same")]
    [InlineData("others", "  others 0.1", "not-understood", "0.1", "others +/-0.1")]
    [InlineData("eye ", "  eye round 8 at 28, 0 from -8 to -12", "absurd-number", "-8", "lower end first")]
    [InlineData("eye ", "  eye round -8 at 28, 0 from -12 to -8", "absurd-number", "-8", "above 0")]
    [InlineData("eye ", "  eye round 8 at 28 from -12 to -8", "not-understood", "from", "at 28, 0")]
    [InlineData("eye ", "  eye round 8 at 28,0 from -12 to -8", "comma", "28,0", "28, 0")]
    [InlineData("eye ", "  eye roun 8 at 28, 0 from -12 to -8", "unknown-word", "roun", "round")]
    [InlineData("eye ", "  eye round 8 from -12 to -8", "missing", "eye round 8 from -12 to -8", "at 0, 0")]
    [InlineData("eye ", "  eye round 8 at 28, 0, 4 high from -12, from -12 to -8", "said-twice", "eye round 8 at 28, 0, 4 high from -12, from -12 to -8", "one")]
    [InlineData("eye ", "  eye round 8 at 28, 0", "missing", "eye round 8 at 28, 0", "from -12 to 0")]
    [InlineData("eye ", "  eye round (eye + 1) at 28, 0 from -12 to -8", "circular", "eye", "number")]
    [InlineData("stock bar", "stock bar 14 wide, 30 high, 40 long", "stock-short", "stock bar 14 wide, 30 high, 40 long", "larger")]
    [InlineData("stock bar", "stock bar 14 wide, 48 long", "missing", "stock bar 14 wide, 48 long", "30 high")]
    [InlineData("pin ", "  pin cut round 3 H8 at 20, 0.2 in row of 2, 4 apart along x, through", "not-understood", "in", "'0.5 in, row of 4'")]
    [InlineData("stock bar", "stock br 14 wide, 30 high, 48 long", "unknown-word", "br", "bar")]
    [InlineData("shop", "shop hme.handwheel", "missing", "hme.handwheel", "home.handwheel")]
    [InlineData("rub underside", "  rub underside to", "not-there", "", "rub underside")]
    [InlineData("measure hub", "  measure", "not-there", "", "measure hub across")]
    public void A_mistake_is_one_finding_at_its_place(string line, string instead, string code, string marked, string mend)
    {
        var read = Reads.Job(Reads.With(line, instead));
        var finding = read.Findings.FirstOrDefault(f => f.Code == code);
        Assert.True(finding is not null && read.Findings.Count(f => f.Grade == Grade.Halt) == 1, Reads.Said(read));
        Assert.Equal(marked, Reads.Marked(read, finding));
        Assert.Contains(mend, finding.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("eye ", "  eye: round 8 at x 28, y 0 from -12 to -8")]
    [InlineData("holding A", "holding A on the rotary in the small vise, bar along jaws on parallels 6, jaws at -19")]
    [InlineData("face to 0", "  Face top To 0 WITH em10")]
    [InlineData("zero x, y on", "  zero x and y on the rotary")]
    [InlineData("others", "  others \u00B1 .1")]
    [InlineData("size    hub to", "  size hub to pin along x 28 \u22120.05 +0.05")]
    public void Near_ways_of_saying_it_are_read_as_the_same_job(string line, string instead)
    {
        var (job, same) = (Reads.Sound(Reads.Crank), Reads.Sound(Reads.With(line, instead)));
        Assert.Equal(Facts.Of(job), Facts.Of(same));
    }

    [Fact]
    public void One_run_reports_all_in_order_of_place()
    {
        var text = Reads.With("face to 0", "  face to 0,5 with em10").Replace("drill pilot through", "dril pilot through", StringComparison.Ordinal)
            .Replace("size    arm high                   4", "size arm high 5", StringComparison.Ordinal);
        Assert.Equal(["contradiction", "comma", "unknown-word"], Reads.Job(text).Findings.Select(f => f.Code));
    }

    [Fact]
    public void Prints_place_line_carets_sentence_and_mend()
    {
        var read = JobReader.Read("/some/where/crank.handwheel", Reads.With("drill pilot", "  dril pilot through with d4   -- a slip"), Examples.Open);
        Assert.StartsWith(
            "crank.handwheel:36:3  halt  unknown-word\n  dril pilot through with d4   -- a slip\n  ^^^^\n  'dril' is not a step.\n  Write 'drill' if that is meant.",
            Reads.Said(read),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_wide_script_is_marked_as_a_person_sees_it()
    {
        var read = Reads.Job(Reads.With("drill pilot", "  drill \U0001D4B6\u0301\u6E2C through with d4"));
        var finding = Assert.Single(read.Findings);
        Assert.Equal((9, 2), (finding.Where!.Value.Column, finding.Where.Value.Length));
    }

    [Fact]
    public void A_shop_s_mistake_has_the_shop_s_place()
    {
        var shop = Examples.Text("home.handwheel").Replace("end mill 10,", "end mll 10,", StringComparison.Ordinal);
        var read = JobReader.Read("crank.handwheel", Reads.Crank, _ => shop);
        var finding = read.Findings.First(f => f.Where!.Value.File == "home.handwheel");
        Assert.Equal(("unknown-word", "end"), (finding.Code, Reads.Marked(read, finding)));
    }
}
