using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Designs;

/// <summary>A screw in a tapped hole: does its thread strip, does the screw hold?</summary>
public sealed record ScrewDesign : DesignLine
{
    /// <summary>The thread as typed: <c>M6</c>, <c>1/4-20 UNC</c>.</summary>
    public required string Thread { get; init; }

    /// <summary>The tapped feature; null where only a thread was named.</summary>
    public string? Feature { get; init; }

    /// <summary>Length of thread engaged, mm; null: what the drawing has round the feature.</summary>
    public Typed? Engaged { get; init; }

    /// <summary>Pull on the screw, N; null: what the torque gives.</summary>
    public Typed? Pull { get; init; }

    /// <summary>Tightening torque, N mm.</summary>
    public Typed? Torque { get; init; }

    /// <summary>Grade of the screw: <c>8.8</c>; null: 8.8 in metric, grade 5 in inch.</summary>
    public string? Grade { get; init; }

    /// <summary>How its thread is: <c>oiled</c>, <c>dry</c>, <c>plated</c>; null: plated.</summary>
    public string? Surface { get; init; }

    /// <summary>What it is screwed into; null: the job&#39;s metal.</summary>
    public string? Metal { get; init; }
}
