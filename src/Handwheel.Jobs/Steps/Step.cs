using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary>One line of work: an intention of a person. Lengths in millimetres, angles in radians. Typed Z values are readings&#39; heights of the part frame turned into the holding (for a holding with the top up: part Z).</summary>
public abstract record Step
{
    private protected Step()
    {
    }

    /// <summary>Its id: <c>A8</c>, <c>h1</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The line as typed, comment and edge spaces taken off.</summary>
    public required string Text { get; init; }

    /// <summary>The whole line&#39;s place.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>The cutter&#39;s name; null where the line names none (zero, measure, spot with the shop&#39;s only spotting drill is filled in by the reader).</summary>
    public string? Cutter { get; init; }

    /// <summary>The spindle speed asked for, turns a minute (<c>at 900 rpm</c>); null: as cutter, metal and machine ask.</summary>
    public Typed? Speed { get; init; }

    /// <summary>Where the cutter&#39;s name stands.</summary>
    public SourceSpan? CutterWhere { get; init; }
}
