using Handwheel.Trade.Drills;

namespace Handwheel.Trade.Threads;

/// <summary>Drills for tapping, by how much of the thread is wanted.</summary>
/// <remarks>
/// The handbook's convention: 100 % is a thread 0.6495 P deep on each side, so percent = 100 (D - d) / (1.299038 P) (Machinery's Handbook, tap drill
/// table). B1.1 counts against 1.0825 P instead and gives larger figures for the same drill; the answer says which.
/// </remarks>
public static class TapDrills
{
    /// <summary>The basis of the formula.</summary>
    public static Basis Basis { get; } = new("Machinery's Handbook, tap drill sizes and percentage of thread", Evidence.StandardFormula);

    /// <summary>Percentage of thread of a hole.</summary>
    /// <param name="major">Major diameter.</param>
    /// <param name="pitch">Pitch, same unit.</param>
    /// <param name="hole">Hole diameter, same unit.</param>
    /// <returns>Percent; the height of the basic thread is 83.3.</returns>
    public static double Percent(double major, double pitch, double hole) => 100 * (major - hole) / (1.29903811 * pitch);

    /// <summary>Hole for a percentage of thread.</summary>
    /// <param name="major">Major diameter.</param>
    /// <param name="pitch">Pitch, same unit.</param>
    /// <param name="percent">Percent of thread wanted, 40 to 90.</param>
    /// <returns>Hole diameter, same unit.</returns>
    public static double Hole(double major, double pitch, double percent) => major - (0.0129903811 * percent * pitch);

    /// <summary>The drill nearest to a percentage of thread.</summary>
    /// <param name="majorMm">Major diameter, mm.</param>
    /// <param name="pitchMm">Pitch, mm.</param>
    /// <param name="percent">Percent of thread wanted.</param>
    /// <param name="metric">True for metric drills, false for number, letter and fraction.</param>
    /// <returns>The drill.</returns>
    public static DrillSize Drill(double majorMm, double pitchMm, double percent, bool metric)
    {
        var wanted = Hole(majorMm, pitchMm, percent);
        return metric
            ? DrillTable.Nearest(wanted, 1, DrillFamily.Metric)[0]
            : DrillTable.Nearest(wanted, 1, DrillFamily.Number, DrillFamily.Letter, DrillFamily.Fraction)[0];
    }
}
