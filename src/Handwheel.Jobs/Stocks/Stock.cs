using Handwheel.Jobs.Documents;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Stocks;

/// <summary>The piece of metal the part is cut from, as it lies in the part frame, sizes as measured where they were measured.</summary>
public sealed record Stock
{
    /// <summary>Its form.</summary>
    public required StockForm Form { get; init; }

    /// <summary>Nominal size along part X, Y, Z, millimetres.</summary>
    public required Point3 Nominal { get; init; }

    /// <summary>Size used: measured where it was, else nominal, millimetres.</summary>
    public required Point3 Used { get; init; }

    /// <summary>The lowest corner of its box in the part frame, millimetres.</summary>
    public required Point3 Least { get; init; }

    /// <summary>The axis a round or hex bar runs along: <c>x</c>, <c>y</c> or <c>z</c>.</summary>
    public string Along { get; init; } = "x";

    /// <summary>For a hex: whether flats lie up and down (else corners).</summary>
    public bool FlatsUp { get; init; } = true;

    /// <summary>Bore of a tube, millimetres; 0 solid.</summary>
    public double Bore { get; init; }

    /// <summary>Which of its sizes were measured: any of <c>wide</c>, <c>high</c>, <c>long</c>, <c>across</c>.</summary>
    public IReadOnlyList<string> Measured { get; init; } = [];

    /// <summary>Where it was typed.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>The metal as the job names it; empty where it names none.</summary>
    public string Metal { get; init; } = string.Empty;
}
