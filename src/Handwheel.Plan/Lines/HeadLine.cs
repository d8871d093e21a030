using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Lines;

/// <summary>A boring head is set.</summary>
public sealed record HeadLine : SheetLine
{
    /// <summary>The bar.</summary>
    public required string Cutter { get; init; }

    /// <summary>The diameter it then bores, millimetres.</summary>
    public required double Across { get; init; }

    /// <summary>How much it opens from how it stood, on the diameter, millimetres; null where that is not known.</summary>
    public double? Opens { get; init; }

    /// <summary>Whether how much it opens waits for what has just been measured.</summary>
    public bool Waits { get; init; }

    /// <summary>What to do, in words.</summary>
    public required string Says { get; init; }

    /// <summary>How the diameter was worked out.</summary>
    public required Working Working { get; init; }
}
