using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Workings;
using Handwheel.Proof;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Reports;

/// <summary>Reports for programs. Lengths in millimetres, angles in degrees; readings in the holding's frame, rounded, before any printed flip.</summary>
public static class ReportJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, IndentSize = 1, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>What <c>check --json</c> prints.</summary>
    /// <param name="report">The report.</param>
    /// <returns>JSON, ending in a line feed.</returns>
    public static string Check(JobReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return Written(json => Body(json, report));
    }

    /// <summary>What <c>sheet --json</c> prints: the report, and where the sheet went.</summary>
    /// <param name="report">The report.</param>
    /// <param name="file">The sheet's file as it was asked for.</param>
    /// <param name="fingerprint">The sheet's fingerprint.</param>
    /// <returns>JSON, ending in a line feed.</returns>
    public static string Sheet(JobReport report, string file, string fingerprint)
    {
        ArgumentNullException.ThrowIfNull(report);
        return Written(json =>
        {
            json.WriteString("sheet", file);
            json.WriteString("fingerprint", fingerprint);
            Body(json, report);
        });
    }

    /// <summary>What <c>why --json</c> prints.</summary>
    /// <param name="step">The step.</param>
    /// <returns>JSON, ending in a line feed.</returns>
    public static string Why(PlanStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return Written(json =>
        {
            json.WriteString("step", step.Step.Id);
            json.WriteString("text", step.Step.Text);
            json.WriteStartArray("readings");
            foreach (var (what, working) in WhyText.Readings(step.Lines))
            {
                json.WriteStartObject();
                json.WriteString("reading", what);
                json.WritePropertyName("working");
                Working(json, working, 0);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });
    }

    /// <summary>Writes any object with these options.</summary>
    /// <param name="body">Writes what stands in it.</param>
    /// <returns>JSON, ending in a line feed.</returns>
    public static string Written(Action<Utf8JsonWriter> body)
    {
        ArgumentNullException.ThrowIfNull(body);
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            json.WriteStartObject();
            body(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Body(Utf8JsonWriter json, JobReport report)
    {
        json.WriteString("title", report.Title);
        json.WriteStartArray("findings");
        foreach (var finding in report.Findings)
        {
            Finding(json, finding);
        }

        json.WriteEndArray();
        json.WriteStartArray("sizes");
        foreach (var size in report.Proof?.Sizes ?? [])
        {
            Size(json, size);
        }

        json.WriteEndArray();
        json.WriteStartArray("steps");
        foreach (var stage in report.Course?.Stages ?? [])
        {
            Stage(json, stage, report.Plan);
        }

        json.WriteEndArray();
        Release(json, report.Proof?.Release);
        DesignJson.Write(json, report.Designs);
        Text(json, "guarantee", report.Proof?.Guarantee);
    }

    private static void Finding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("grade", FindingPrinter.GradeText(finding.Grade));
        json.WriteString("code", finding.Code);
        Text(json, "file", finding.Where?.File);
        Number(json, "line", finding.Where?.Line);
        Number(json, "column", finding.Where?.Column);
        Text(json, "step", finding.Step);
        Number(json, "move", finding.Move);
        json.WriteString("message", finding.Message);
        json.WriteString("mend", finding.Mend);
        Text(json, "rule", finding.Rule);
        Number(json, "amount", finding.Amount);
        Text(json, "unit", finding.Unit);
        Point(json, "at", finding.At);
        Point(json, "atReading", finding.AtReading);
        json.WriteEndObject();
    }

    private static void Size(Utf8JsonWriter json, SizeResult size)
    {
        json.WriteStartObject();
        json.WriteString("name", size.Name);
        Number(json, "planned", size.Planned);
        Number(json, "least", size.Least);
        Number(json, "most", size.Greatest);
        Number(json, "lower", size.Lower);
        Number(json, "upper", size.Upper);
        json.WriteBoolean("ok", size.Ok);
        json.WriteBoolean("byHand", size.ByHand);
        json.WriteEndObject();
    }

    private static void Stage(Utf8JsonWriter json, CourseStage stage, JobPlan? plan)
    {
        foreach (var step in stage.Steps)
        {
            var workings = new SortedDictionary<int, string>();
            Collect(plan?.Stages.SelectMany(s => s.Steps).FirstOrDefault(s => s.Step.Id == step.Id)?.Lines ?? [], workings);
            var cutter = step.Events.OfType<CutterIn>().Select(c => c.Cutter).LastOrDefault() ?? step.Events.OfType<Handwork>().Select(h => h.Cutter).LastOrDefault(c => c is not null)
                ?? plan?.Stages.SelectMany(s => s.Steps).FirstOrDefault(s => s.Step.Id == step.Id)?.Step.Cutter;
            json.WriteStartObject();
            json.WriteString("name", step.Id);
            json.WriteString("text", step.Text);
            Text(json, "holding", stage.Setup is null ? null : stage.Name);
            Text(json, "cutter", cutter);
            json.WriteStartArray("moves");
            foreach (var move in step.Events.OfType<Move>())
            {
                json.WriteStartObject();
                json.WriteNumber("number", move.Number);
                Number(json, "x", move.To.X);
                Number(json, "y", move.To.Y);
                Number(json, "z", move.To.Z);
                Number(json, "t", move.To.T);
                json.WriteBoolean("cutting", move.Cutting);
                Text(json, "working", workings.TryGetValue(move.Number, out var working) ? working : null);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }
    }

    private static void Collect(IEnumerable<SheetLine> lines, SortedDictionary<int, string> workings)
    {
        foreach (var line in lines)
        {
            if (line is MoveLine move)
            {
                workings.TryAdd(move.Number, OneLine(move.Working));
            }
            else if (line is PassBracket bracket)
            {
                if (bracket.DepthWorkings.Count > 0)
                {
                    workings.TryAdd(bracket.Number, OneLine(bracket.DepthWorkings[0]));
                }

                Collect(bracket.Lines, workings);
            }
        }
    }

    private static string OneLine(Working working) =>
        $"{working.Name}: {working.PutIn}{(working.Rounded.Length > 0 ? "; " + working.Rounded : string.Empty)}";

    private static void Release(Utf8JsonWriter json, ReleaseResult? release)
    {
        if (release is null)
        {
            json.WriteNull("release");
            return;
        }

        json.WriteStartObject("release");
        Text(json, "step", release.Step);
        Number(json, "move", release.Move);
        Text(json, "declared", release.Declared);
        json.WriteBoolean("decided", release.Decided);
        json.WriteEndObject();
    }

    private static void Working(Utf8JsonWriter json, Working working, int depth)
    {
        json.WriteStartObject();
        json.WriteString("name", working.Name);
        json.WriteString("formula", working.Formula);
        json.WriteString("putIn", working.PutIn);
        Number(json, "exact", working.Exact);
        Number(json, "result", working.Result);
        json.WriteString("unit", working.Unit);
        json.WriteString("rounded", working.Rounded);
        json.WriteString("source", working.Source);
        json.WriteStartArray("inputs");
        foreach (var input in working.Inputs)
        {
            json.WriteStartObject();
            json.WriteString("name", input.Name);
            Number(json, "value", input.Value);
            json.WriteString("text", input.Text);
            json.WriteString("kind", WhyText.Kind(input.Kind));
            json.WriteString("says", input.Says);
            Text(json, "file", input.Where?.File);
            Number(json, "line", input.Where?.Line);
            Number(json, "column", input.Where?.Column);
            if (input.From is { } from && depth < WhyText.Deepest)
            {
                json.WritePropertyName("from");
                Working(json, from, depth + 1);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Text(Utf8JsonWriter json, string name, string? value)
    {
        if (value is null)
        {
            json.WriteNull(name);
        }
        else
        {
            json.WriteString(name, value);
        }
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            // A nanometre is far below any readout; it takes the noise of the last bits off.
            var clean = Math.Abs(number) < 1e6 ? Math.Round(number, 6, MidpointRounding.AwayFromZero) : number;
            json.WriteNumber(name, clean == 0 ? 0 : clean);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Number(Utf8JsonWriter json, string name, int? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Point(Utf8JsonWriter json, string name, Point3? point)
    {
        if (point is not { } p)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        Number(json, "x", p.X);
        Number(json, "y", p.Y);
        Number(json, "z", p.Z);
        json.WriteEndObject();
    }
}
