namespace Handwheel.Trade.Threads;

/// <summary>Limits of size of one thread class, in the unit of the thread (mm or in), rounded as its standard does.</summary>
/// <param name="Class">The class: 2A, 3B, 6g, 6H.</param>
/// <param name="External">Whether it is the screw.</param>
/// <param name="Allowance">Distance of the nearest limit from basic (es, EI), as a positive number.</param>
/// <param name="MajorMax">Greatest major diameter of the screw; NaN for a nut (it has none).</param>
/// <param name="MajorMin">Least major diameter.</param>
/// <param name="PitchMax">Greatest pitch diameter.</param>
/// <param name="PitchMin">Least pitch diameter.</param>
/// <param name="MinorMax">Greatest minor diameter: of the nut's hole, or of the screw's root for reference.</param>
/// <param name="MinorMin">Least minor diameter of the nut; NaN for a screw.</param>
public sealed record ThreadLimits(
    string Class, bool External, double Allowance, double MajorMax, double MajorMin, double PitchMax, double PitchMin, double MinorMax, double MinorMin);
