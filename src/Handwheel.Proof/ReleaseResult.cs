namespace Handwheel.Proof;

/// <summary>When the part comes free.</summary>
/// <param name="Step">The step by which it does; null: it never does.</param>
/// <param name="Move">The move by which it does; null for hand work.</param>
/// <param name="Declared">The step by which it was meant to.</param>
/// <param name="Decided">Whether web and gap exceeded four spacings, so that this is no guess.</param>
public sealed record ReleaseResult(string? Step, int? Move, string? Declared, bool Decided);
