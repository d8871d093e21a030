namespace Handwheel.Jobs.Measuring;

/// <summary>Where an axis or a face of a feature stands along a direction: as aimed, and the least and greatest found.</summary>
/// <param name="Aimed">As aimed, millimetres.</param>
/// <param name="Tally">As found.</param>
/// <param name="IsAxis">Whether it is an axis rather than a face.</param>
/// <param name="Facing">Which way a face looks along the direction: 1 or -1; 0 for an axis.</param>
internal sealed record Stand(double Aimed, Tally Tally, bool IsAxis, int Facing);
