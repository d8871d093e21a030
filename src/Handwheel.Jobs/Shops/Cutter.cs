using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Shops;

/// <summary>One cutter as it is held. Millimetres, radians; Z 0 at its lowest cutting point.</summary>
public sealed record Cutter
{
    /// <summary>Its name in the shop.</summary>
    public required string Name { get; init; }

    /// <summary>Its kind.</summary>
    public required CutterKind Kind { get; init; }

    /// <summary>Nominal diameter (a broach's across flats, a tap's major diameter).</summary>
    public required double Across { get; init; }

    /// <summary>True diameter, measured; the nominal where it was not.</summary>
    public required double TrueAcross { get; init; }

    /// <summary>Teeth (flutes).</summary>
    public int Teeth { get; init; } = 2;

    /// <summary>What it is made of: <c>hss</c>, <c>carbide</c>, <c>tool steel</c>.</summary>
    public string Material { get; init; } = "hss";

    /// <summary>Length that cuts, from the lowest cutting point up.</summary>
    public double Flute { get; init; }

    /// <summary>Shank diameter.</summary>
    public double Shank { get; init; }

    /// <summary>Length it stands out of its holder.</summary>
    public double Out { get; init; }

    /// <summary>Whether its teeth reach the centre, so that it may be plunged.</summary>
    public bool CutsToCentre { get; init; }

    /// <summary>Included angle of a point, countersink, chamfer or dovetail; 0 where it has none.</summary>
    public double PointAngle { get; init; }

    /// <summary>Length of a reamer's or tap's lead.</summary>
    public double Lead { get; init; }

    /// <summary>Corner radius of a bull nose.</summary>
    public double CornerRadius { get; init; }

    /// <summary>Thickness of a saw, woodruff or T-slot cutter.</summary>
    public double Thick { get; init; }

    /// <summary>Diameter of the arbor above a saw, or of a neck.</summary>
    public double Arbor { get; init; }

    /// <summary>How far the arbor's screw stands below a saw.</summary>
    public double ScrewBelow { get; init; }

    /// <summary>Diameter of that screw's head; 0: the arbor's.</summary>
    public double ScrewAcross { get; init; }

    /// <summary>Tip or pilot diameter (centre drill, chamfer cutter's flat tip, counterbore's pilot).</summary>
    public double Tip { get; init; }

    /// <summary>Pitch of a tap.</summary>
    public double Pitch { get; init; }

    /// <summary>Sides of a broach; 4 for a square.</summary>
    public int Sides { get; init; }

    /// <summary>A broach&#39;s other side where it is a rectangle; 0 a regular polygon.</summary>
    public double OtherSide { get; init; }

    /// <summary>Diameter of the holder or chuck above it; 0: the mill&#39;s nose.</summary>
    public double HolderAcross { get; init; }

    /// <summary>Length of that holder below the nose.</summary>
    public double HolderLong { get; init; }

    /// <summary>Where it was typed.</summary>
    public required SourceSpan Where { get; init; }
}
