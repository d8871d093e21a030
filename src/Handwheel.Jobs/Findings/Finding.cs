using Handwheel.Jobs.Documents;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Findings;

/// <summary>One thing the reader, the plan or the proof has to say. Made only by the named methods of the finding catalogue.</summary>
public sealed record Finding
{
    /// <summary>The grade.</summary>
    public required Grade Grade { get; init; }

    /// <summary>The code, a word or two of the trade in lower case with hyphens: <c>gouge</c>, <c>lost-reference</c>.</summary>
    public required string Code { get; init; }

    /// <summary>What is wrong, in a sentence or two, with its numbers in the job's unit.</summary>
    public required string Message { get; init; }

    /// <summary>What would mend it.</summary>
    public required string Mend { get; init; }

    /// <summary>The rule behind it and its source; <c>common practice, no source</c> where that is so.</summary>
    public string? Rule { get; init; }

    /// <summary>Where it was typed, where it is known.</summary>
    public SourceSpan? Where { get; init; }

    /// <summary>The step, such as <c>A8</c>.</summary>
    public string? Step { get; init; }

    /// <summary>The move's number, from 1 through the whole job.</summary>
    public int? Move { get; init; }

    /// <summary>The amount, in <see cref="Unit"/>; lengths in millimetres.</summary>
    public double? Amount { get; init; }

    /// <summary>The amount's unit: <c>mm</c>, <c>deg</c>, <c>N</c>, <c>mm3</c>, <c>1</c>.</summary>
    public string? Unit { get; init; }

    /// <summary>The place on the part, part frame, millimetres.</summary>
    public Point3? At { get; init; }

    /// <summary>The same place in readings of its holding, millimetres.</summary>
    public Point3? AtReading { get; init; }
}
