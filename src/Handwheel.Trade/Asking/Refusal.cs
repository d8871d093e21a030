namespace Handwheel.Trade.Asking;

/// <summary>Why a question has no answer, and how to put it so that it has.</summary>
/// <param name="What">What was read and what is missing, in a sentence.</param>
/// <param name="Nearest">Known words near to those not understood, nearest first.</param>
/// <param name="Examples">Questions that are understood.</param>
public sealed record Refusal(string What, IReadOnlyList<string> Nearest, IReadOnlyList<string> Examples);
