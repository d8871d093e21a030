using System.Globalization;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Quantities;
using Handwheel.Trade.Threads;

namespace Handwheel.Jobs.Reading;

/// <summary>Taps are called by their thread: <c>tap M6</c>, <c>tap 1/4-20 UNC</c>.</summary>
internal static class TapSizes
{
    public static Cutter Read(Cursor c, Cutter k)
    {
        var where = c.Here;
        if (ThreadWords.Take(c) is not { } thread)
        {
            return k;
        }

        if (Of(thread) is not var (major, pitch))
        {
            c.Fail(FindingCatalogue.UnknownWord(where, thread, "a thread of the standards", null, "Write 'tap M6', 'tap M8x1' or 'tap 1/4-20 UNC'."));
            return k;
        }

        return k with { Across = major, TrueAcross = major, Pitch = pitch };
    }

    // Major diameter and pitch, millimetres; null where the thread is in no table.
    public static (double Major, double Pitch)? Of(string thread)
    {
        if (thread[0] is 'M' or 'm')
        {
            var parts = thread[1..].Split('x', 'X');
            var major = double.Parse(parts[0], CultureInfo.InvariantCulture);
            return parts.Length > 1 ? (major, double.Parse(parts[1], CultureInfo.InvariantCulture))
                : MetricTable.CoarseOf(major) is { } coarse ? (major, coarse.PitchMm) : null;
        }

        var word = thread.Split(' ')[0];
        var dash = word.LastIndexOf('-');
        return UnifiedTable.Of(word[..dash], double.Parse(word[(dash + 1)..], CultureInfo.InvariantCulture)) is { } unified
            ? (unified.MajorIn * LengthUnits.MillimetresPerInch, unified.PitchIn * LengthUnits.MillimetresPerInch) : null;
    }
}
