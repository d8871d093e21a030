using System.Collections.Concurrent;
using CsCheck;

namespace Handwheel.Draws;

/// <summary>
/// Draws for tests that hold over many values. A run draws the same values each time, so that what passed once passes again; with HANDWHEEL_DRAW=anew in the
/// environment it draws new ones, and shrinks what fails.
/// </summary>
internal static class Drawn
{
    private const ulong Root = 0x48616E64776865;

    /// <summary>Whether new values are drawn in this run.</summary>
    public static bool Anew { get; } = string.Equals(Environment.GetEnvironmentVariable("HANDWHEEL_DRAW"), "anew", StringComparison.Ordinal);

    /// <summary>Holds the check against that many draws; the first of them that fails is told with its value.</summary>
    /// <typeparam name="T">What is drawn.</typeparam>
    /// <param name="gen">What draws.</param>
    /// <param name="check">Throws where a value does not hold.</param>
    /// <param name="times">How many are drawn.</param>
    /// <param name="threads">How many threads at once, or all there are.</param>
    public static void Hold<T>(this Gen<T> gen, Action<T> check, int times, int threads = -1)
    {
        if (Anew)
        {
            gen.Sample(check, iter: times, threads: threads);
            return;
        }

        var failed = new ConcurrentDictionary<int, Exception>();
        Parallel.For(0, times, new ParallelOptions { MaxDegreeOfParallelism = threads }, (draw, state) =>
        {
            if (failed.Keys.Any(earlier => earlier < draw))
            {
                return;
            }

            var value = gen.Generate(new PCG((uint)draw, Root), min: null, out _);
            try
            {
                check(value);
            }
            catch (Exception e)
            {
                failed[draw] = new InvalidOperationException(FormattableString.Invariant($"Draw {draw} of {times}, {value}: {e.Message}"), e);
            }
        });
        if (!failed.IsEmpty)
        {
            throw failed.MinBy(pair => pair.Key).Value;
        }
    }

    /// <summary>Holds the check against that many draws of two values.</summary>
    /// <typeparam name="TOne">The first.</typeparam>
    /// <typeparam name="TTwo">The second.</typeparam>
    /// <param name="gen">What draws.</param>
    /// <param name="check">Throws where the values do not hold.</param>
    /// <param name="times">How many are drawn.</param>
    public static void Hold<TOne, TTwo>(this Gen<(TOne, TTwo)> gen, Action<TOne, TTwo> check, int times) => gen.Hold(drawn => check(drawn.Item1, drawn.Item2), times);

    /// <summary>Holds the check against that many draws of three values.</summary>
    /// <typeparam name="TOne">The first.</typeparam>
    /// <typeparam name="TTwo">The second.</typeparam>
    /// <typeparam name="TThree">The third.</typeparam>
    /// <param name="gen">What draws.</param>
    /// <param name="check">Throws where the values do not hold.</param>
    /// <param name="times">How many are drawn.</param>
    /// <param name="threads">How many threads at once, or all there are.</param>
    public static void Hold<TOne, TTwo, TThree>(this Gen<(TOne, TTwo, TThree)> gen, Action<TOne, TTwo, TThree> check, int times, int threads = -1) =>
        gen.Hold(drawn => check(drawn.Item1, drawn.Item2, drawn.Item3), times, threads);
}
