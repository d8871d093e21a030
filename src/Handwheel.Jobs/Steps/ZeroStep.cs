using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>zero x, y on rotary centre</c>, <c>zero z on bar top by paper 0.05</c>, <c>zero x on left end of stock by finder</c>: finds a zero.</summary>
public sealed record ZeroStep : Step
{
    /// <summary>The axes zeroed, of <c>x</c>, <c>y</c>, <c>z</c>: <c>xy</c>, <c>z</c>.</summary>
    public required string Axes { get; init; }

    /// <summary>What it is found on.</summary>
    public required ZeroOn On { get; init; }

    /// <summary>The feature it is found on, where one is named; with <see cref="OnRotaryCentre"/> the feature that stands on the rotary centre.</summary>
    public string? Feature { get; init; }

    /// <summary>The face of the feature, where one was named other than its top: <c>underside</c>, <c>left</c>, <c>right</c>, <c>near</c>, <c>far</c>; it must look up.</summary>
    public string? Face { get; init; }

    /// <summary>Whether the axes are zeroed on the rotary centre.</summary>
    public bool OnRotaryCentre { get; init; }

    /// <summary>With what: <c>indicator</c>, <c>paper</c>, <c>cutter</c>, <c>finder</c>, <c>pin</c>, <c>block</c>, <c>gauge</c>.</summary>
    public string By { get; init; } = "indicator";

    /// <summary>Thickness of the paper, diameter of the pin, height of the block; null: none or the shop says.</summary>
    public Typed? Size { get; init; }

    /// <summary>What the readout is set to at that place where a value other than 0 was typed.</summary>
    public Typed? SetTo { get; init; }
}
