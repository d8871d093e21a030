using Handwheel.Jobs.Designs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

// What a design's lines read as, and each mistake in them.
public sealed class DesignTests
{
    // The crank with its own design exchanged for one line.
    private static string With(string line) =>
        Reads.Crank[..Reads.Crank.IndexOf("\ndesign", StringComparison.Ordinal)] + $"\ndesign\n  {line}\n\n" + Reads.Crank[Reads.Crank.IndexOf("stock bar", StringComparison.Ordinal)..];

    private static T Read<T>(string line)
        where T : DesignLine => Assert.IsType<T>(Assert.Single(Reads.Sound(With(line)).Drawing.Designs));

    [Fact]
    public void Forces_and_torques_are_read_in_their_units()
    {
        // 1 lbf = 4.4482216152605 N, 1 in = 25.4 mm (exact, 1959): 40 lbf in = 4519.393 N mm; 1 bar = 0.1 MPa.
        Assert.Equal(4519.393, Read<ScrewDesign>("screw 1/4-20 UNC, 1/2 in engaged, torque 40 lbf in").Torque!.Value, 3);
        Assert.Equal(6000, Read<ScrewDesign>("screw M6, 12 engaged, torque 6 N m").Torque!.Value, 9);
        Assert.Equal(1500, Read<ScrewDesign>("screw M6, 12 engaged, pull 1.5 kN").Pull!.Value, 9);
        Assert.Equal(2, Read<WallDesign>("wall pin to eye, holds 20 bar").Holds!.Value, 9);
    }

    [Fact]
    public void A_fit_takes_the_drawing_s_limits_and_the_counterpart_s()
    {
        // ISO 286-1: 3 H8 is +14 0 um, 3 m6 is +8 +2 um.
        var fit = Read<FitDesign>("fit pin with dowel 3 m6, to press");
        Assert.Equal((3, 3.014, true), (fit.OwnLimits.Lower, fit.OwnLimits.Upper, fit.OwnIsHole));
        Assert.Equal((3.002, 3.008), (fit.CounterLimits.Lower, fit.CounterLimits.Upper));
        Assert.Equal(("dowel 3 m6", "press"), (fit.Counter, fit.Wanted));
        var named = Read<FitDesign>("fit pin H8/f7, to slide");
        Assert.Equal(("H8", "3 f7"), (named.OwnZone, named.Counter));
        Assert.Equal(2.984, named.CounterLimits.Lower, 9);
    }

    [Fact]
    public void Metals_with_a_comma_and_tapers_of_the_trade_are_read()
    {
        Assert.Equal("free-cutting brass", Read<ScrewDesign>("screw M6, 12 engaged, in brass, free-cutting, pull 1 kN").Metal);
        var taper = Read<TaperDesign>("drawbar M10 on Morse 2, torque 12 N m, drives 5 N m");
        Assert.Equal(("Morse", "2", "M10"), (taper.Family, taper.Number, taper.Drawbar));
        Assert.Equal(("7/24", "30"), Read<TaperDesign>("taper 7/24 30, pull 6 kN") is var t ? (t.Family, t.Number) : default);
        Assert.Equal(["jack", "eye"], Read<BendDesign>("bend under 40 N at pin, resting on hub and eye").Rests is [_, "eye"] ? ["jack", "eye"] : Array.Empty<string>());
    }

    [Theory]
    [InlineData("scrw M6, 12 engaged, pull 1 kN", "unknown-word", "scrw", "screw")]
    [InlineData("screw pin, pull 1 kN", "not-there", "pin", "thread M6")]
    [InlineData("screw pn, pull 1 kN", "unknown-word", "pn", "pin")]
    [InlineData("screw M6, 12 engaged, pull 1", "wrong-unit", "", "kN")]
    [InlineData("screw M6, 12 engaged, pull 6 N m", "wrong-unit", "N", "kN")]
    [InlineData("screw M6, 12 engaged, torque 6 N", "wrong-unit", "N", "N m")]
    [InlineData("screw M6, 12 engaged, pull 0 N", "absurd-number", "0", "meant")]
    [InlineData("screw M6, 12 engaged, pull -1 kN", "absurd-number", "-1", "meant")]
    [InlineData("screw M6, 12 engaged, pull 1e9 N", "absurd-number", "1e9", "number")]
    [InlineData("screw M6, 12 engaged", "missing", "screw M6, 12 engaged", "torque 6 N m")]
    [InlineData("screw M6, pull 1 kN", "missing", "screw M6, pull 1 kN", "engaged")]
    [InlineData("screw M6, 12 engaged, pull 1 kN, grade 7.7", "unknown-word", "7.7", "8.8")]
    [InlineData("screw M6, 12 engaged, pull 1 kN, in bras", "unknown-word", "bras", "brass")]
    [InlineData("screw M6, 12 engaged, pull 1 kN, pull 2 kN", "said-twice", "pull", "one")]
    [InlineData("taper Morse 12, pull 4 kN", "unknown-word", "Morse 12", "Morse 2")]
    [InlineData("taper hub, pull 4 kN", "not-there", "hub", "cone")]
    [InlineData("drawbar M10 on Morse 2", "missing", "drawbar M10 on Morse 2", "torque 20 N m")]
    [InlineData("fit pin with dowel 3", "not-understood", "", "3 m6")]
    [InlineData("fit pin with pilot", "not-there", "pilot", "hole")]
    [InlineData("fit pin H8/x99", "not-understood", "H8/x99", "H7/g6")]
    [InlineData("fit arm across with 4 h6", "not-there", "arm", "It has")]
    [InlineData("wall pin to eye", "missing", "wall pin to eye", "at least 2")]
    [InlineData("wall pin to ey, at least 2", "unknown-word", "ey", "eye")]
    [InlineData("drive pin, torque 1 N m", "not-there", "pin", "square")]
    [InlineData("bend under 40 at pin, held at hub", "wrong-unit", "at", "kN")]
    [InlineData("bend under 40 N at pin", "missing", "bend under 40 N at pin", "held at hub")]
    [InlineData("fit pin with dowel 3 m6, clear 0.05 to 0.01", "limits", "0.01", "least first")]
    public void A_mistake_is_one_finding_at_its_place(string line, string code, string marked, string mend)
    {
        var read = Reads.Job(With(line));
        var finding = read.Findings.FirstOrDefault(f => f.Code == code);
        Assert.True(finding is not null && read.Findings.Count(f => f.Grade == Grade.Halt) == 1, Reads.Said(read));
        Assert.Equal(marked, Reads.Marked(read, finding));
        Assert.Contains(mend, finding.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Tidy_keeps_a_design()
    {
        const string line = "press pin with dowel 3 p6, 4 long, of steel, drives 0.1 N m";
        var text = With(line.Replace(", ", " ,   ", StringComparison.Ordinal) + "   -- why");
        var tidied = Tidy.Text("job.handwheel", text);
        Assert.Contains("\ndesign\n  " + line + "  -- why\n", tidied, StringComparison.Ordinal);
        Assert.Equal(tidied, Tidy.Text("job.handwheel", tidied));
        Assert.Equal(line, Assert.Single(Reads.Sound(tidied).Drawing.Designs).Text);
    }
}
