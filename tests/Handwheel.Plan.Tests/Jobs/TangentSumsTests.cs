using System.Globalization;
using System.Text.RegularExpressions;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Tests.Jobs;

/// <summary>The sums shown for tangent arcs and flanks come to the angles printed beside them: plane trigonometry, worked here anew.</summary>
public sealed partial class TangentSumsTests
{
    // Flanks at asin((4.9875 - 4)/28) = 2.0211 deg, the arcs' ends at acos of the same: trigonometry of two rounds.
    [Theory]
    [InlineData("crank", "acos")]
    [InlineData("crank", "asin")]
    [InlineData("turned", "acos")]
    [InlineData("turned", "asin")]
    public void A_sum_of_a_tangent_comes_to_what_it_says(string job, string rule)
    {
        var plan = (job == "crank" ? new PlannedJob("crank.handwheel") : new PlannedJob("crank.handwheel", t => t.Replace("round 8 at 28, 0 ", "round 8 at 24, 14 ", StringComparison.Ordinal).Replace("28 +/-0.05", "24 +/-0.05", StringComparison.Ordinal))).Plan;
        var sums = plan.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Workings).Where(w => w.PutIn.Contains(rule + "(", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(sums);
        Assert.All(sums, w => Assert.Equal(0, Math.IEEERemainder(Sum(w, rule) - w.Exact, 360), 0.0006));
    }

    // +-(a +- acos((R/2 - r/2)/L)) + n x 360, as the sheet writes it; lengths to 4 decimals, hence the tolerance.
    private static double Sum(Working working, string rule)
    {
        var match = Whole().Match(working.PutIn);
        Assert.True(match.Success, working.PutIn);
        double Number(string name) => match.Groups[name].Success ? double.Parse(match.Groups[name].Value.Replace(" ", string.Empty, StringComparison.Ordinal), CultureInfo.InvariantCulture) : 0;
        var ratio = ((Number("R") / 2) - (Number("r") / 2)) / Number("L");
        var angle = (rule == "acos" ? Math.Acos(ratio) : Math.Asin(ratio)) * 180 / Math.PI;
        var inner = Number("a") + (match.Groups["s"].Value == "- " ? -angle : angle);
        return ((match.Groups["m"].Success ? -1 : 1) * inner) + Number("more");
    }

    [GeneratedRegex(@"^(?<m>-)?\(?(?:(?<a>[0-9.]+) (?<s>[+-] ))?a(?:cos|sin)\(\((?<R>[0-9.]+)/2 - (?<r>[0-9.]+)/2\)/(?<L>[0-9.]+)\)\)?(?: (?<more>[+-] [0-9.]+))?", RegexOptions.None, 2000)]
    private static partial Regex Whole();
}
