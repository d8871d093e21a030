using System.Globalization;
using System.Text.RegularExpressions;
using Handwheel.Trade.Threads;

namespace Handwheel.Trade.Asking;

/// <summary>Finds a thread in a question, however it is written.</summary>
internal static partial class ThreadFinder
{
    private static readonly string[] SeriesWords = ["unc", "unf", "unef", "coarse", "fine", "un", "uns", "nc", "nf"];

    /// <summary>Takes a thread.</summary>
    /// <param name="q">The question.</param>
    /// <returns>The thread, or null.</returns>
    internal static AskedThread? Take(Question q) => TakeMetric(q) ?? TakeDashed(q) ?? TakeSized(q) ?? TakePair(q) ?? TakeBare(q);

    /// <summary>Whether the question holds a thread; takes nothing.</summary>
    /// <param name="q">The question.</param>
    /// <returns>True where it does.</returns>
    internal static bool Holds(Question q) =>
        q.Tokens.Any(t => !t.IsNumber && (MetricShape().IsMatch(t.Raw) || (DashShape().Match(t.Raw) is { Success: true } m && IsUnified(m))))
        || q.Tokens.Zip(q.Tokens.Skip(1)).Any(p => SizeWord(p.First) is not null && (p.First.IsFraction || !p.First.IsNumber) && (p.Second.Low is "unc" or "unf" or "unef" or "nc" or "nf" or "coarse" or "fine"));

    /// <summary>Takes a thread class.</summary>
    /// <param name="q">The question.</param>
    /// <param name="thread">The thread.</param>
    /// <returns>The class, or null.</returns>
    internal static string? TakeClass(Question q, AskedThread thread)
    {
        foreach (var token in q.Tokens.Where(t => !t.Used && !t.IsNumber))
        {
            if (thread.Unified is not null && UnifiedClass().IsMatch(token.Raw))
            {
                token.Used = true;
                return token.Raw.ToUpperInvariant();
            }

            if (thread.Metric is not null && MetricClassShape().IsMatch(token.Raw))
            {
                token.Used = true;
                return token.Raw;
            }
        }

        return null;
    }

    private static AskedThread? TakeMetric(Question q)
    {
        for (var i = 0; i < q.Tokens.Count; i++)
        {
            var token = q.Tokens[i];
            var match = token.IsNumber || token.Used ? Match.Empty : MetricShape().Match(token.Raw);
            var bare = token.Low == "m" && i + 1 < q.Tokens.Count && q.Tokens[i + 1] is { IsNumber: true, Unit: "" };
            if (!match.Success && !bare)
            {
                continue;
            }

            var at = bare ? i + 1 : i;
            var diameter = bare ? q.Tokens[at].Value : Number(match.Groups["d"].Value);
            token.Used = q.Tokens[at].Used = true;
            var pitch = match.Groups["p"].Success ? Number(match.Groups["p"].Value) : PitchAfter(q, at, diameter);
            return new AskedThread(null, Metric(q, diameter, pitch));
        }

        return null;
    }

    private static MetricThread Metric(Question q, double diameter, double? pitch)
    {
        if (diameter is not (>= 0.25 and <= 355))
        {
            throw new UnansweredException($"M{Question.Plainly(diameter)} is no size of metric thread (they run from M1 to M68 here)");
        }

        if (pitch is not null && (pitch <= 0 || 1.3 * pitch >= diameter))
        {
            throw new UnansweredException($"a pitch of {Question.Plainly(pitch.Value)} does not go on M{Question.Plainly(diameter)}");
        }

        var coarse = q.Has("fine") ? MetricTable.Fine.FirstOrDefault(t => t.DiameterMm == diameter) : MetricTable.CoarseOf(diameter);
        q.Has("coarse", "metric");
        return pitch is { } p ? new MetricThread(diameter, p) : coarse
            ?? throw new UnansweredException($"M{Question.Plainly(diameter)} has no usual pitch in ISO 261; say it, as in M{Question.Plainly(diameter)}x1");
    }

    private static double? PitchAfter(Question q, int at, double diameter)
    {
        var i = at + 1;
        var crossed = i < q.Tokens.Count && (q.Tokens[i].Low is "x" or "*" or "-" or "by" or "pitch");
        i += crossed ? 1 : 0;
        if (i >= q.Tokens.Count)
        {
            return null;
        }

        var glued = q.Tokens[i].Low.StartsWith('x') && double.TryParse(q.Tokens[i].Low.AsSpan(1), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var pitch) ? pitch : double.NaN;
        if (!double.IsNaN(glued))
        {
            q.Tokens[i].Used = true;
            return glued;
        }

        return SpokenPitch(q, i, diameter, crossed);
    }

    private static double? SpokenPitch(Question q, int i, double diameter, bool crossed)
    {
        var next = q.Tokens[i];
        if (!next.IsNumber || next.Used || next.Unit is not ("" or "mm"))
        {
            return null;
        }

        var listed = MetricTable.Lists(new MetricThread(diameter, next.Value));
        if (!crossed && (!listed || (i + 1 < q.Tokens.Count && (q.Tokens[i + 1].Low is "deep" or "long" or "thick"))))
        {
            return null;
        }

        // "M8 x 30" is a screw 30 long, not a pitch.
        if (!listed && 1.3 * next.Value >= diameter)
        {
            return null;
        }

        next.Used = true;
        return next.Value;
    }

    private static AskedThread? TakeDashed(Question q)
    {
        for (var i = 0; i < q.Tokens.Count; i++)
        {
            var token = q.Tokens[i];
            var match = token.IsNumber || token.Used ? Match.Empty : DashShape().Match(token.Raw);
            if (!match.Success || !IsUnified(match))
            {
                continue;
            }

            var size = Size(match.Groups["size"].Value, match.Groups["tpi"].Value);
            var before = i > 0 ? q.Tokens[i - 1] : null;
            if (before is { IsNumber: true, Used: false, Decimals: 0, IsFraction: false, Unit: "", Value: >= 1 and <= 4 } && size.Contains('/', StringComparison.Ordinal))
            {
                before.Used = true;
                size = before.Raw + " " + size;
            }

            token.Used = true;
            q.Has(SeriesWords);
            var thread = UnifiedTable.Of(size, Number(match.Groups["tpi"].Value))
                ?? throw new UnansweredException($"'{token.Raw}' is no Unified thread");
            return new AskedThread(thread, null);
        }

        return null;
    }

    // 1/4 20, 1/2 unc, #8 coarse, 1/4 x 28, 3/8 16 tpi.
    private static AskedThread? TakeSized(Question q)
    {
        for (var i = 0; i < q.Tokens.Count; i++)
        {
            var token = q.Tokens[i];
            var size = SizeWord(token);
            var after = i + 1 < q.Tokens.Count ? q.Tokens[i + 1] : null;
            if (size is null || after is null)
            {
                continue;
            }

            var series = after.Low is "unc" or "unf" or "unef" or "nc" or "nf" or "coarse" or "fine";
            if (token is { IsNumber: true, IsFraction: false, Unit: "" } && !series)
            {
                continue;
            }

            size = size.Replace("in", string.Empty, StringComparison.OrdinalIgnoreCase).TrimEnd('"', ' ');
            after = after.Low == "x" && i + 2 < q.Tokens.Count ? q.Tokens[i + 2] : after;
            var thread = after.Low switch
            {
                "unc" or "coarse" or "nc" => UnifiedTable.InSeries(size, "UNC"),
                "unf" or "fine" or "nf" => UnifiedTable.InSeries(size, "UNF"),
                "unef" => UnifiedTable.InSeries(size, "UNEF"),
                _ when after is { IsNumber: true, Used: false, Value: >= 4 and <= 80, Decimals: 0, Unit: "" or "tpi" } => UnifiedTable.Of(size, after.Value),
                _ => null,
            };
            if (thread is not null && (after.Unit == "tpi" || !after.IsNumber || UnifiedTable.All.Contains(thread)))
            {
                token.Used = after.Used = true;
                q.Has(SeriesWords);
                return new AskedThread(thread, null);
            }
        }

        return null;
    }

    private static string? SizeWord(Token token)
    {
        var sized = token.IsNumber ? token.IsFraction || (token.Unit == "in" && token.Value <= 4) || (token is { Unit: "", Decimals: 0, Value: >= 1 and <= 4 }) : HashShape().IsMatch(token.Raw);
        return sized && !token.Used ? token.Raw : null;
    }

    // 10 32, 8 32: a number size spoken as two numbers.
    private static AskedThread? TakePair(Question q)
    {
        for (var i = 0; i + 1 < q.Tokens.Count; i++)
        {
            var (size, tpi) = (q.Tokens[i], q.Tokens[i + 1]);
            if (size is { IsNumber: true, Used: false, Unit: "", Decimals: 0, IsFraction: false, Value: <= 12 } && tpi is { IsNumber: true, Used: false, Unit: "" or "tpi", Decimals: 0 })
            {
                var thread = UnifiedTable.Of("#" + size.Raw, tpi.Value);
                if (thread is not null && UnifiedTable.All.Contains(thread))
                {
                    size.Used = tpi.Used = true;
                    q.Has(SeriesWords);
                    return new AskedThread(thread, null);
                }
            }
        }

        return null;
    }

    // 5 mm thread, tap 6 mm, an 8 mm bolt: the coarse thread of that size.
    private static AskedThread? TakeBare(Question q)
    {
        for (var i = 0; i < q.Tokens.Count; i++)
        {
            var token = q.Tokens[i];
            var (before, after) = (i > 0 ? q.Tokens[i - 1].Low : string.Empty, i + 1 < q.Tokens.Count ? q.Tokens[i + 1].Low : string.Empty);
            var beside = after is "thread" or "threads" or "tap" or "taps" or "bolt" or "bolts" or "screw" or "screws" or "stud" or "studs" or "threaded" or "tapped" || before is "thread" or "tap" or "tapped";
            if (token is { IsNumber: true, Used: false, Unit: "mm" } && beside && MetricTable.CoarseOf(token.Value) is { } coarse)
            {
                token.Used = true;
                return new AskedThread(null, coarse);
            }
        }

        return null;
    }

    private static bool IsUnified(Match m)
    {
        var tpi = Number(m.Groups["tpi"].Value);
        return tpi is >= 2 and <= 120 && !double.IsNaN(UnifiedTable.MajorOf(Size(m.Groups["size"].Value, m.Groups["tpi"].Value)));
    }

    // A whole number up to 14 before the dash is a number size where the thread is fine enough for one; 1-8, 2-4.5 and 3-4 are inches.
    private static string Size(string size, string tpi)
    {
        var bare = size.StartsWith("no", StringComparison.OrdinalIgnoreCase) ? "#" + size[2..].TrimStart('.') : size;
        return int.TryParse(bare, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && (n is 0 or (>= 3 and <= 14)) && Number(tpi) >= 18 ? "#" + bare : bare;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex("^[mM](?<d>[0-9]+(?:\\.[0-9]+)?)(?:[xX*-](?<p>[0-9]*\\.?[0-9]+))?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex MetricShape();

    [GeneratedRegex("^(?<size>(?:#|[nN][oO]\\.?)?[0-9]+|[0-9]+/[0-9]+|[0-9]*\\.[0-9]+)\"?[-xX](?<tpi>[0-9]+(?:\\.5)?)(?:un[a-z]*|UN[A-Z]*|n[cf]|N[CF])?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex DashShape();

    [GeneratedRegex("^#[0-9]{1,2}$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex HashShape();

    [GeneratedRegex("^[123][abAB]$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex UnifiedClass();

    [GeneratedRegex("^[3-9][efghGH](?:[3-9][efghGH])?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex MetricClassShape();
}
