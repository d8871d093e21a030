using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Shops;

/// <summary>A hand-cranked mill.</summary>
public sealed record Mill
{
    /// <summary>Its name in the shop.</summary>
    public required string Name { get; init; }

    /// <summary>The long travel.</summary>
    public required MachineAxis X { get; init; }

    /// <summary>The cross travel.</summary>
    public required MachineAxis Y { get; init; }

    /// <summary>Depth, by quill or knee.</summary>
    public required MachineAxis Z { get; init; }

    /// <summary>Whether the quill (else the knee) makes depth.</summary>
    public bool DepthByQuill { get; init; } = true;

    /// <summary>What the quill pushes, newtons; 0 not said.</summary>
    public double QuillPush { get; init; }

    /// <summary>Spindle speeds, turns a minute, rising.</summary>
    public required IReadOnlyList<double> Speeds { get; init; }

    /// <summary>Motor power, watts; 0 not said.</summary>
    public double Power { get; init; }

    /// <summary>Diameter of the spindle nose or of the chuck that holds the cutters.</summary>
    public double NoseAcross { get; init; } = 50;

    /// <summary>Free height from the table to the spindle nose at most; 0 not said.</summary>
    public double Daylight { get; init; }

    /// <summary>From the spindle's axis to the column; 0 not said.</summary>
    public double Throat { get; init; }

    /// <summary>Where it was typed.</summary>
    public required SourceSpan Where { get; init; }
}
