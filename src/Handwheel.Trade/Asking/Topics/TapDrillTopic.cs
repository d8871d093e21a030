using Handwheel.Trade.Drills;
using Handwheel.Trade.Threads;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Drills for tapping.</summary>
internal static class TapDrillTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var wanted = q.InUnit("%");
        var named = NamedDrill(q);
        var thread = ThreadFinder.Take(q) ?? throw new UnansweredException("the thread is missing");
        q.Inch = thread.Unified is not null;
        ThreadFinder.TakeClass(q, thread);
        var hole = named?.DiameterMm ?? (q.Has("hole", "drill", "bore") || q.Tokens.Any(t => t is { IsNumber: true, Used: false }) ? q.Length() : null);
        if (hole is { } given)
        {
            Percent(r, thread, given);
            return;
        }

        var metal = q.TakeMetal(false);
        Recommend(r, thread, Checked(wanted ?? 75), metal?.Name);
        if (wanted is null)
        {
            r.Note("75 % of thread was taken, the usual; deep holes and hard or stringy metals tap easier at 60 to 65 %, where a thread is hardly weaker.");
        }

        if (metal is not null)
        {
            foreach (var caution in metal.Cautions)
            {
                r.Caution(caution);
            }
        }
    }

    private static double Checked(double percent) =>
        percent is >= 30 and <= 100 ? percent : throw new UnansweredException($"{N(percent, 1)} % of thread cannot be; 50 to 85 is usual");

    private static DrillSize? NamedDrill(Question q)
    {
        var token = q.Tokens.FirstOrDefault(t => !t.IsNumber && t.Raw.StartsWith('#') && DrillTable.Find(t.Raw) is not null && !t.Raw.Contains('-', StringComparison.Ordinal));
        if (token is null || !ThreadFinder.Holds(q))
        {
            return null;
        }

        token.Used = true;
        return DrillTable.Find(token.Raw);
    }

    private static void Recommend(ReplyBuilder r, AskedThread thread, double percent, string? metal)
    {
        var exact = TapDrills.Hole(thread.MajorMm, thread.PitchMm, percent);
        var metric = thread.Metric is not null;
        r.Add($"hole for {N(percent, 1)} % of thread", exact, "mm", TapDrills.Basis,
            $"D - 0.0129904 x percent x P = {r.L(thread.MajorMm)} - 0.0129904 x {N(percent, 1)} x {r.L(thread.PitchMm)} = {r.L(exact)}");
        var drill = TapDrills.Drill(thread.MajorMm, thread.PitchMm, percent, metric);
        AddDrill(r, thread, metric ? "drill" : "drill (number, letter or fraction)", drill);
        var other = TapDrills.Drill(thread.MajorMm, thread.PitchMm, percent, !metric);
        AddDrill(r, thread, metric ? "inch drill near it" : "metric drill near it", other);
        if (metric)
        {
            r.Add("shop rule D - P", thread.MajorMm - thread.PitchMm, "mm", new Basis("common practice", Evidence.CommonPractice),
                $"{N(thread.MajorMm)} - {N(thread.PitchMm)} = {N(thread.MajorMm - thread.PitchMm)} mm, {N(TapDrills.Percent(thread.MajorMm, thread.PitchMm, thread.MajorMm - thread.PitchMm), 1)} % of thread");
        }

        var className = metric ? "6H" : "2B";
        try
        {
            var limits = thread.Limits(className);
            r.Add($"least hole, {className}", limits.MinorMin * thread.Scale, "mm", thread.LimitsBasis, "basic minor diameter of the nut, rounded as the standard does")
                .Add($"greatest hole, {className}", limits.MinorMax * thread.Scale, "mm", thread.LimitsBasis, "plus its minor diameter tolerance");
        }
        catch (ArgumentException)
        {
            r.Note($"The standard has no limits of class {className} for this diameter and pitch.");
        }

        r.Note("A drill cuts large by 1 to 3 % of its diameter, which lowers the percentage.");
        r.Caution(metal is null ? "A tap that binds snaps: back it off each half turn in hand work, use fluid, keep it square." : $"A tap that binds snaps: back it off each half turn in hand work, use the fluid for {metal}, keep it square.");
    }

    private static void AddDrill(ReplyBuilder r, AskedThread thread, string name, DrillSize drill)
    {
        var percent = TapDrills.Percent(thread.MajorMm, thread.PitchMm, drill.DiameterMm);
        r.Say(name, drill.Name, DrillTable.BasisOf(drill))
            .Add($"its diameter", drill.DiameterMm, "mm", DrillTable.BasisOf(drill))
            .Add($"its percent of thread", percent, "%", TapDrills.Basis, $"100 (D - d) / (1.299038 P) = 100 x ({r.L(thread.MajorMm)} - {r.L(drill.DiameterMm)}) / (1.299038 x {r.L(thread.PitchMm)}) = {N(percent, 1)} %");
    }

    private static void Percent(ReplyBuilder r, AskedThread thread, double hole)
    {
        var percent = TapDrills.Percent(thread.MajorMm, thread.PitchMm, hole);
        r.Add("percent of thread", percent, "%", TapDrills.Basis,
            $"100 (D - d) / (1.299038 P) = 100 x ({r.L(thread.MajorMm)} - {r.L(hole)}) / (1.299038 x {r.L(thread.PitchMm)}) = {N(percent, 2)} %");
        var b11 = percent * 1.29903811 / 1.08253175;
        r.Add("against the basic thread height of B1.1", b11, "%", TapDrills.Basis, $"100 (D - d) / (1.082532 P) = {N(b11, 1)} %");
        r.Note("Two conventions are in use: the handbook's counts a thread 0.6495 P deep as full, ASME B1.1 one of 0.5413 P.");
        if (percent is > 85)
        {
            r.Caution("Over 85 % a tap is likely to jam and break.");
        }
        else if (percent is < 50)
        {
            r.Caution("Under 50 % the thread is weak and out of class.");
        }
    }
}
