using Handwheel.Trade.Threads;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Three wires.</summary>
internal static class WiresTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var angle = AngleOf(q);
        var thread = angle == 60 ? ThreadFinder.Take(q) : null;
        var className = thread is null ? null : ThreadFinder.TakeClass(q, thread);
        double pitch, pitchDiameter, major = double.NaN;
        var how = string.Empty;
        if (thread is not null)
        {
            q.Inch = thread.Unified is not null;
            (pitch, pitchDiameter, major) = (thread.PitchMm, thread.Basics.Pitch * thread.Scale, thread.MajorMm);
        }
        else
        {
            (pitch, pitchDiameter, how) = Flanked(q, angle);
        }

        var best = ThreadWires.Best(pitch, angle);
        var (given, reading) = Given(q);
        r.Add("best wire", best, "mm", ThreadWires.Basis, $"P / (2 cos {N(angle / 2, 2)} deg) = {r.L(pitch)} / {N(2 * Math.Cos(angle * Math.PI / 360), 5)} = {r.L(best)}");
        if (angle == 60)
        {
            r.Add("least wire that will do", ThreadWires.Least(pitch), "mm", ThreadWires.Basis, $"0.505182 P = {r.L(ThreadWires.Least(pitch))}")
                .Add("greatest wire that will do", ThreadWires.Greatest(pitch), "mm", ThreadWires.Basis, $"1.010363 P = {r.L(ThreadWires.Greatest(pitch))}");
        }

        if (double.IsNaN(pitchDiameter))
        {
            return;
        }

        var wire = given ?? best;
        Rests(r, wire, pitch, angle);

        if (reading is { } read)
        {
            var measured = ThreadWires.PitchDiameter(read, pitch, wire, angle);
            r.Add("pitch diameter measured", measured, "mm", ThreadWires.Basis, $"M - W (1 + 1/sin a) + (P/2) cot a = {r.L(read)} - {r.L(wire)} x {N(1 + (1 / Math.Sin(angle * Math.PI / 360)), 5)} + {r.L(pitch)} x {N(0.5 / Math.Tan(angle * Math.PI / 360), 6)} = {r.L(measured)}");
        }

        r.Add("pitch diameter (basic)", pitchDiameter, "mm", ThreadWires.Basis, thread is null ? how : $"D - 0.649519 P = {r.L(pitchDiameter)}");
        Over(r, "over wires", pitchDiameter, pitch, wire, angle);
        if (angle == 60 && !double.IsNaN(major))
        {
            r.Add("over wires, short formula", ThreadWires.OverFromMajor(major, pitch, wire), "mm", ThreadWires.Basis, $"D - 1.515544 P + 3 W = {r.L(ThreadWires.OverFromMajor(major, pitch, wire))}");
        }

        Classes(r, thread, className, wire);
        r.Note("Wires are taken equal; measure yours and say their size. The micrometer's force matters: 2.5 lbf (11 N) for 20 tpi and coarser, 1 lbf (4.5 N) for finer.");
    }

    // One size is the wire; of two, the greater is what the micrometer read.
    private static (double? Wire, double? Reading) Given(Question q)
    {
        var first = q.Length();
        var second = first is null ? null : q.Length();
        return second is { } other ? (Math.Min(first!.Value, other), Math.Max(first.Value, other)) : (first, null);
    }

    private static double AngleOf(Question q) =>
        q.Has("acme") ? 29 : q.Has("trapezoidal", "tr", "trapezium") || FlankedThreadTopic.Named(q) ? 30 : q.Has("whitworth", "bsw", "bsf", "bsp") ? 55 : q.Angle() ?? 60;

    // Acme, trapezoidal and 55 degree threads by name have their major diameter; a decimal size is the pitch diameter.
    private static (double Pitch, double PitchDiameter, string How) Flanked(Question q, double angle)
    {
        var share = angle == 55 ? 0.640327 : 0.5;
        var how = $"D - {N(share, 6)} P";
        if (angle is 29 or 30 or 55 && FlankedThreadTopic.Written(q))
        {
            var (size, step, metric) = FlankedThreadTopic.Take(q);
            q.Inch = !metric;
            var unit = metric ? 1 : 25.4;
            return (step * unit, (size - (share * step)) * unit, how);
        }

        var named = angle is 29 or 30 or 55 && q.Tokens.Any(t => t.IsFraction && !t.Used);
        var (pitch, diameter) = Other(q);
        return named ? (pitch, diameter - (share * pitch), how) : (pitch, diameter, "as given: a decimal size is taken as the pitch diameter");
    }

    private static (double Pitch, double PitchDiameter) Other(Question q)
    {
        var tpi = q.InUnit("tpi");
        var labels = q.Labelled(("pitch", ["pitch", "lead"]), ("wire", ["wire", "wires"]));
        double? pitch = tpi is { } n ? 25.4 / Question.Positive(n, "tpi") : labels.TryGetValue("pitch", out var p) ? q.Mm(p) : null;
        if (labels.TryGetValue("wire", out var wire))
        {
            wire.Used = false;
        }

        var tokens = q.Tokens.Where(t => t is { IsNumber: true, Used: false }).ToArray();
        if (pitch is null && tokens.Length == 1)
        {
            // A lone number with nothing else said: threads per inch.
            tokens[0].Used = true;
            q.Inch = true;
            return (25.4 / Question.Positive(tokens[0].Value, tokens[0].Raw), double.NaN);
        }

        if (pitch is null && tokens.Length >= 2 && q.Inch)
        {
            var diameter = q.Mm(tokens[0]);
            tokens[1].Used = true;
            return (25.4 / Question.Positive(tokens[1].Value, tokens[1].Raw), diameter);
        }

        return (Question.Need(pitch, "the thread (or pitch diameter and threads per inch)"), q.Length() ?? double.NaN);
    }

    private static void Rests(ReplyBuilder r, double wire, double pitch, double angle)
    {
        if (angle == 60 && (wire < ThreadWires.Least(pitch) || wire > ThreadWires.Greatest(pitch)))
        {
            throw new UnansweredException($"a wire of {r.L(wire)} does not rest on the flanks of this pitch ({r.L(ThreadWires.Least(pitch))} to {r.L(ThreadWires.Greatest(pitch))} do)");
        }
    }

    private static void Over(ReplyBuilder r, string name, double pitchDiameter, double pitch, double wire, double angle)
    {
        var over = ThreadWires.Over(pitchDiameter, pitch, wire, angle);
        var a = angle * Math.PI / 360;
        r.Add(name, over, "mm", ThreadWires.Basis,
            $"E + W (1 + 1/sin a) - (P/2) cot a = {r.L(pitchDiameter)} + {r.L(wire)} x {N(1 + (1 / Math.Sin(a)), 5)} - {r.L(pitch)} x {N(0.5 / Math.Tan(a), 6)} = {r.L(over)}");
        var lead = ThreadWires.LeadCorrection(pitchDiameter, pitch, wire, angle);
        r.Add(name + ", helix counted", over + lead, "mm", ThreadWires.Basis, $"+ W tan^2(lead angle) cos a cot a / 2 = + {r.L(lead)}");
    }

    private static void Classes(ReplyBuilder r, AskedThread? thread, string? className, double wire)
    {
        if (thread is null)
        {
            return;
        }

        var name = className is not null && (className.EndsWith('A') || char.IsLower(className[^1])) ? className : thread.Metric is null ? "2A" : "6g";
        try
        {
            var limits = thread.Limits(name);
            foreach (var (word, pitchDiameter) in new[] { ("greatest", limits.PitchMax), ("least", limits.PitchMin) })
            {
                var over = ThreadWires.Over(pitchDiameter * thread.Scale, thread.PitchMm, wire);
                r.Add($"{word} over wires, {name}", over, "mm", thread.LimitsBasis,
                    $"pitch diameter {r.L(pitchDiameter * thread.Scale)}: over wires {r.L(over)}");
            }
        }
        catch (ArgumentException)
        {
            r.Note($"The standard has no limits of class {name} for this diameter and pitch.");
        }
    }
}
