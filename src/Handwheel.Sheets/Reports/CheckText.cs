using System.Globalization;
using System.Text;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Reports;

/// <summary>What <c>check</c> prints for a person.</summary>
public static class CheckText
{
    /// <summary>The report as text: findings with place and mend, sizes, release, what was proved and how surely.</summary>
    /// <param name="report">The report.</param>
    /// <returns>Lines, ending in a line feed.</returns>
    public static string Write(JobReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var text = new StringBuilder();
        foreach (var finding in report.Findings)
        {
            text.Append(FindingPrinter.Print(finding, report.LineOf));
            if (Place(finding, report) is { Length: > 0 } place)
            {
                text.Append("  ").Append(place).Append('\n');
            }

            text.Append('\n');
        }

        if (report.Proof is { } proof)
        {
            Sizes(text, report, proof);
            text.Append(DesignText.Write(report.Designs, report.Unit, sources: false)).Append(report.Designs.Count > 0 ? "\n" : string.Empty);
            text.Append("release  ").Append(Release(proof.Release)).Append('\n');
            text.Append("proved   ").Append(proof.Guarantee).Append('\n');
        }

        return text.Append(Summary(report)).Append('\n').ToString();
    }

    /// <summary>How many findings of each grade, in a line.</summary>
    /// <param name="report">The report.</param>
    /// <returns><c>Winch crank: no halt, 1 caution, 2 notes</c>.</returns>
    public static string Summary(JobReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var halts = report.Count(Grade.Halt);
        var title = report.Title.Length > 0 ? report.Title + ": " : string.Empty;
        return $"{title}{(halts == 0 ? "no halt" : Counted(halts, "halt"))}, {Counted(report.Count(Grade.Caution), "caution")}, {Counted(report.Count(Grade.Note), "note")}";
    }

    // Step and move, the reading there, and the place on the part: such of them as are known.
    private static string Place(Finding finding, JobReport report)
    {
        var move = finding.Move is { } number ? string.Create(CultureInfo.InvariantCulture, $", move {number}") : string.Empty;
        string[] said =
        [
            finding.Step is { } step ? $"at step {step}{move}" : string.Empty,
            finding.AtReading is { } reading ? "reading " + Readings(reading, report) : string.Empty,
            finding.At is { } at ? $"on the part X {Plain(at.X, report.Unit)}, Y {Plain(at.Y, report.Unit)}, Z {Plain(at.Z, report.Unit)}" : string.Empty,
        ];
        return string.Join("; ", said.Where(s => s.Length > 0));
    }

    // As the machine shows them: a readout that counts the other way is printed so.
    private static string Readings(Point3 at, JobReport report)
    {
        var mill = report.Plan?.Shop.Mill;
        string one(string axis, MachineAxis? machine, double value) => $"{axis} {Plain(machine?.CountsOtherWay == true ? -value : value, report.Unit)}";
        return $"{one("X", mill?.X, at.X)}, {one("Y", mill?.Y, at.Y)}, {one("Z", mill?.Z, at.Z)}";
    }

    private static string Plain(double millimetres, LengthUnit unit) => ReadingText.Plain(millimetres, unit, unit == LengthUnit.Inch ? 0.00254 : 0.001);

    private static string Counted(int count, string word) => string.Create(CultureInfo.InvariantCulture, $"{count} {word}{(count == 1 ? string.Empty : "s")}");

    private static void Sizes(StringBuilder text, JobReport report, ProofResult proof)
    {
        if (proof.Sizes.Count == 0)
        {
            return;
        }

        List<string[]> rows = [[$"size ({report.Unit.Symbol()})", "least", "most", "planned", string.Empty], .. proof.Sizes.Select(s => Row(report, s))];
        var widths = Enumerable.Range(0, 5).Select(i => rows.Max(r => r[i].Length)).ToArray();
        foreach (var row in rows)
        {
            text.Append((row[0].PadRight(widths[0]) + "  " + string.Join("  ", Enumerable.Range(1, 3).Select(i => row[i].PadLeft(widths[i]))) + "  " + row[4]).TrimEnd()).Append('\n');
        }

        text.Append('\n');
    }

    private static string[] Row(JobReport report, SizeResult size)
    {
        var angle = report.Plan?.Job.Drawing.Sizes.Any(s => s.Kind == Jobs.Drawings.SizeKind.Angle && string.Equals(s.Name, size.Name, StringComparison.Ordinal)) ?? false;
        string Print(double value) => angle
            ? (value * 180 / Math.PI).ToString("F3", CultureInfo.InvariantCulture) + " deg"
            : report.Unit.FromMillimetres(value).ToString(report.Unit == LengthUnit.Inch ? "F4" : "F3", CultureInfo.InvariantCulture);
        var planned = size switch
        {
            { ByHand: true } => "by hand",
            { Least: { } least, Greatest: { } most } when Print(least) != Print(most) => $"{Print(least)} to {Print(most)}",
            { Planned: { } middle } => Print(middle),
            _ => "not measured",
        };
        var verdict = size.ByHand || size.Planned is null ? string.Empty : size.Ok ? "within" : "outside";
        return [size.Name, Print(size.Lower), Print(size.Upper), planned, verdict];
    }

    private static string Release(ReleaseResult release)
    {
        var at = release.Step is { } step ? release.Move is { } move ? string.Create(CultureInfo.InvariantCulture, $"at {step}, move {move}") : $"at {step}, by hand" : release.Declared is null ? "none: the part is what is left in the vise, nothing is to come off it" : "the part never comes free";
        var declared = release.Declared is { } meant ? release.Step == meant ? ", as the job says" : $"; the job says at {meant}" : string.Empty;
        return at + declared + (release.Decided ? string.Empty : "; not decided: web or gap is too thin for the grid");
    }
}
