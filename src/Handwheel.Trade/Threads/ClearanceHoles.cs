namespace Handwheel.Trade.Threads;

/// <summary>Clearance holes for screws.</summary>
/// <remarks>Metric: ISO 273 (fine, medium, coarse). Inch: ASME B18.2.8 (close, normal, loose), and the drills long usual in shops (close, free).</remarks>
public static class ClearanceHoles
{
    /// <summary>The basis of the metric table.</summary>
    public static Basis MetricBasis { get; } = new("ISO 273:1979 (M1 to M64 held against published copies)", Evidence.HandbookTable);

    /// <summary>The basis of the inch table.</summary>
    public static Basis InchBasis { get; } = new("ASME B18.2.8 Table 1a (Machinery's Handbook 31st ed. p. 1741; close drills held against its metric twins, Table 3a p. 1743, and a supplier's list of #8 to 1 in)", Evidence.HandbookTable);

    /// <summary>The basis of the shop drills.</summary>
    public static Basis ShopBasis { get; } = new("close and free drills as on shop charts", Evidence.CommonPractice);

    private static readonly double[][] Metric =
    [
        [1, 1.1, 1.2, 1.3], [1.2, 1.3, 1.4, 1.5], [1.4, 1.5, 1.6, 1.8], [1.6, 1.7, 1.8, 2], [1.8, 2, 2.1, 2.2], [2, 2.2, 2.4, 2.6], [2.5, 2.7, 2.9, 3.1],
        [3, 3.2, 3.4, 3.6], [3.5, 3.7, 3.9, 4.2], [4, 4.3, 4.5, 4.8], [4.5, 4.8, 5, 5.3], [5, 5.3, 5.5, 5.8], [6, 6.4, 6.6, 7], [7, 7.4, 7.6, 8],
        [8, 8.4, 9, 10], [10, 10.5, 11, 12], [12, 13, 13.5, 14.5], [14, 15, 15.5, 16.5], [16, 17, 17.5, 18.5], [18, 19, 20, 21], [20, 21, 22, 24],
        [22, 23, 24, 26], [24, 25, 26, 28], [27, 28, 30, 32], [30, 31, 33, 35], [33, 34, 36, 38], [36, 37, 39, 42], [39, 40, 42, 45], [42, 43, 45, 48],
        [45, 46, 48, 52], [48, 50, 52, 56], [52, 54, 56, 62], [56, 58, 62, 66], [60, 62, 66, 70], [64, 66, 70, 74],
    ];

    private static readonly (string Size, string Close, string Normal, string Loose)[] Inch =
    [
        ("#0", "#51", "#48", "3/32"), ("#1", "#46", "#43", "#37"), ("#2", "3/32", "#38", "#32"), ("#3", "#36", "#32", "#30"), ("#4", "#31", "#30", "#27"),
        ("#5", "9/64", "5/32", "11/64"), ("#6", "#23", "#18", "#13"), ("#8", "#15", "#9", "#3"), ("#10", "#5", "#2", "B"), ("1/4", "17/64", "9/32", "19/64"),
        ("5/16", "21/64", "11/32", "23/64"), ("3/8", "25/64", "13/32", "27/64"), ("7/16", "29/64", "15/32", "31/64"), ("1/2", "17/32", "9/16", "39/64"),
        ("5/8", "21/32", "11/16", "47/64"), ("3/4", "25/32", "13/16", "29/32"), ("7/8", "29/32", "15/16", "1 1/32"), ("1", "1 1/32", "1 3/32", "1 5/32"),
        ("1 1/8", "1 5/32", "1 7/32", "1 5/16"), ("1 1/4", "1 9/32", "1 11/32", "1 7/16"), ("1 3/8", "1 7/16", "1 1/2", "1 39/64"), ("1 1/2", "1 9/16", "1 5/8", "1 47/64"),
    ];

    private static readonly (string Size, string Close, string Free)[] Shop =
    [
        ("#0", "#52", "#50"), ("#1", "#48", "#46"), ("#2", "#43", "#41"), ("#3", "#37", "#35"), ("#4", "#32", "#30"), ("#5", "#30", "#29"), ("#6", "#27", "#25"),
        ("#8", "#18", "#16"), ("#10", "#9", "#7"), ("#12", "#2", "#1"), ("1/4", "F", "H"), ("5/16", "P", "Q"), ("3/8", "W", "X"), ("7/16", "29/64", "15/32"),
        ("1/2", "33/64", "17/32"), ("9/16", "37/64", "19/32"), ("5/8", "41/64", "21/32"), ("3/4", "49/64", "25/32"), ("7/8", "57/64", "29/32"), ("1", "1 1/64", "1 1/32"),
    ];

    /// <summary>Clearance holes of a metric screw.</summary>
    /// <param name="diameterMm">Thread diameter, mm.</param>
    /// <returns>Fine, medium, coarse, mm; null where the table has no such size.</returns>
    public static (double Fine, double Medium, double Coarse)? OfMetric(double diameterMm)
    {
        var row = Array.Find(Metric, r => Math.Abs(r[0] - diameterMm) < 1e-9);
        return row is null ? null : (row[1], row[2], row[3]);
    }

    /// <summary>Clearance drills of an inch screw after the standard.</summary>
    /// <param name="majorIn">Major diameter, in.</param>
    /// <returns>Names of the drills, close, normal, loose; null where the table has no such size.</returns>
    public static (string Close, string Normal, string Loose)? OfInch(double majorIn)
    {
        foreach (var row in Inch)
        {
            if (Math.Abs(UnifiedTable.MajorOf(row.Size) - majorIn) < 1e-6)
            {
                return (row.Close, row.Normal, row.Loose);
            }
        }

        return null;
    }

    /// <summary>Clearance drills of an inch screw as on shop charts.</summary>
    /// <param name="majorIn">Major diameter, in.</param>
    /// <returns>Names of the drills, close and free; null where there is none.</returns>
    public static (string Close, string Free)? OfShop(double majorIn)
    {
        foreach (var row in Shop)
        {
            if (Math.Abs(UnifiedTable.MajorOf(row.Size) - majorIn) < 1e-6)
            {
                return (row.Close, row.Free);
            }
        }

        return null;
    }
}
