using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Designs;

/// <summary>One line of a design: what the part must stand, checked by handbook mechanics. Numbers are kept as typed, in N, N mm, MPa and mm.</summary>
public abstract record DesignLine
{
    private protected DesignLine()
    {
    }

    /// <summary>The line as typed, spaces made single.</summary>
    public required string Text { get; init; }

    /// <summary>Where it stands.</summary>
    public required SourceSpan Where { get; init; }
}
