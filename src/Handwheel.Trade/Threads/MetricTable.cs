namespace Handwheel.Trade.Threads;

/// <summary>Metric diameters with their coarse and fine pitches (ISO 261, ISO 262).</summary>
public static class MetricTable
{
    // Diameter, coarse pitch (0 where there is none), fine pitches.
    private static readonly double[][] Rows =
    [
        [1, 0.25, 0.2], [1.1, 0.25, 0.2], [1.2, 0.25, 0.2], [1.4, 0.3, 0.2], [1.6, 0.35, 0.2], [1.8, 0.35, 0.2], [2, 0.4, 0.25], [2.2, 0.45, 0.25],
        [2.5, 0.45, 0.35], [3, 0.5, 0.35], [3.5, 0.6, 0.35], [4, 0.7, 0.5], [4.5, 0.75, 0.5], [5, 0.8, 0.5], [5.5, 0, 0.5], [6, 1, 0.75], [7, 1, 0.75],
        [8, 1.25, 1, 0.75], [9, 1.25, 1, 0.75], [10, 1.5, 1.25, 1, 0.75], [11, 1.5, 1, 0.75], [12, 1.75, 1.5, 1.25, 1], [14, 2, 1.5, 1.25, 1],
        [15, 0, 1.5, 1], [16, 2, 1.5, 1], [17, 0, 1.5, 1], [18, 2.5, 2, 1.5, 1], [20, 2.5, 2, 1.5, 1], [22, 2.5, 2, 1.5, 1], [24, 3, 2, 1.5, 1],
        [25, 0, 2, 1.5, 1], [26, 0, 1.5], [27, 3, 2, 1.5, 1], [28, 0, 2, 1.5, 1], [30, 3.5, 3, 2, 1.5, 1], [32, 0, 2, 1.5], [33, 3.5, 3, 2, 1.5],
        [35, 0, 1.5], [36, 4, 3, 2, 1.5], [38, 0, 1.5], [39, 4, 3, 2, 1.5], [40, 0, 3, 2, 1.5], [42, 4.5, 4, 3, 2, 1.5], [45, 4.5, 4, 3, 2, 1.5],
        [48, 5, 4, 3, 2, 1.5], [50, 0, 3, 2, 1.5], [52, 5, 4, 3, 2, 1.5], [55, 0, 4, 3, 2, 1.5], [56, 5.5, 4, 3, 2, 1.5], [58, 0, 4, 3, 2, 1.5],
        [60, 5.5, 4, 3, 2, 1.5], [62, 0, 4, 3, 2, 1.5], [64, 6, 4, 3, 2, 1.5], [65, 0, 4, 3, 2, 1.5], [68, 6, 4, 3, 2, 1.5],
    ];

    /// <summary>The basis of the table.</summary>
    public static Basis Basis { get; } = new("ISO 261 and ISO 262 (diameters and pitches)", Evidence.HandbookTable);

    /// <summary>Every coarse thread.</summary>
    public static IReadOnlyList<MetricThread> Coarse { get; } = [.. Rows.Where(r => r[1] > 0).Select(r => new MetricThread(r[0], r[1]))];

    /// <summary>Every fine thread.</summary>
    public static IReadOnlyList<MetricThread> Fine { get; } = [.. Rows.SelectMany(r => r.Skip(2).Select(p => new MetricThread(r[0], p)))];

    /// <summary>The coarse thread of a diameter.</summary>
    /// <param name="diameterMm">Nominal diameter, mm.</param>
    /// <returns>The thread, or null where the standard has no coarse one.</returns>
    public static MetricThread? CoarseOf(double diameterMm) => Coarse.FirstOrDefault(t => Math.Abs(t.DiameterMm - diameterMm) < 1e-9);

    /// <summary>Whether a diameter and pitch are a pair of ISO 261.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>True where the standard lists it.</returns>
    public static bool Lists(MetricThread thread) => Coarse.Contains(thread) || Fine.Contains(thread);
}
