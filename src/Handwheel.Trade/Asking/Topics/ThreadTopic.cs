using Handwheel.Trade.Threads;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Sizes and limits of threads.</summary>
internal static class ThreadTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        if (FlankedThreadTopic.Named(q))
        {
            FlankedThreadTopic.Work(q, r);
            return;
        }

        var thread = ThreadFinder.Take(q) ?? ByDiameter(q) ?? throw new UnansweredException("the thread is missing");
        q.Inch = thread.Unified is not null;
        var asked = ThreadFinder.TakeClass(q, thread);
        Basics(r, thread);
        foreach (var name in asked is null ? thread.Metric is null ? ["2A", "2B"] : new[] { "6g", "6H" } : [asked])
        {
            Limits(r, thread, name, asked is not null);
        }

        if (asked is null)
        {
            r.Note("No class was said; the usual ones are shown.");
        }

        if (thread.Metric is { } metric && !MetricTable.Lists(metric))
        {
            r.Note("ISO 261 does not list this diameter with this pitch.");
        }

        if (thread.Unified is { Series: "UNS" })
        {
            r.Note("A special thread (UNS): not in the standard series; limits for an engagement of nine pitches.");
        }
    }

    private static AskedThread? ByDiameter(Question q)
    {
        var tpi = q.InUnit("tpi");
        if (tpi is null || q.Length() is not { } mm)
        {
            return null;
        }

        return UnifiedTable.Of(Question.Plainly(mm / 25.4), tpi.Value) is { } thread ? new AskedThread(thread, null) : null;
    }

    private static void Basics(ReplyBuilder r, AskedThread thread)
    {
        var b = thread.Basics;
        var s = thread.Scale;
        var basis = thread.Metric is null ? new Basis("ASME B1.1 basic form", Evidence.StandardFormula) : MetricThread.BasicsBasis;
        var d = r.L(b.Major * s);
        var p = r.L(thread.PitchMm);
        var root = thread.Metric is null ? "1.190785" : "1.226869";
        r.Say("thread", thread.Name, basis)
            .Add("major diameter", b.Major * s, "mm", basis)
            .Add("pitch", thread.PitchMm, "mm", basis, thread.Metric is null ? $"1 / {N(thread.Unified!.Tpi)}" : p)
            .Add("pitch diameter", b.Pitch * s, "mm", basis, $"D - 0.649519 P = {d} - 0.649519 x {p} = {r.L(b.Pitch * s)}")
            .Add("minor diameter, nut", b.MinorInternal * s, "mm", basis, $"D - 1.082532 P = {r.L(b.MinorInternal * s)}")
            .Add("minor diameter, screw", b.MinorExternal * s, "mm", basis, $"D - {root} P = {r.L(b.MinorExternal * s)} (rounded root, for reference)")
            .Add("depth of thread, screw", (b.Major - b.MinorExternal) / 2 * s, "mm", basis, $"(D - minor) / 2 = {(thread.Metric is null ? "0.595393" : "0.613435")} P")
            .Add("stress area", b.StressArea * s * s, "mm^2", basis, thread.Metric is null ? $"0.7854 (D - 0.9743/n)^2 = {N(b.StressArea, 5)} in^2" : $"pi/4 ((d2 + d3)/2)^2 = {N(b.StressArea, 3)} mm^2");
    }

    private static void Limits(ReplyBuilder r, AskedThread thread, string name, bool asked)
    {
        ThreadLimits limits;
        try
        {
            limits = thread.Limits(name);
        }
        catch (ArgumentException none)
        {
            if (asked)
            {
                throw new UnansweredException(none.Message.Split(" (Parameter", StringSplitOptions.None)[0], none);
            }

            r.Note($"The standard has no limits of class {name} for this diameter and pitch.");
            return;
        }

        var s = thread.Scale;
        var basis = thread.LimitsBasis;
        r.Add($"allowance, {name}", limits.Allowance * s, "mm", basis, Allowance(thread, limits));
        if (limits.External)
        {
            r.Add($"major max, {name}", limits.MajorMax * s, "mm", basis, $"basic - allowance = {r.L(limits.MajorMax * s)}")
                .Add($"major min, {name}", limits.MajorMin * s, "mm", basis, $"max - {r.L((limits.MajorMax - limits.MajorMin) * s)}")
                .Add($"minor max, {name}", limits.MinorMax * s, "mm", basis, thread.Metric is null ? "D - 1.190785 P - allowance (UNR, for reference)" : "d - 1.082532 P - allowance (flat root, for reference)");
        }
        else
        {
            r.Add($"minor max, {name}", limits.MinorMax * s, "mm", basis, $"min + minor diameter tolerance, as the standard rounds it")
                .Add($"minor min, {name}", limits.MinorMin * s, "mm", basis);
        }

        var tolerance = limits.PitchMax - limits.PitchMin;
        r.Add($"pitch max, {name}", limits.PitchMax * s, "mm", basis, limits.External ? "basic - allowance" : $"min + {r.L(tolerance * s)}")
            .Add($"pitch min, {name}", limits.PitchMin * s, "mm", basis, limits.External ? $"max - {r.L(tolerance * s)}: {Tolerance(thread, name)}" : $"basic + allowance; tolerance {Tolerance(thread, name)}");
        if (!limits.External)
        {
            r.Add($"major min, {name}", limits.MajorMin * s, "mm", basis, "basic + allowance; no upper limit");
        }
    }

    private static string Allowance(AskedThread thread, ThreadLimits limits) =>
        limits.Allowance == 0 ? "none in this class" : thread.Metric is null ? "0.3 x pitch diameter tolerance of class 2A" : "15 + 11 P um for g and G (30 + 11 P for f, 50 + 11 P for e), as tabulated";

    private static string Tolerance(AskedThread thread, string name) => thread.Unified is { } u
        ? $"0.0015 D^(1/3) + 0.0015 LE^(1/2) + 0.015 P^(2/3) = {N(u.PitchToleranceIn(), 6)} in, LE = {N(u.EngagementIn)} in, times {name switch { "1A" => "1.5", "2A" => "1", "3A" => "0.75", "1B" => "1.95", "2B" => "1.3", _ => "0.975" }}"
        : "ISO 965-1 table (90 P^0.4 d^0.1 um for grade 6 of a screw, 1.32 times for a nut)";
}
