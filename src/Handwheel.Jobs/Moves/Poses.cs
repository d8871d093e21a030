using Handwheel.Jobs.Holdings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Moves;

/// <summary>Where the part lies in a holding: side up, then turn about Z, then tilt about holding X, then about holding Y, then the shift, then the rotary&#39;s or indexer&#39;s turn.</summary>
public static class Poses
{
    /// <summary>From the part frame to the holding frame at theta 0.</summary>
    /// <param name="setup">The set-up facts.</param>
    /// <returns>The placement.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="setup"/> is null.</exception>
    /// <exception cref="ArgumentException">The side up has a name that is none of the six.</exception>
    public static Pose Of(SetupFacts setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        return Turned(SideUp(setup.Up), Radians(setup.Turn), Radians(setup.TiltX), Radians(setup.TiltY))
            .Then(Pose.Translation(new(setup.PartOrigin.X, setup.PartOrigin.Y, setup.PartOrigin.Z)));
    }

    /// <summary>From the part frame to the holding frame with the rotary or indexer at an angle.</summary>
    /// <param name="setup">The set-up facts.</param>
    /// <param name="theta">Theta, degrees, counterclockwise from above (an indexer: as seen from +X).</param>
    /// <returns>The placement.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="setup"/> is null.</exception>
    /// <exception cref="ArgumentException">The side up has a name that is none of the six.</exception>
    public static Pose At(SetupFacts setup, double theta) => Of(setup).Then(Turn(setup, theta));

    /// <summary>The turn of the rotary or indexer alone, within the holding frame.</summary>
    /// <param name="setup">The set-up facts.</param>
    /// <param name="theta">Theta, degrees.</param>
    /// <returns>The placement; none where nothing turns.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="setup"/> is null.</exception>
    public static Pose Turn(SetupFacts setup, double theta)
    {
        ArgumentNullException.ThrowIfNull(setup);
        if (setup.Rotary is not { } rotary || theta == 0)
        {
            return Pose.Identity;
        }

        return rotary.Lies
            ? Pose.TurnAboutX(Radians(theta), new(0, rotary.Y, rotary.Z))
            : Pose.TurnAboutZ(Radians(theta), new(rotary.X, rotary.Y, 0));
    }

    /// <summary>The turns of a holding as typed, before its shift: what its zero steps then move.</summary>
    /// <param name="holding">The holding.</param>
    /// <returns>The placement; the part&#39;s origin stays where it is.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="holding"/> is null.</exception>
    public static Pose BeforeShift(Holding holding)
    {
        ArgumentNullException.ThrowIfNull(holding);
        return Turned(SideUp(NameOf(holding.Up)), holding.Turn, holding.TiltX, holding.TiltY);
    }

    /// <summary>A side&#39;s name as set-up facts have it.</summary>
    /// <param name="up">The side.</param>
    /// <returns><c>top</c>, <c>underside</c>, <c>front</c>, <c>back</c>, <c>left</c> or <c>right</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The side is none of the six.</exception>
    public static string NameOf(FaceUp up) => up switch
    {
        FaceUp.Top => "top",
        FaceUp.Underside => "underside",
        FaceUp.Front => "front",
        FaceUp.Back => "back",
        FaceUp.Left => "left",
        FaceUp.Right => "right",
        _ => throw new ArgumentOutOfRangeException(nameof(up), up, "A part has six sides."),
    };

    /// <summary>Whether a name is one of the six sides.</summary>
    /// <param name="up">The name.</param>
    /// <returns>True where <see cref="Of"/> knows it.</returns>
    public static bool IsSide(string? up) => up is "top" or "underside" or "front" or "back" or "left" or "right";

    private static Pose SideUp(string up) => up switch
    {
        "top" => Pose.Identity,
        "underside" => Pose.TurnAboutX(Math.PI),
        "front" => Pose.TurnAboutX(-Math.PI / 2),
        "back" => Pose.TurnAboutX(Math.PI / 2),
        "right" => Pose.TurnAboutY(-Math.PI / 2),
        "left" => Pose.TurnAboutY(Math.PI / 2),
        _ => throw new ArgumentException($"No side is called '{up}'.", nameof(up)),
    };

    private static Pose Turned(Pose side, double turn, double tiltX, double tiltY) =>
        side.Then(Pose.TurnAboutZ(turn)).Then(Pose.TurnAboutX(tiltX)).Then(Pose.TurnAboutY(tiltY));

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
