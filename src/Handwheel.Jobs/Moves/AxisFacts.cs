namespace Handwheel.Jobs.Moves;

/// <summary>One axis as set up. Millimetres (T: degrees).</summary>
/// <param name="Least">Least reading within its travel; null: not known.</param>
/// <param name="Most">Greatest reading within its travel; null: not known.</param>
/// <param name="Readout">Whether a readout shows the true place (else arriving from the wrong side displaces the cut by the backlash).</param>
/// <param name="Step">The step readings are rounded to.</param>
/// <param name="Backlash">Slack on reversing.</param>
public sealed record AxisFacts(double? Least, double? Most, bool Readout, double Step, double Backlash);
