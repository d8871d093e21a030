using System.Globalization;
using System.Text;
using Handwheel.Jobs;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Quantities;

namespace Handwheel.Sheets.Tests.Stages;

/// <summary>A job and a course as lines to be read and compared.</summary>
internal static class StageText
{
    public static string Job(Job job, Shop shop)
    {
        var text = new StringBuilder();
        Line(text, $"job {job.Title}, {job.Metal}, unit {job.Unit.Symbol()}, shop {job.ShopFile}, to make {job.ToMake}");
        foreach (var f in job.Drawing.Features)
        {
            Line(text, $"{(f.IsCut ? "cut" : "add")} {f.Name}: {Shape(f.Shape)} at {f.Centre.X}, {f.Centre.Y}; from {Of(f.From)} to {Of(f.To)}{(f.Through ? ", through" : string.Empty)}  line {f.Where.Line}");
        }

        foreach (var s in job.Drawing.Sizes)
        {
            Line(text, $"size {s.Name}: {s.Kind} {Of(s.Limits)}{(s.Stated ? string.Empty : ", general")}");
        }

        var stock = job.Stock;
        Line(text, $"stock {stock.Form} {stock.Nominal.X} x {stock.Nominal.Y} x {stock.Nominal.Z}, used {stock.Used.X} x {stock.Used.Y} x {stock.Used.Z} from {stock.Least.X}, {stock.Least.Y}, {stock.Least.Z}");
        foreach (var stage in job.Stages)
        {
            Line(text, $"stage {stage.Name}: {stage.Text}");
            foreach (var step in stage.Steps)
            {
                Line(text, $"  {step.Id} {step.GetType().Name}: {step.Text}");
            }
        }

        foreach (var (name, c) in shop.Cutters.OrderBy(c => c.Key, StringComparer.Ordinal))
        {
            Line(text, $"cutter {name}: {c.Kind}, true {c.TrueAcross}, out {c.Out}");
        }

        return text.ToString();
    }

    public static string Course(Course course)
    {
        var text = new StringBuilder();
        Line(text, $"{course.Title}, unit {course.Unit.Symbol()}, release at {course.ReleaseAt}");
        foreach (var stage in course.Stages)
        {
            Line(text, $"stage {stage.Name}");
            if (stage.Setup is { } setup)
            {
                Line(text, $"  {setup.Up} up, part at {Of(setup.PartOrigin)}");
                foreach (var f in setup.Fixtures)
                {
                    Line(text, $"  {f.Name}: {Of(f.Least)} to {Of(f.Most)}");
                }
            }

            foreach (var step in stage.Steps)
            {
                Line(text, $"  {step.Id} {step.Text}");
                foreach (var happening in step.Events)
                {
                    Line(text, $"    {Event(happening)}");
                }
            }
        }

        return text.ToString();
    }

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');

    private static string Event(CourseEvent happening) => happening switch
    {
        CutterIn c => FormattableString.Invariant($"cutter {c.Cutter}, {c.Rpm} rpm"),
        TouchOff t => FormattableString.Invariant($"touch off {t.Axis} on {t.Surface} at {Of(t.At)} with {t.With}, half {Tidy(t.Half)}, paper {Tidy(t.Paper)}: set {Tidy(t.SetTo)}"),
        Spindle s => s.Rpm > 0 ? FormattableString.Invariant($"spindle on, {Tidy(s.Rpm)} rpm") : "spindle stopped",
        Move m => FormattableString.Invariant($"{m.Number} {(m.Cutting ? "cuts" : "goes")} X {Tidy(m.To.X)} Y {Tidy(m.To.Y)} Z {Tidy(m.To.Z)} T {Tidy(m.To.T)}{(m.Cutting ? FormattableString.Invariant($", feed {Tidy(m.Feed)}") : string.Empty)}{(m.Locked.Count > 0 ? ", locked " + string.Join(' ', m.Locked) : string.Empty)}"),
        Measured m => FormattableString.Invariant($"measured {m.Size}, expected {Tidy(m.Expected)}"),
        Handwork h => FormattableString.Invariant($"by hand {h.Work} {h.Cutter} {h.Feature} at {Of(h.At)}, towards {Of(h.Direction)}, deep {Tidy(h.Depth)}"),
        _ => happening.ToString(),
    };

    private static string Shape(FeatureShape shape) => shape switch
    {
        RoundShape r => "round " + Of(r.Across),
        PolygonShape p => FormattableString.Invariant($"{p.Sides} sides, across flats {Of(p.AcrossFlats)}"),
        TangentShape t => $"tangent to {t.First} and {t.Second}",
        _ => shape.GetType().Name,
    };

    private static string Of(Limits l) => FormattableString.Invariant($"{Tidy(l.Nominal)} ({Tidy(l.Lower)} to {Tidy(l.Upper)})");

    private static string Of(Place3 p) => FormattableString.Invariant($"({Tidy(p.X)}, {Tidy(p.Y)}, {Tidy(p.Z)})");

    // Six decimals: what is finer is arithmetic's, not the job's.
    private static double Tidy(double value) => Math.Round(value, 6) is var r && r == 0 ? 0 : Math.Round(value, 6);
}
