namespace Handwheel.Trade.Indexing;

/// <summary>Turns of the crank, and the circles that give them, for one move of the spindle.</summary>
/// <param name="Turns">Whole turns of the crank.</param>
/// <param name="Numerator">Numerator of the fraction of a turn left, in lowest terms (0 where none is).</param>
/// <param name="Denominator">Its denominator.</param>
/// <param name="Choices">Every circle that gives the fraction exactly, ascending; empty where none does, or none is needed.</param>
public sealed record SimpleIndexing(long Turns, long Numerator, long Denominator, IReadOnlyList<CircleChoice> Choices)
{
    /// <summary>Whether the move can be made exactly.</summary>
    public bool Possible => Numerator == 0 || Choices.Count > 0;

    /// <summary>The basis of the rule.</summary>
    public static Basis Basis { get; } = new("crank turns = worm ratio / divisions (plain arithmetic of the worm)", Evidence.StandardFormula);
}
