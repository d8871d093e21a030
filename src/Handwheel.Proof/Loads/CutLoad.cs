using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Loads;

/// <summary>What one stroke asks of its cutter, the machine and what holds the work, at its worst place. N, mm, kW; estimates.</summary>
internal sealed record CutLoad
{
    /// <summary>The stroke.</summary>
    public required Stroke Stroke { get; init; }

    /// <summary>The cutter&#39;s lowest cutting point at that place, part frame.</summary>
    public required Point3 At { get; init; }

    /// <summary>Whether the cutter goes down into metal (drill, plunge), not along it.</summary>
    public bool Plunges { get; init; }

    /// <summary>Depth of metal along the cutter&#39;s axis; for a plunge the width of its edge that cuts.</summary>
    public double Depth { get; init; }

    /// <summary>Width of metal across the feed.</summary>
    public double Width { get; init; }

    /// <summary>Chip a tooth, mm; a drill&#39;s feed a turn.</summary>
    public double Chip { get; init; }

    /// <summary>Force across the cutter&#39;s axis that bends it.</summary>
    public double SideN { get; init; }

    /// <summary>Force along the axis: a drill&#39;s thrust; the lift of an end mill&#39;s helix.</summary>
    public double AlongN { get; init; }

    /// <summary>Torque on the cutter, N m.</summary>
    public double TorqueNm { get; init; }

    /// <summary>Power at the cutter.</summary>
    public double PowerKw { get; init; }
}
