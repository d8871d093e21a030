using System.Globalization;
using System.Text.RegularExpressions;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Sheets.Pictures;
using Handwheel.Sheets.Text;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Tests;

/// <summary>What is written in the pictures of the example jobs can be read: no label lies on another, and no depth on the part's outline. Measured on the sheets as written.</summary>
public sealed partial class LabelsTests
{
    [Theory]
    [InlineData("crank")]
    [InlineData("plain-dial")]
    [InlineData("clamp-knob")]
    [InlineData("friction-quadrant")]
    [InlineData("tslot-clamp")]
    public void No_label_lies_on_another_or_on_the_part(string name)
    {
        var faults = new List<string>();
        var pictures = Pictures().Matches(Sheet(name)).Select(m => m.Value).ToArray();
        Assert.NotEmpty(pictures);
        Assert.Contains(pictures, p => Texts().IsMatch(p));
        Assert.Contains(pictures, p => Says().Match(p).Groups["says"].Value.StartsWith("Step", StringComparison.Ordinal) && Outline(p).Count > 0);
        Assert.Contains(pictures, p => Depths().IsMatch(p));
        foreach (var picture in pictures)
        {
            var says = Says().Match(picture).Groups["says"].Value;
            var outline = picture.StartsWith("<svg role=\"img\" aria-label=\"Step", StringComparison.Ordinal) ? Outline(picture) : [];
            var depths = Depths().Matches(picture).Select(m => new Box2(N(m, "x"), N(m, "y"), N(m, "x") + N(m, "wide"), N(m, "y") + N(m, "tall"))).ToArray();
            faults.AddRange(depths.Where(d => outline.Exists(l => d.Crosses(l.A, l.B))).Select(d => string.Create(CultureInfo.InvariantCulture, $"{says} a depth at {d.Left:F1}, {d.Low:F1} lies on the outline")));
            var texts = Texts().Matches(picture).Select(Written).ToArray();
            for (var i = 0; i < texts.Length; i++)
            {
                for (var j = i + 1; j < texts.Length; j++)
                {
                    // Two tenths of a millimetre are the roundness of the letters, not a touch.
                    if (texts[i].Box.Shared(texts[j].Box) is { Wide: > 0.2, Tall: > 0.2 } both)
                    {
                        faults.Add(string.Create(CultureInfo.InvariantCulture, $"{says} '{texts[i].Text}' and '{texts[j].Text}' share {both.Wide:F2} by {both.Tall:F2}"));
                    }
                }
            }
        }

        Assert.Empty(faults);
    }

    [Theory]
    [InlineData(-5, 0, 5, 0, true)]
    [InlineData(-5, 3, 5, 3, false)]
    [InlineData(0, 0, 0.5, 0.5, true)]
    [InlineData(-3, 0, 0, 3, false)]
    [InlineData(-2, 0, 0, 2, true)]
    [InlineData(2, -5, 2, 5, false)]
    public void A_line_through_a_box_is_known(double x1, double y1, double x2, double y2, bool crosses) =>
        Assert.Equal(crosses, new Box2(-1, -1, 1, 1).Crosses(new(x1, y1), new(x2, y2)));

    private static string Sheet(string name)
    {
        var folder = Path.Combine(Snapshot.Root, "examples");
        var read = JobReader.Read(name + ".handwheel", File.ReadAllText(Path.Combine(folder, name + ".handwheel")), shop => File.ReadAllText(Path.Combine(folder, shop)));
        var plan = Planner.Plan(read.Value!, read.Shop!);
        return DialSheet.Html(plan, Prover.Prove(plan.Course, plan.Job.Drawing, plan.Job.Stock, plan.Shop), "0000 0000");
    }

    private static List<(Point2 A, Point2 B)> Outline(string picture)
    {
        var lines = new List<(Point2, Point2)>();
        foreach (var run in Parts().Matches(picture).SelectMany(m => m.Groups["data"].Value.Split('M', StringSplitOptions.RemoveEmptyEntries)))
        {
            var points = run.TrimEnd('Z').Split('L').Select(p => p.Split(' ')).Select(p => new Point2(double.Parse(p[0], CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture))).ToArray();
            lines.AddRange(points.Zip(points.Skip(1)));
        }

        return lines;
    }

    // A figure's box: as wide as its face measures, as tall as a capital (0.7 of the size, B612's and Atkinson's own metrics within 0.02).
    private static (string Text, Box2 Box) Written(Match match)
    {
        var size = N(match, "size");
        var text = System.Net.WebUtility.HtmlDecode(Tags().Replace(match.Groups["text"].Value, string.Empty));
        var face = match.Groups["look"].Value switch
        {
            "fig" => Face.Figure,
            "figb" => Face.FigureBold,
            "sayb" or "sayt" => Face.Bold,
            _ => Face.Plain,
        };
        var wide = TextMeasure.Width(text, face, size / TextMeasure.MillimetresPerPoint);
        var left = N(match, "x") - (match.Groups["anchor"].Value switch
        {
            "middle" => wide / 2,
            "end" => wide,
            _ => 0,
        });
        return (text, new(left, N(match, "y") - (0.7 * size), left + wide, N(match, "y")));
    }

    private static double N(Match match, string group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("<svg role=\"img\".*?</svg>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Pictures();

    [GeneratedRegex("aria-label=\"(?<says>[^\"]*)\"", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Says();

    [GeneratedRegex("<rect class=\"label\" x=\"(?<x>[^\"]*)\" y=\"(?<y>[^\"]*)\" width=\"(?<wide>[^\"]*)\" height=\"(?<tall>[^\"]*)\"", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Depths();

    [GeneratedRegex("<path class=\"part\" d=\"(?<data>[^\"]*)\"", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Parts();

    [GeneratedRegex("<text class=\"(?<look>[a-z]*)\" x=\"(?<x>[^\"]*)\" y=\"(?<y>[^\"]*)\" font-size=\"(?<size>[^\"]*)\"( text-anchor=\"(?<anchor>[a-z]*)\")?>(?<text>.*?)</text>", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Texts();

    [GeneratedRegex("<[^<>]*>", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Tags();
}
