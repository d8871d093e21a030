using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary>Work by hand: <c>press socket with sq4</c>, <c>run d4 through again</c>, <c>break the web, file to the line</c>, <c>rub underside to arm high</c>, <c>break all edges 0.2</c>, and free text after <c>do</c>.</summary>
public sealed record HandStep : Step
{
    /// <summary>Which.</summary>
    public required HandWork Work { get; init; }

    /// <summary>The feature pressed, run through or filed to.</summary>
    public string? Feature { get; init; }

    /// <summary>The face filed or rubbed: <c>underside</c>, <c>top</c>, a feature&#39;s side.</summary>
    public string? Face { get; init; }

    /// <summary>The size it is brought to.</summary>
    public string? Size { get; init; }

    /// <summary>Amount: an edge break, metal taken.</summary>
    public Typed? Amount { get; init; }

    /// <summary>Metal left standing on a face sawn.</summary>
    public Typed? Allow { get; init; }

    /// <summary>Whether the stub is filed to the line.</summary>
    public bool FileToLine { get; init; }

    /// <summary>What a press or punch is set square to.</summary>
    public string? SquareTo { get; init; }
}
