using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Moves;

/// <summary>The events of one step.</summary>
public sealed record CourseStep
{
    /// <summary>Its id: <c>A8</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The job&#39;s line, for findings.</summary>
    public required string Text { get; init; }

    /// <summary>Where that line stands, for findings.</summary>
    public SourceSpan? Where { get; init; }

    /// <summary>What happens, in order.</summary>
    public required IReadOnlyList<CourseEvent> Events { get; init; }
}
