using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cutters;

/// <content>Saws, undercutting and hollow cutters.</content>
public sealed partial class CutterShape
{
    /// <summary>A slitting saw on an arbor; Z 0 is its lower face, the screw that holds it stands below.</summary>
    /// <param name="diameter">Saw diameter, mm.</param>
    /// <param name="thickness">Saw thickness, mm.</param>
    /// <param name="arborDiameter">Diameter of the arbor above the saw, mm.</param>
    /// <param name="arborLength">Length of the arbor above the saw, mm.</param>
    /// <param name="screwStandsBelow">How far the screw stands below the saw, mm; 0 for flush.</param>
    /// <param name="screwDiameter">Diameter of the screw's head, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutterShape Saw(
        double diameter, double thickness, double arborDiameter, double arborLength, double screwStandsBelow, double screwDiameter)
    {
        Demand.Positive(thickness);
        Demand.NotNegative(screwStandsBelow);
        List<ProfilePiece> run = [];
        if (screwStandsBelow > 0)
        {
            run.Add(ProfilePiece.Straight(-screwStandsBelow, screwDiameter / 2, 0, screwDiameter / 2, CutterPart.Screw, cuts: false));
        }

        run.Add(Edge(0, diameter / 2, thickness, diameter / 2));
        return Of(Shanked(run, arborDiameter, thickness + arborLength, CutterPart.Arbor), cutsToCentre: false);
    }

    /// <summary>A T-slot cutter: a disc on a narrower neck.</summary>
    /// <param name="diameter">Disc diameter, mm.</param>
    /// <param name="thickness">Disc thickness, mm.</param>
    /// <param name="neckDiameter">Neck diameter, mm.</param>
    /// <param name="neckLength">Neck length above the disc, mm.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutterShape TSlot(
        double diameter, double thickness, double neckDiameter, double neckLength, double shankDiameter, double stickOut)
    {
        Demand.Positive(neckLength);
        List<ProfilePiece> run =
        [
            Edge(0, diameter / 2, thickness, diameter / 2),
            ProfilePiece.Straight(thickness, neckDiameter / 2, thickness + neckLength, neckDiameter / 2, CutterPart.Neck, cuts: false),
        ];
        return Of(Shanked(run, shankDiameter, stickOut), cutsToCentre: false);
    }

    /// <summary>A Woodruff keyseat cutter, the same solid as a T-slot cutter.</summary>
    /// <param name="diameter">Disc diameter, mm.</param>
    /// <param name="width">Disc thickness, mm.</param>
    /// <param name="neckDiameter">Neck diameter, mm.</param>
    /// <param name="neckLength">Neck length above the disc, mm.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutterShape Woodruff(
        double diameter, double width, double neckDiameter, double neckLength, double shankDiameter, double stickOut) =>
        TSlot(diameter, width, neckDiameter, neckLength, shankDiameter, stickOut);

    /// <summary>A boring bar in a boring head: the tooth's ring cuts, the bar inside it does not.</summary>
    /// <param name="diameter">Diameter bored, mm.</param>
    /// <param name="barDiameter">Diameter of the bar, mm.</param>
    /// <param name="tooth">Height of the cutting tooth, mm.</param>
    /// <param name="stickOut">How far the bar stands out, mm.</param>
    /// <param name="innerDiameter">Diameter inside which the turning tooth leaves metal standing, mm; 0 when it cuts to the bar's axis.</param>
    /// <param name="noseRadius">Radius of the tooth's nose, mm; 0 for sharp corners.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutterShape BoringBar(
        double diameter, double barDiameter, double tooth, double stickOut, double innerDiameter = 0, double noseRadius = 0) =>
        Of(Shanked(Tooth(diameter, innerDiameter, tooth, noseRadius), barDiameter, stickOut, CutterPart.Neck), cutsToCentre: false);

    /// <summary>A cup wheel: a ring.</summary>
    /// <param name="diameter">Outer diameter, mm.</param>
    /// <param name="innerDiameter">Inner diameter of the rim, mm.</param>
    /// <param name="rimHeight">Height of the rim, mm.</param>
    /// <param name="bodyHeight">Height of the closed body above the rim, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutterShape CupWheel(double diameter, double innerDiameter, double rimHeight, double bodyHeight)
    {
        List<ProfilePiece> run = [Edge(0, diameter / 2, rimHeight, diameter / 2).Hollow(innerDiameter / 2, innerDiameter / 2)];
        return Of(Shanked(run, diameter, rimHeight + bodyHeight, CutterPart.Arbor), cutsToCentre: false);
    }

    /// <summary>A fly cutter: the ring swept by its single tooth, under a body.</summary>
    /// <param name="diameter">Diameter the tooth's corner sweeps, mm.</param>
    /// <param name="innerDiameter">Diameter the tooth's inner end sweeps, mm.</param>
    /// <param name="toothBelow">How far the tooth stands below the body, mm.</param>
    /// <param name="bodyDiameter">Body diameter, mm.</param>
    /// <param name="bodyHeight">Body height, mm.</param>
    /// <param name="noseRadius">Radius of the tooth's nose, mm; 0 for sharp corners.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutterShape FlyCutter(
        double diameter, double innerDiameter, double toothBelow, double bodyDiameter, double bodyHeight, double noseRadius = 0) =>
        Of(
            Shanked(Tooth(diameter, innerDiameter, toothBelow, noseRadius), bodyDiameter, toothBelow + bodyHeight, CutterPart.Chuck),
            cutsToCentre: false);

    // The ring a single tooth sweeps; its nose rounded on both sides, or on the outer one alone where it cuts to the axis.
    private static List<ProfilePiece> Tooth(double diameter, double innerDiameter, double height, double nose)
    {
        double r = diameter / 2, inner = innerDiameter / 2;
        Demand.NotNegative(nose);
        if (nose == 0)
        {
            return [Edge(0, r, height, r).Hollow(inner, inner)];
        }

        if (nose > height || (inner > 0 ? 2 * nose > r - inner : nose > r))
        {
            throw new ArgumentOutOfRangeException(nameof(nose), nose, "A nose radius is at most the tooth's height and half its width.");
        }

        var tip = ProfilePiece.Round(r - nose, nose, nose, 0, nose);
        List<ProfilePiece> run = [inner > 0 ? tip.HollowRound(inner + nose, nose, nose, bulges: false) : tip];
        if (height > nose)
        {
            run.Add(Edge(nose, r, height, r).Hollow(inner, inner));
        }

        return run;
    }
}
