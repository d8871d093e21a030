namespace Handwheel.Jobs.Steps;

/// <summary><c>measure hub across, then last pass at full depth</c>: measures a size and, where told, corrects and repeats the step before that left metal on it.</summary>
public sealed record MeasureStep : Step
{
    /// <summary>The size&#39;s name.</summary>
    public required string Size { get; init; }

    /// <summary>Whether a last pass follows.</summary>
    public bool ThenLastPass { get; init; }

    /// <summary>Whether that pass is at full depth at once.</summary>
    public bool FullDepth { get; init; }
}
