using Handwheel.Jobs.Designs;
using Handwheel.Jobs.Findings;

namespace Handwheel.Proof.Designs;

/// <summary>What came of one line of a design.</summary>
public sealed record DesignResult
{
    /// <summary>The line.</summary>
    public required DesignLine Line { get; init; }

    /// <summary>The values, in the order they were worked out.</summary>
    public required IReadOnlyList<DesignAnswer> Answers { get; init; }

    /// <summary>What it comes to, a sentence without its point.</summary>
    public required string Verdict { get; init; }

    /// <summary>How many times over it stands; null where nothing was asked of it or it is a yes or no.</summary>
    public double? Margin { get; init; }

    /// <summary>Halt where it does not stand, caution where it stands less than twice over; null where it stands.</summary>
    public Grade? Grade { get; init; }

    /// <summary>What would mend it; empty where nothing is wrong.</summary>
    public string Mend { get; init; } = string.Empty;
}
