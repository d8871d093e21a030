using System.Globalization;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Threads;

namespace Handwheel.Proof.Designs;

/// <summary>A thread in millimetres, with the limits that make it strip soonest.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Inch">Whether it is a Unified thread.</param>
/// <param name="Major">Basic major diameter.</param>
/// <param name="Pitch">Pitch.</param>
/// <param name="StressArea">Tensile stress area, mm2.</param>
/// <param name="ScrewMajorMin">Least major diameter of the screw, 6g or 2A.</param>
/// <param name="ScrewPitchMin">Least pitch diameter of the screw.</param>
/// <param name="NutPitchMax">Greatest pitch diameter of the hole, 6H or 2B.</param>
/// <param name="NutMinorMax">Greatest minor diameter of the hole.</param>
internal sealed record DesignThread(string Name, bool Inch, double Major, double Pitch, double StressArea, double ScrewMajorMin, double ScrewPitchMin, double NutPitchMax, double NutMinorMax)
{
    private const double In = 25.4;

    /// <summary>A thread as a document writes it.</summary>
    /// <param name="written"><c>M6</c>, <c>M8x1</c>, <c>1/4-20 UNC</c>, <c>#10-32</c>; one the reader took.</param>
    /// <returns>The thread; null where no table has it.</returns>
    public static DesignThread? Of(string written)
    {
        if (written[0] is 'M' or 'm')
        {
            var parts = written[1..].Split('x', 'X');
            var major = double.Parse(parts[0], CultureInfo.InvariantCulture);
            var thread = parts.Length > 1 ? new MetricThread(major, double.Parse(parts[1], CultureInfo.InvariantCulture)) : MetricTable.CoarseOf(major);
            return thread is null ? null : MetricTable.Lists(thread) ? Of(thread.Name, thread.Basics, thread.PitchMm, 1, thread.Limits("6g"), thread.Limits("6H")) : Of(thread.Name, thread.Basics, thread.PitchMm, 1, null, null);
        }

        var word = written.Split(' ')[0];
        var dash = word.LastIndexOf('-');
        var unified = UnifiedTable.Of(word[..dash], double.Parse(word[(dash + 1)..], CultureInfo.InvariantCulture));
        return unified is null ? null : Of(unified.Name, unified.Basics, unified.PitchIn, In, unified.Limits("2A"), unified.Limits("2B"));
    }

    /// <summary>The screw&#39;s grade: as named, else 8.8 or grade 5.</summary>
    /// <param name="name">The name; null: none.</param>
    /// <returns>The grade, or the default where the named one is not made in this size.</returns>
    public BoltGrade Grade(string? name) =>
        (name is null ? null : BoltGrades.Find(name, Major)) ?? BoltGrades.Find(Inch ? "grade 5" : "8.8", Math.Clamp(Major, 1, 39)) ?? BoltGrades.All[0];

    private static DesignThread Of(string name, ThreadBasics basics, double pitch, double scale, ThreadLimits? screw, ThreadLimits? nut) => new(
        name,
        scale != 1,
        basics.Major * scale,
        pitch * scale,
        basics.StressArea * scale * scale,
        (screw?.MajorMin ?? basics.Major) * scale,
        (screw?.PitchMin ?? basics.Pitch) * scale,
        (nut?.PitchMax ?? basics.Pitch) * scale,
        (nut?.MinorMax ?? basics.MinorInternal) * scale);
}
