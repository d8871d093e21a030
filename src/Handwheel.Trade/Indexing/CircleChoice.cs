namespace Handwheel.Trade.Indexing;

/// <summary>A hole circle and how many spaces to move on it.</summary>
/// <param name="Circle">Holes in the circle.</param>
/// <param name="Spaces">Spaces moved beyond the whole turns; the sector arms embrace one hole more.</param>
public readonly record struct CircleChoice(int Circle, int Spaces);
