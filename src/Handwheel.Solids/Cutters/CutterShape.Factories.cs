using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cutters;

/// <content>The cutters of the trade, each from the sizes a drawer of cutters is known by.</content>
public sealed partial class CutterShape
{
    /// <summary>An end mill with a flat end.</summary>
    /// <param name="diameter">Cutting diameter, mm.</param>
    /// <param name="flute">Length of the flutes, mm.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far the cutter stands out of its holder, mm, from its end.</param>
    /// <param name="cutsToCentre">Whether an end edge reaches the axis.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not above 0.</exception>
    public static CutterShape EndMill(double diameter, double flute, double shankDiameter, double stickOut, bool cutsToCentre = true) =>
        Of(Shanked([Edge(0, diameter / 2, flute, diameter / 2)], shankDiameter, stickOut), cutsToCentre);

    /// <summary>An end mill with a hemispherical end.</summary>
    /// <param name="diameter">Cutting diameter, mm.</param>
    /// <param name="flute">Length of the flutes, mm, above half the diameter.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not above 0, or the flutes are shorter than the ball.</exception>
    public static CutterShape BallNose(double diameter, double flute, double shankDiameter, double stickOut) =>
        BullNose(diameter, diameter / 2, flute, shankDiameter, stickOut);

    /// <summary>An end mill with rounded corners.</summary>
    /// <param name="diameter">Cutting diameter, mm.</param>
    /// <param name="cornerRadius">Corner radius, mm, at most half the diameter.</param>
    /// <param name="flute">Length of the flutes, mm, not below the corner radius.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <param name="cutsToCentre">Whether an end edge reaches the axis.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not above 0, or the corner is too large.</exception>
    public static CutterShape BullNose(
        double diameter, double cornerRadius, double flute, double shankDiameter, double stickOut, bool cutsToCentre = true)
    {
        Demand.Positive(diameter);
        Demand.Positive(cornerRadius);
        Demand.Finite(flute);
        List<ProfilePiece> run = [ProfilePiece.Round((diameter / 2) - cornerRadius, cornerRadius, cornerRadius, 0, cornerRadius)];
        if (flute > cornerRadius)
        {
            run.Add(Edge(cornerRadius, diameter / 2, flute, diameter / 2));
        }

        return Of(Shanked(run, shankDiameter, stickOut), cutsToCentre);
    }

    /// <summary>A twist drill; Z 0 is its tip.</summary>
    /// <param name="diameter">Diameter, mm.</param>
    /// <param name="pointAngle">Included angle of the point, radians, up to a straight angle (a flat end).</param>
    /// <param name="flute">Length of the flutes from the tip, mm.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size or the angle is outside its range.</exception>
    public static CutterShape Drill(double diameter, double pointAngle, double flute, double shankDiameter, double stickOut) =>
        Of(Shanked(Pointed(diameter, pointAngle, 0, flute), shankDiameter, stickOut));

    /// <summary>A spotting drill: a pointed end of its full diameter.</summary>
    /// <param name="diameter">Diameter, mm.</param>
    /// <param name="pointAngle">Included angle of the point, radians.</param>
    /// <param name="flute">Length of the flutes from the tip, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size or the angle is outside its range.</exception>
    public static CutterShape SpottingDrill(double diameter, double pointAngle, double flute, double stickOut) =>
        Drill(diameter, pointAngle, flute, diameter, stickOut);

    /// <summary>A centre drill: a pilot with a point, then a cone up to the body.</summary>
    /// <param name="pilotDiameter">Pilot diameter, mm.</param>
    /// <param name="pilotLength">Length of the pilot from its tip to where the cone starts, mm.</param>
    /// <param name="pilotAngle">Included angle of the pilot's point, radians.</param>
    /// <param name="coneAngle">Included angle of the cone, radians (60 degrees in ISO 866).</param>
    /// <param name="bodyDiameter">Body diameter, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size or an angle is outside its range.</exception>
    public static CutterShape CentreDrill(
        double pilotDiameter, double pilotLength, double pilotAngle, double coneAngle, double bodyDiameter, double stickOut)
    {
        var run = Pointed(pilotDiameter, pilotAngle, 0, pilotLength);
        var top = pilotLength + ConeHeight(pilotDiameter / 2, bodyDiameter / 2, coneAngle);
        run.Add(Edge(pilotLength, pilotDiameter / 2, top, bodyDiameter / 2));
        return Of(Shanked(run, bodyDiameter, stickOut));
    }

    /// <summary>A reamer with a cutting lead.</summary>
    /// <param name="diameter">Diameter, mm.</param>
    /// <param name="lead">Length of the lead, mm; 0 for none.</param>
    /// <param name="leadRadiusLess">How much smaller the radius is at the lead's end, mm.</param>
    /// <param name="flute">Length of the flutes, mm.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutterShape Reamer(double diameter, double lead, double leadRadiusLess, double flute, double shankDiameter, double stickOut)
    {
        Demand.Positive(diameter);
        Demand.NotNegative(lead);
        List<ProfilePiece> run = [];
        if (lead > 0)
        {
            run.Add(Edge(0, (diameter / 2) - leadRadiusLess, lead, diameter / 2));
        }

        run.Add(Edge(lead, diameter / 2, flute, diameter / 2));
        return Of(Shanked(run, shankDiameter, stickOut), cutsToCentre: false);
    }

    /// <summary>A counterbore with a pilot; Z 0 is its cutting face, the pilot stands below.</summary>
    /// <param name="diameter">Cutting diameter, mm.</param>
    /// <param name="pilotDiameter">Pilot diameter, mm; 0 for none.</param>
    /// <param name="pilotLength">Pilot length, mm.</param>
    /// <param name="flute">Length of the flutes, mm.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far it stands out above its cutting face, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutterShape Counterbore(
        double diameter, double pilotDiameter, double pilotLength, double flute, double shankDiameter, double stickOut)
    {
        List<ProfilePiece> run = [];
        if (pilotDiameter > 0)
        {
            run.Add(ProfilePiece.Straight(-pilotLength, pilotDiameter / 2, 0, pilotDiameter / 2, CutterPart.Neck, cuts: false));
        }

        run.Add(Edge(0, diameter / 2, flute, diameter / 2));
        return Of(Shanked(run, shankDiameter, stickOut), cutsToCentre: false);
    }

    /// <summary>A countersink or a conical cutter for chamfers; Z 0 is its tip, or the flat at its tip.</summary>
    /// <param name="diameter">Greatest diameter, mm.</param>
    /// <param name="angle">Included angle, radians.</param>
    /// <param name="tipDiameter">Diameter of the flat at the tip, mm; 0 for a point.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <param name="flute">Length of the cutting part, mm; the cone alone when less than it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size or the angle is outside its range.</exception>
    public static CutterShape Countersink(
        double diameter, double angle, double tipDiameter, double shankDiameter, double stickOut, double flute = 0)
    {
        var cone = ConeHeight(tipDiameter / 2, diameter / 2, angle);
        List<ProfilePiece> run = [Edge(0, tipDiameter / 2, cone, diameter / 2)];
        if (flute > cone)
        {
            run.Add(Edge(cone, diameter / 2, flute, diameter / 2));
        }

        return Of(Shanked(run, shankDiameter, stickOut));
    }

    /// <summary>A chamfer mill, the same solid as a countersink.</summary>
    /// <param name="diameter">Greatest diameter, mm.</param>
    /// <param name="angle">Included angle, radians.</param>
    /// <param name="tipDiameter">Diameter of the flat at the tip, mm.</param>
    /// <param name="shankDiameter">Shank diameter, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size or the angle is outside its range.</exception>
    public static CutterShape ChamferMill(double diameter, double angle, double tipDiameter, double shankDiameter, double stickOut) =>
        Countersink(diameter, angle, tipDiameter, shankDiameter, stickOut);

    /// <summary>A dovetail cutter: widest at its end, narrowing upwards.</summary>
    /// <param name="diameter">Diameter at the end, mm.</param>
    /// <param name="angle">Angle between the flank and the end, radians (60 degrees for a 60 degree dovetail).</param>
    /// <param name="height">Height of the cutting flank, mm.</param>
    /// <param name="neckDiameter">Diameter above, mm.</param>
    /// <param name="stickOut">How far it stands out, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size or the angle is outside its range.</exception>
    public static CutterShape Dovetail(double diameter, double angle, double height, double neckDiameter, double stickOut)
    {
        Demand.Positive(height);
        Demand.Positive(angle);
        List<ProfilePiece> run = [Edge(0, diameter / 2, height, (diameter / 2) - (height / Math.Tan(angle)))];
        return Of(Shanked(run, neckDiameter, stickOut), cutsToCentre: false);
    }

    // Pieces followed by a shank up to the stick-out, when it stands above them.
    internal static List<ProfilePiece> Shanked(List<ProfilePiece> run, double shankDiameter, double stickOut, CutterPart part = CutterPart.Shank)
    {
        var top = run[^1].Z1;
        if (stickOut > top)
        {
            run.Add(ProfilePiece.Straight(top, shankDiameter / 2, stickOut, shankDiameter / 2, part, cuts: false));
        }

        return run;
    }

    internal static ProfilePiece Edge(double z0, double r0, double z1, double r1) => ProfilePiece.Straight(z0, r0, z1, r1);

    private static double ConeHeight(double from, double to, double angle)
    {
        if (!(angle > 0 && angle < Math.PI))
        {
            throw new ArgumentOutOfRangeException(nameof(angle), angle, "An included angle lies between 0 and a straight angle.");
        }

        return (to - from) / Math.Tan(angle / 2);
    }

    private static List<ProfilePiece> Pointed(double diameter, double pointAngle, double tipRadius, double flute)
    {
        Demand.Positive(diameter);
        if (pointAngle == Math.PI)
        {
            return [Edge(0, diameter / 2, flute, diameter / 2)];
        }

        var cone = ConeHeight(tipRadius, diameter / 2, pointAngle);
        List<ProfilePiece> run = [Edge(0, tipRadius, cone, diameter / 2)];
        if (flute > cone)
        {
            run.Add(Edge(cone, diameter / 2, flute, diameter / 2));
        }

        return run;
    }
}
