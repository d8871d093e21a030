using System.Globalization;
using System.Text.RegularExpressions;
using Handwheel.Trade.Threads;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Acme and trapezoidal threads.</summary>
internal static partial class FlankedThreadTopic
{
    /// <summary>Whether such a thread is asked for.</summary>
    /// <param name="q">Question.</param>
    /// <returns>True where it is named.</returns>
    internal static bool Named(Question q) => q.HasIn("acme", "trapezoidal", "trapezoid") || q.Tokens.Any(t => TrShape().IsMatch(t.Raw));

    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var (major, pitch, metric) = Take(q);
        if (pitch is not > 0 || major <= 1.5 * pitch)
        {
            throw new UnansweredException("that pitch does not go on that diameter");
        }

        q.Has("acme", "trapezoidal", "trapezoid", "thread", "lead", "pitch", "screw", "nut", "tr", "leadscrew");
        q.Inch = !metric;
        var unit = metric ? 1 : 25.4;
        var basis = metric ? FlankedThreads.TrapezoidalBasis : FlankedThreads.AcmeBasis;
        var clear = FlankedThreads.RootClearance(metric, pitch);
        var starts = q.JustBefore("start", "starts") ?? 1;
        r.Say("thread", metric ? $"Tr {N(major)} x {N(pitch)}" : $"{N(major)}-{N(1 / pitch)} Acme", basis)
            .Add("major diameter", major * unit, "mm", basis)
            .Add("pitch", pitch * unit, "mm", basis)
            .Add("lead", pitch * starts * unit, "mm", basis, $"{N(starts)} start(s) x pitch")
            .Add("pitch diameter", (major - (pitch / 2)) * unit, "mm", basis, "D - P/2")
            .Add("minor diameter, nut", (major - pitch) * unit, "mm", basis, "D - P: bore to this before tapping")
            .Add("minor diameter, screw", (major - pitch - clear) * unit, "mm", basis, $"D - P - {N(clear)}")
            .Add("depth of thread, screw", ((pitch + clear) / 2) * unit, "mm", basis, "P/2 and the clearance")
            .Add("width of the tool's tip", (metric ? 0.366 : 0.3707) * pitch * unit, "mm", basis, metric ? "0.366 P, less the play at the flanks" : "0.3707 P, less 0.259 x the allowance")
            .Add("flank angle, included", metric ? 30 : 29, "deg", basis)
            .Note("Basic sizes; limits of these threads are not carried.");
    }

    /// <summary>Whether a thread is written with its dash, as in 1/2-10, or as Tr20x4.</summary>
    /// <param name="q">Question.</param>
    /// <returns>True where one is.</returns>
    internal static bool Written(Question q) => q.Tokens.Any(t => !t.IsNumber && !t.Used && (DashShape().IsMatch(t.Raw) || TrShape().Match(t.Raw).Groups["d"].Success));

    /// <summary>Takes the sizes.</summary>
    /// <param name="q">Question.</param>
    /// <returns>Major diameter and pitch, in mm or inches.</returns>
    /// <exception cref="UnansweredException">Something needed is missing.</exception>
    internal static (double Major, double Pitch, bool Metric) Take(Question q)
    {
        foreach (var token in q.Tokens.Where(t => !t.IsNumber))
        {
            var match = TrShape().Match(token.Raw);
            if (match.Success && match.Groups["d"].Success)
            {
                token.Used = true;
                var pitch = match.Groups["p"].Success ? Number(match.Groups["p"].Value) : Question.Need(q.InUnit("", "mm"), "the pitch");
                return (Number(match.Groups["d"].Value), pitch, true);
            }

            var dash = DashShape().Match(token.Raw);
            if (dash.Success)
            {
                token.Used = true;
                var over = dash.Groups["under"].Success ? Number(dash.Groups["over"].Value) / Number(dash.Groups["under"].Value) : Number(dash.Groups["over"].Value);
                return (over + (Whole(q, token) ?? 0), 1 / Number(dash.Groups["tpi"].Value), false);
            }
        }

        if (q.InUnit("tpi") is { } tpi)
        {
            q.Inch = true;
            return (Question.Need(q.Length(), "the diameter") / 25.4, 1 / tpi, false);
        }

        var metric = !q.HasIn("acme");
        var diameter = Question.Need(q.Length(), "the diameter");
        return metric ? (diameter, Question.Need(q.Length(), "the pitch"), true) : (diameter / 25.4, 1 / Question.Need(q.Plain(), "how many threads an inch"), false);
    }

    // "1 1/2-4": the whole inch stands before.
    private static double? Whole(Question q, Token token)
    {
        var at = q.Tokens.TakeWhile(t => !ReferenceEquals(t, token)).Count() - 1;
        if (at < 0 || q.Tokens[at] is not { IsNumber: true, Used: false, Unit: "", Decimals: 0, Value: <= 5 } || !token.Raw.Contains('/', StringComparison.Ordinal))
        {
            return null;
        }

        q.Tokens[at].Used = true;
        return q.Tokens[at].Value;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex("^tr(?:(?<d>[0-9]+(?:\\.[0-9]+)?)(?:[xX](?<p>[0-9]+(?:\\.[0-9]+)?))?)?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex TrShape();

    [GeneratedRegex("^(?<over>[0-9]*\\.?[0-9]+)(?:/(?<under>[1-9][0-9]*))?\"?-(?<tpi>[1-9][0-9]*(?:\\.[0-9]+)?)(?:acme)?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex DashShape();
}
