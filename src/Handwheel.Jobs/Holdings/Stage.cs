using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Holdings;

/// <summary>One stage of a job: a holding on a machine, or work by hand.</summary>
public abstract record Stage
{
    private protected Stage()
    {
    }

    /// <summary>A holding&#39;s letter as typed; <c>by hand</c> else.</summary>
    public required string Name { get; init; }

    /// <summary>Its steps in order. Ids: the holding&#39;s name and a number (<c>A8</c>); <c>h1</c>, <c>h2</c> by hand, numbered through the job.</summary>
    public required IReadOnlyList<Step> Steps { get; init; }

    /// <summary>Its heading line.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Its heading as typed.</summary>
    public required string Text { get; init; }
}
