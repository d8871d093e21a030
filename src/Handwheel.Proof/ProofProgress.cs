namespace Handwheel.Proof;

/// <summary>How far a proof has come.</summary>
/// <param name="Question">What is being asked: <c>following</c>, <c>gouge</c>, <c>release</c>.</param>
/// <param name="Share">How much of the whole is done, 0 to 1.</param>
public sealed record ProofProgress(string Question, double Share);
