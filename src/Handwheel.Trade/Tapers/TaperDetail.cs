namespace Handwheel.Trade.Tapers;

/// <summary>One more size of a taper shank or socket.</summary>
/// <param name="Name">What it is.</param>
/// <param name="ValueIn">Inches; NaN where the answer is a word.</param>
/// <param name="Basis">Where it comes from.</param>
/// <param name="Text">The word, e.g. a thread.</param>
public sealed record TaperDetail(string Name, double ValueIn, Basis Basis, string Text = "");
