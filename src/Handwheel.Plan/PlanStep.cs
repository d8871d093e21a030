using Handwheel.Jobs.Steps;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan;

/// <summary>One step worked out.</summary>
public sealed record PlanStep
{
    /// <summary>The intention.</summary>
    public required Step Step { get; init; }

    /// <summary>Its lines in the order they are worked.</summary>
    public required IReadOnlyList<SheetLine> Lines { get; init; }

    /// <summary>Workings worth showing on the sheet, in order, each once.</summary>
    public required IReadOnlyList<Working> Workings { get; init; }

    /// <summary>Cautions that bite here, each a sentence.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>A short remark beside the heading: <c>em10 stays, 900 rpm, 8 passes</c>.</summary>
    public string Heading { get; init; } = string.Empty;

    /// <summary>Estimated minutes.</summary>
    public double Minutes { get; init; }
}
