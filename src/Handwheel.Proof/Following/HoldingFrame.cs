using Handwheel.Jobs.Moves;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Following;

/// <summary>
/// How places of the part and places of a holding belong together. The <i>work frame</i> is the holding frame with the rotary at theta 0, fixed to the
/// work: there a cutter goes round a turning work on an arc the other way. Millimetres, degrees at the border.
/// </summary>
internal sealed class HoldingFrame
{
    private readonly RotaryFacts? rotary;

    /// <summary>The frames of one set-up.</summary>
    /// <param name="setup">Its facts.</param>
    public HoldingFrame(SetupFacts setup)
    {
        rotary = setup.Rotary;
        PartToWork = PoseOf(setup);
        WorkToPart = PartToWork.Inverse();
    }

    /// <summary>From the part frame to the holding frame at theta 0.</summary>
    public Pose PartToWork { get; }

    /// <summary>Back.</summary>
    public Pose WorkToPart { get; }

    /// <summary>Whether there is an axis that turns.</summary>
    public bool Turns => rotary is not null;

    /// <summary>Whether it lies along X (an indexer).</summary>
    public bool Lies => rotary is { Lies: true };

    /// <summary>The rotary&#39;s axis seen from above.</summary>
    public Point2 Centre => rotary is { } r ? new Point2(r.X, r.Y) : default;

    /// <summary>From the work frame to the holding frame at a theta.</summary>
    /// <param name="degrees">Theta, degrees.</param>
    /// <returns>The placement.</returns>
    public Pose Turned(double degrees)
    {
        if (rotary is not { } r || degrees == 0)
        {
            return Pose.Identity;
        }

        var angle = Radians(degrees);
        return r.Lies ? Pose.TurnAboutX(angle, new Point3(0, r.Y, r.Z)) : Pose.TurnAboutZ(angle, new Point3(r.X, r.Y, 0));
    }

    /// <summary>From the part frame to the holding frame at a theta.</summary>
    /// <param name="degrees">Theta, degrees.</param>
    /// <returns>The placement.</returns>
    public Pose PartAt(double degrees) => PartToWork.Then(Turned(degrees));

    /// <summary>Degrees to radians, whole quarter turns kept exact by the poses.</summary>
    /// <param name="degrees">Degrees.</param>
    /// <returns>Radians.</returns>
    public static double Radians(double degrees) => degrees / 180 * Math.PI;

    private static Pose PoseOf(SetupFacts setup)
    {
        const double Quarter = Math.PI / 2;
        var up = setup.Up switch
        {
            "underside" => Pose.TurnAboutX(Math.PI),
            "front" => Pose.TurnAboutX(-Quarter),
            "back" => Pose.TurnAboutX(Quarter),
            "right" => Pose.TurnAboutY(-Quarter),
            "left" => Pose.TurnAboutY(Quarter),
            _ => Pose.Identity,
        };
        return up
            .Then(Pose.TurnAboutZ(Radians(setup.Turn)))
            .Then(Pose.TurnAboutX(Radians(setup.TiltX)))
            .Then(Pose.TurnAboutY(Radians(setup.TiltY)))
            .Then(Pose.Translation(new Vector3(setup.PartOrigin.X, setup.PartOrigin.Y, setup.PartOrigin.Z)));
    }
}
