namespace Handwheel.Proof.Measuring;

/// <summary>Where an axis or a face of a feature stands along a direction: as aimed, and the least and greatest found.</summary>
/// <param name="Aimed">As aimed, millimetres.</param>
/// <param name="Tally">As found.</param>
/// <param name="IsAxis">Whether it is an axis rather than a face.</param>
internal sealed record Stand(double Aimed, Tally Tally, bool IsAxis);
