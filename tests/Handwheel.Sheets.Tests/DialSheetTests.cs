using Handwheel.Sheets.Tests.Fixtures;

namespace Handwheel.Sheets.Tests;

public sealed class DialSheetTests
{
    private static readonly string Html = DialSheet.Html(CrankPlan.Plan(), CrankPlan.Proof(), "eec6 279a");

    [Fact]
    public void The_same_input_gives_the_same_bytes() => Assert.Equal(Html, DialSheet.Html(CrankPlan.Plan(), CrankPlan.Proof(), "eec6 279a"));

    [Fact]
    public void The_sheet_carries_everything_it_needs()
    {
        Assert.DoesNotContain("http:", Html, StringComparison.Ordinal);
        Assert.DoesNotContain("https:", Html, StringComparison.Ordinal);
        Assert.Contains("font/woff2;base64,", Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", Html, StringComparison.OrdinalIgnoreCase);
        if (Environment.GetEnvironmentVariable("HANDWHEEL_SHEET") is { Length: > 0 } path)
        {
            File.WriteAllText(path, Html);
        }
    }
}
