using Handwheel.Trade.Joints;
using Handwheel.Trade.Tapers;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Tapers and what they hold.</summary>
internal static class TaperTopic
{
    private static readonly Basis Plain = new("plane geometry", Evidence.StandardFormula);

    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var pull = q.Force();
        var torque = q.InUnit("N m", "lbf in", "ft lbf") * 1000;
        var angle = q.Angle();
        var friction = q.Labelled(("friction", ["friction", "mu", "coefficient"])).GetValueOrDefault("friction")?.Value;
        q.Has("does", "hold", "holds", "itself", "alone", "release", "self-holding", "drawbar", "slip", "angle", "taper", "torque", "knock", "socket", "spindle", "shank", "arbor", "chuck", "included", "half");
        var taper = TaperFinder.Take(q);
        friction ??= BareFriction(q, taper);
        double half, mean, length;
        if (taper is not null)
        {
            q.Inch = !taper.Family.StartsWith("metric", StringComparison.Ordinal) && q.Tokens.All(t => t.Unit is not ("mm" or "N" or "kN"));
            Named(r, taper);
            if (q.Tokens.Count(t => t.Low is "morse" or "jacobs" or "sharpe" or "jarno") > 1 && TaperFinder.Take(q) is { } other)
            {
                Named(r, other);
            }

            half = taper.HalfAngleDeg;
            mean = Mean(taper);
            length = double.IsNaN(taper.LengthIn) ? double.NaN : taper.LengthIn * 25.4;
            if (taper.Family.EndsWith("pin", StringComparison.Ordinal))
            {
                return;
            }
        }
        else
        {
            (half, mean, length) = RatioOf(q, r) ?? PerFoot(q, r) ?? (angle is { } included ? (Bounded(included) / 2, double.NaN, double.NaN) : FromDiameters(q, r));
            if (angle is not null)
            {
                r.Add("half angle", half, "deg", Plain).Add("taper per foot", 24 * Math.Tan(half * Math.PI / 180), "in/ft", Plain, "24 tan(half angle)")
                    .Add("1 in", 1 / (2 * Math.Tan(half * Math.PI / 180)), string.Empty, Plain, "1 / (2 tan(half angle))");
            }
        }

        Holding(r, half, mean, length, friction, pull);
        DriveKey(q, r, taper, half, mean, friction ?? 0.12, pull, torque);
    }

    // NaN where the taper has no sizes.
    private static double Mean(Taper taper) => double.IsNaN(taper.SmallIn) ? taper.LargeIn * 25.4 * 0.8 : (taper.LargeIn + taper.SmallIn) / 2 * 25.4;

    // "is Morse 3 self holding at 0.2".
    private static double? BareFriction(Question q, Taper? taper)
    {
        var token = taper is not null && q.HasIn("hold", "holds", "holding", "self-holding", "release", "let", "self") ? q.Tokens.FirstOrDefault(t => t is { IsNumber: true, Used: false, Unit: "", IsFraction: false, Value: > 0.01 and < 1 }) : null;
        if (token is null)
        {
            return null;
        }

        token.Used = true;
        return token.Value;
    }

    // What the tang or the drive keys must carry beyond what friction is trusted with.
    private static void DriveKey(Question q, ReplyBuilder r, Taper? taper, double half, double mean, double friction, double? pull, double? torque)
    {
        q.Has("key", "keys", "tang", "carry", "carries", "drive");
        if (torque is not { } t || double.IsNaN(mean))
        {
            return;
        }

        var holds = pull is { } p ? TaperHolding.TorqueNmm(p, half, friction, mean) : 0;
        var radius = taper?.Family == "7/24" ? taper.LargeIn * 25.4 / 2 : (taper?.SmallIn ?? double.NaN) * 25.4 / 3;
        if (double.IsNaN(radius))
        {
            return;
        }

        r.Add("torque that friction leaves to the key", Math.Max(0, t - holds) / 1000, "N m", TaperHolding.Basis, "factor of two", [pull is null ? "no pull was said, so friction is trusted with none" : $"T - mu N d/2 = {N(t / 1000, 2)} - {N(holds / 1000, 2)} N m"])
            .Add(taper!.Family == "7/24" ? "force on each of two drive keys" : "force on each side of the tang", TaperHolding.KeyForceN(t, holds, radius, 2), "N", TaperHolding.Basis, "factor of two", [$"torque left / (2 x radius), radius {r.L(radius)}: {(taper.Family == "7/24" ? "the gauge line" : "two thirds of the small end's, as the tang's pressure grows outward")}"]);
    }

    // 1:20, or "1 in 20".
    private static (double Half, double Mean, double Length)? RatioOf(Question q, ReplyBuilder r)
    {
        foreach (var token in q.Tokens.Where(t => !t.Used && !t.IsNumber))
        {
            var parts = token.Raw.Split(':');
            if (parts.Length != 2 || parts[0] != "1" || !double.TryParse(parts[1], System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out var ratio) || ratio is not (>= 0.1 and <= 10_000))
            {
                continue;
            }

            token.Used = true;
            var half = Math.Atan(0.5 / ratio) * 180 / Math.PI;
            r.Add("taper per foot", 12 / ratio, "in/ft", Plain, $"12 / {N(ratio)}").Add("half angle", half, "deg", Plain, $"atan(1 / (2 x {N(ratio)})) = {N(half, 4)} deg; set a top slide to this").Add("included angle", 2 * half, "deg", Plain);
            if (q.Length() is { } bar)
            {
                r.Add("tailstock set over, for a bar of that length", bar / (2 * ratio), "mm", Plain, $"L / (2 x {N(ratio)}) = {r.L(bar)} / {N(2 * ratio)}, L the whole length between centres");
            }

            q.Has("long", "length", "setover", "tailstock", "set", "over", "bar");
            return (half, double.NaN, double.NaN);
        }

        return null;
    }

    // "1/2 in a foot".
    private static (double Half, double Mean, double Length)? PerFoot(Question q, ReplyBuilder r)
    {
        if (q.JustBefore("foot", "tpf") is not { } foot)
        {
            return null;
        }

        q.Inch = q.Tokens.All(t => t.Unit != "mm");
        if (foot is not (> 0 and < 100))
        {
            throw new UnansweredException($"{N(foot)} in a foot is no taper");
        }

        var half = Math.Atan(foot / 24) * 180 / Math.PI;
        r.Add("1 in", 12 / foot, string.Empty, Plain, $"12 / {N(foot)}").Add("half angle", half, "deg", Plain, $"atan({N(foot)} / 24) = {N(half, 4)} deg; set a top slide to this").Add("included angle", 2 * half, "deg", Plain);
        q.Has("long", "length", "setover", "tailstock", "set", "over", "bar", "offset");
        if (q.Length() is { } bar)
        {
            r.Add("tailstock set over, for a bar of that length", bar * foot / 24, "mm", Plain, $"L x taper per foot / 24 = {r.L(bar)} x {N(foot)} / 24, L the whole length between centres");
        }

        return (half, double.NaN, double.NaN);
    }

    private static double Bounded(double included) =>
        included is > 0 and < 170 ? included : throw new UnansweredException($"an included angle of {N(included)} deg is no taper");

    private static void Named(ReplyBuilder r, Taper t)
    {
        r.Say("taper", t.Name, t.Basis).Add("taper per foot", t.PerFootIn, "in/ft", t.Basis)
            .Add("1 in", t.Ratio, string.Empty, t.Basis, $"12 / {N(t.PerFootIn, 5)} = {N(t.Ratio, 4)}");
        if (!double.IsNaN(t.LargeIn))
        {
            r.Add(t.Family is "7/24" or "Morse" ? "diameter at the gauge line" : "large end", t.LargeIn * 25.4, "mm", t.Basis);
        }

        if (!double.IsNaN(t.SmallIn))
        {
            r.Add("small end", t.SmallIn * 25.4, "mm", t.Basis);
        }

        if (!double.IsNaN(t.LengthIn))
        {
            r.Add("length between", t.LengthIn * 25.4, "mm", t.Basis);
        }

        r.Add("half angle", t.HalfAngleDeg, "deg", t.Basis, $"atan(taper per foot / 24) = atan({N(t.PerFootIn, 5)} / 24) = {N(t.HalfAngleDeg, 4)} deg")
            .Add("included angle", t.IncludedAngleDeg, "deg", t.Basis);
        foreach (var detail in t.Details)
        {
            if (double.IsNaN(detail.ValueIn))
            {
                r.Say(detail.Name, detail.Text, detail.Basis);
            }
            else
            {
                r.Add(detail.Name, detail.ValueIn * 25.4, "mm", detail.Basis);
            }
        }
    }

    private static (double Half, double Mean, double Length) FromDiameters(Question q, ReplyBuilder r)
    {
        var named = q.Labelled(("length", ["over", "long", "length", "along"]));
        var length = named.TryGetValue("length", out var l) ? q.Mm(l) : double.NaN;
        var first = Question.Need(q.Length(), "the taper's name, or its two diameters and length");
        var second = Question.Need(q.Length(), "the second diameter");
        length = double.IsNaN(length) ? Question.Need(q.Length(), "the length between the diameters") : length;
        var difference = Math.Abs(first - second);
        if (difference <= 0)
        {
            throw new UnansweredException("the two diameters are the same: that is no taper");
        }

        var half = Math.Atan(difference / 2 / length) * 180 / Math.PI;
        r.Add("taper per foot", difference / length * 12, "in/ft", Plain, $"12 (D - d) / L = 12 x {r.L(difference)} / {r.L(length)}")
            .Add("1 in", length / difference, string.Empty, Plain, $"L / (D - d) = {N(length / difference)}")
            .Add("half angle", half, "deg", Plain, $"atan((D - d) / 2L) = {N(half, 4)} deg; set a top slide to this")
            .Add("included angle", 2 * half, "deg", Plain)
            .Add("tailstock set over, for a bar of that length", difference / 2, "mm", Plain, "(D - d)/2 for the taper's own length between centres; times bar length / taper length for a longer bar");
        return (half, (first + second) / 2, length);
    }

    private static void Holding(ReplyBuilder r, double half, double mean, double length, double? asked, double? pull)
    {
        var friction = asked ?? 0.12;
        if (friction is not (> 0 and < 2))
        {
            throw new UnansweredException($"a coefficient of friction of {N(friction)} is not to be had; 0.05 to 0.3 is usual");
        }

        var b = TaperHolding.Basis;
        var holds = TaperHolding.HoldsItself(half, friction);
        r.Add("friction angle", TaperHolding.FrictionAngleDeg(friction), "deg", b, $"atan({N(friction)})")
            .Say("holds itself", holds ? "yes: the half angle is under the friction angle" : "no: it needs its drawbar", b, $"half angle {N(half, 3)} deg against friction angle {N(TaperHolding.FrictionAngleDeg(friction), 3)} deg")
            .Add("friction at which it changes over", TaperHolding.ChangeOverFriction(half), string.Empty, b, "tan(half angle)")
            .Add("force to free it, as a share of the pull that seated it", TaperHolding.OutOverIn(half, friction), string.Empty, b, "factor of two",
                ["(mu cos a - sin a) / (mu cos a + sin a); negative lets go by itself"]);
        if (asked is null)
        {
            r.Note("A friction of 0.12 was taken (clean steel, a trace of oil); say friction 0.15 for another.");
        }

        if (pull is { } force && !double.IsNaN(mean))
        {
            var torque = TaperHolding.TorqueNmm(force, half, friction, mean) / 1000;
            r.Add("normal force on the cone", TaperHolding.NormalForceN(force, half, friction), "N", b, "factor of two", [$"F / (sin a + mu cos a), F = {N(force, 0)} N"])
                .Add("torque by friction", torque, "N m", b, "factor of two", [$"mu N d/2 = {N(torque, 2)} N m at a mean diameter of {r.L(mean)}"])
                .Add("force to free it", force * TaperHolding.OutOverIn(half, friction), "N", b, "factor of two", []);
            if (!double.IsNaN(length))
            {
                r.Add("mean pressure", TaperHolding.PressureMPa(force, half, friction, mean, length), "MPa", b, "factor of two", []);
            }
        }

        if (!holds)
        {
            r.Caution("It lets go without its drawbar: a cutter that drops out of a turning spindle is thrown. Tighten the drawbar, and torque goes through the keys, not the cone.");
        }
        else
        {
            r.Caution("Wipe both cones dry of oil and chips; a self-holding taper without a drawbar can still be shaken loose by side load, so mill only with the drawbar in.");
        }
    }
}
