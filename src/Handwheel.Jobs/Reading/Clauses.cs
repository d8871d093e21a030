using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Reading;

/// <summary>The clauses of a step's line, in whatever order they were typed. Filled by <see cref="ClauseReader"/>, then only read.</summary>
internal sealed class Clauses
{
    /// <summary>Which clauses stood there, by their word.</summary>
    public Dictionary<string, SourceSpan> Said { get; } = new(StringComparer.Ordinal);

    /// <summary>to.</summary>
    public Typed? To { get; set; }

    /// <summary>through.</summary>
    public bool Through { get; set; }

    /// <summary>with: the cutter.</summary>
    public string? Cutter { get; set; }

    /// <summary>Its place.</summary>
    public SourceSpan? CutterWhere { get; set; }

    /// <summary>a pass.</summary>
    public Typed? PerPass { get; set; }

    /// <summary>allow.</summary>
    public Typed? Allow { get; set; }

    /// <summary>clear of.</summary>
    public List<ClearOf> Clear { get; } = [];

    /// <summary>from a side.</summary>
    public string? From { get; set; }

    /// <summary>peck.</summary>
    public Typed? Peck { get; set; }

    /// <summary>to a diameter across.</summary>
    public Typed? Across { get; set; }

    /// <summary>inside.</summary>
    public bool Inside { get; set; }

    /// <summary>Edges.</summary>
    public List<string> Edges { get; } = [];

    /// <summary>web.</summary>
    public Typed? Web { get; set; }

    /// <summary>along which flank, side or end.</summary>
    public string? WebAlong { get; set; }

    /// <summary>at a height.</summary>
    public Typed? At { get; set; }

    /// <summary>square to.</summary>
    public string? SquareTo { get; set; }

    /// <summary>speed.</summary>
    public Typed? Speed { get; set; }
}
