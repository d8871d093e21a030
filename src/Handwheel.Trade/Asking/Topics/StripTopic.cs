using Handwheel.Trade.Joints;
using Handwheel.Trade.Metals;
using Handwheel.Trade.Threads;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Stripping of threads.</summary>
internal static class StripTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var thread = ThreadFinder.Take(q) ?? throw new UnansweredException("the thread is missing");
        q.Inch = thread.Unified is not null;
        ThreadFinder.TakeClass(q, thread);
        var grade = GradeFinder.Take(q, thread.MajorMm, thread.Unified is not null, r);
        var metal = q.TakeMetal() ?? Default(r);
        var labels = q.Labelled(("engagement", ["deep", "engaged", "engagement", "long", "thick", "depth", "length"]));
        var engagement = labels.TryGetValue("engagement", out var token) ? q.Mm(token) : q.Length();
        var metric = thread.Metric is not null;
        ThreadLimits screw, nut;
        try
        {
            (screw, nut) = (thread.Limits(metric ? "6g" : "2A"), thread.Limits(metric ? "6H" : "2B"));
        }
        catch (ArgumentException none)
        {
            throw new UnansweredException($"the standard has no limits for {thread.Name}", none);
        }

        var s = thread.Scale;
        var area = thread.Basics.StressArea * s * s;
        var equal = ThreadStripping.EngagementEqual(area, thread.PitchMm, nut.MinorMax * s, screw.PitchMin * s);
        var screwArea = ThreadStripping.ScrewArea(thread.PitchMm, 1, nut.MinorMax * s, screw.PitchMin * s);
        var nutArea = ThreadStripping.NutArea(thread.PitchMm, 1, screw.MajorMin * s, nut.PitchMax * s);
        var needed = ThreadStripping.EngagementInNut(equal, screwArea, nutArea, grade.TensileMPa, metal.TensileMPa);
        r.Add("engagement for equal strength", equal, "mm", ThreadStripping.Basis, "20 % either way",
            [$"2 At / AS(screw) a mm = 2 x {N(area, 3)} / {N(screwArea, 3)} = {N(equal, 3)} mm"]);
        r.Add($"engagement in {metal.Name} so that the screw breaks first", needed, "mm", ThreadStripping.Basis, "25 % either way",
            [$"times J = (AS screw x {N(grade.TensileMPa, 0)}) / (AS nut x {N(metal.TensileMPa, 0)}) = {N(screwArea, 2)} x {N(grade.TensileMPa, 0)} / ({N(nutArea, 2)} x {N(metal.TensileMPa, 0)}) = {N(screwArea * grade.TensileMPa / (nutArea * metal.TensileMPa), 3)}, at least 1"]);
        r.Add("that in diameters", needed / thread.MajorMm, "d", ThreadStripping.Basis);
        if (engagement is { } given)
        {
            Given(r, thread, grade, metal, given, screwArea, nutArea, area);
        }
    }

    private static Metal Default(ReplyBuilder r)
    {
        r.Note("No metal was said for the nut; aluminium 6061 was taken, the usual weak partner.");
        return MetalTable.Find("6061")!;
    }

    private static void Given(ReplyBuilder r, AskedThread thread, BoltGrade grade, Metal metal, double engagement, double screwArea, double nutArea, double stressArea)
    {
        var nut = nutArea * engagement * metal.ShearMPa;
        var screw = screwArea * engagement * 0.6 * grade.TensileMPa;
        var breaking = stressArea * grade.TensileMPa;
        r.Add($"pull that strips {metal.Name}", nut, "N", ThreadStripping.Basis, "25 % either way", [$"AS(nut) x shear strength = {N(nutArea * engagement, 2)} x {N(metal.ShearMPa, 0)} = {N(nut, 0)} N"])
            .Add("pull that strips the screw", screw, "N", ThreadStripping.Basis, "20 % either way", [$"AS(screw) x 0.6 x tensile = {N(screwArea * engagement, 2)} x {N(0.6 * grade.TensileMPa, 0)} = {N(screw, 0)} N"])
            .Add("pull that breaks the screw", breaking, "N", ThreadStripping.Basis, "10 % either way", [$"At x tensile = {N(stressArea, 2)} x {N(grade.TensileMPa, 0)} = {N(breaking, 0)} N"])
            .Say("what goes first", nut < Math.Min(screw, breaking) ? $"the thread in {metal.Name} strips" : screw < breaking ? "the screw's thread strips" : "the screw breaks", ThreadStripping.Basis, $"{thread.Name} engaged {N(engagement, 2)} mm");
    }
}
