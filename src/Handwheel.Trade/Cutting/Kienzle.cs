namespace Handwheel.Trade.Cutting;

/// <summary>Cutting force and power by specific cutting force.</summary>
/// <remarks>
/// kc = kc1.1 h^-mc (Kienzle; Dubbel, Degner/Lutze/Smejkal). Tabulated constants differ by 10 to 30 %; a worn edge adds 30 to 50 %, zero or negative rake
/// 10 to 20 %. Trusted for chips of 0.05 to 2 mm; thinner chips rub and cost more than the formula says. Lengths mm, forces N, speeds m/min, power kW.
/// </remarks>
public static class Kienzle
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("Kienzle, kc = kc1.1 h^-mc (Dubbel; Degner/Lutze/Smejkal)", Evidence.StandardFormula);

    /// <summary>Specific cutting force.</summary>
    /// <param name="kc11">kc1.1, N/mm^2.</param>
    /// <param name="mc">Exponent.</param>
    /// <param name="chipMm">Chip thickness, mm, over 0.</param>
    /// <returns>N/mm^2.</returns>
    public static double Specific(double kc11, double mc, double chipMm) => kc11 * Math.Pow(chipMm, -mc);

    /// <summary>Turning.</summary>
    /// <param name="kc11">kc1.1, N/mm^2.</param>
    /// <param name="mc">Exponent.</param>
    /// <param name="depthMm">Depth of cut, mm.</param>
    /// <param name="feedMm">Feed, mm per turn.</param>
    /// <param name="leadDeg">Angle of the cutting edge to the feed, degrees (90 for a knife tool).</param>
    /// <param name="speedMPerMin">Cutting speed, m/min.</param>
    /// <returns>Force and power.</returns>
    public static CuttingForce Turning(double kc11, double mc, double depthMm, double feedMm, double leadDeg, double speedMPerMin)
    {
        var sine = Math.Sin(leadDeg * Math.PI / 180);
        var chip = feedMm * sine;
        var width = depthMm / sine;
        var specific = Specific(kc11, mc, chip);
        var force = width * chip * specific;
        return new CuttingForce(chip, width, specific, force, force * speedMPerMin / 60_000);
    }

    /// <summary>Drilling from the solid, two lips.</summary>
    /// <param name="kc11">kc1.1, N/mm^2.</param>
    /// <param name="mc">Exponent.</param>
    /// <param name="diameterMm">Drill, mm.</param>
    /// <param name="feedMm">Feed, mm per turn.</param>
    /// <param name="pointDeg">Point angle, degrees.</param>
    /// <param name="rpm">Turns a minute.</param>
    /// <returns>Torque, thrust, power.</returns>
    public static DrillingForce Drilling(double kc11, double mc, double diameterMm, double feedMm, double pointDeg, double rpm)
    {
        var sine = Math.Sin(pointDeg * Math.PI / 360);
        var chip = feedMm / 2 * sine;
        var specific = Specific(kc11, mc, chip);
        var torque = specific * feedMm * diameterMm * diameterMm / 8;
        var lip = specific * feedMm / 2 * diameterMm / 2;
        return new DrillingForce(chip, specific, torque / 1000, 2 * lip * sine, torque / 1000 * rpm * 2 * Math.PI / 60_000);
    }

    /// <summary>Milling with the flank of an end mill, straight feed.</summary>
    /// <param name="kc11">kc1.1, N/mm^2.</param>
    /// <param name="mc">Exponent.</param>
    /// <param name="cutterMm">Cutter diameter, mm.</param>
    /// <param name="depthMm">Axial depth, mm.</param>
    /// <param name="widthMm">Radial width of cut, mm, up to the diameter.</param>
    /// <param name="perToothMm">Feed a tooth, mm.</param>
    /// <param name="teeth">Teeth.</param>
    /// <param name="rpm">Turns a minute.</param>
    /// <returns>Chip, force, power.</returns>
    public static MillingForce Milling(
        double kc11, double mc, double cutterMm, double depthMm, double widthMm, double perToothMm, int teeth, double rpm)
    {
        var width = Math.Min(widthMm, cutterMm);
        var angle = Math.Acos(1 - (2 * width / cutterMm));
        var mean = perToothMm * (1 - Math.Cos(angle)) / angle;
        var greatest = perToothMm * (angle >= Math.PI / 2 ? 1 : Math.Sin(angle));
        var specific = Specific(kc11, mc, mean);
        var tooth = Specific(kc11, mc, greatest) * depthMm * greatest;
        var removal = depthMm * width * perToothMm * teeth * rpm / 1000;
        var averaged = specific * depthMm * mean * teeth * angle / (2 * Math.PI);
        var meshing = Math.Max(1, teeth * angle / (2 * Math.PI));
        var bending = tooth * Math.Sqrt(1 + (0.4 * 0.4)) * Math.Min(meshing, 2);
        return new MillingForce(
            angle * 180 / Math.PI, mean, greatest, specific, tooth, averaged, bending, removal, MillingPowerKw(depthMm, width, perToothMm * teeth * rpm, specific));
    }

    /// <summary>Power of milling: ap ae vf kc / 60e6.</summary>
    /// <param name="depthMm">Axial depth, mm.</param>
    /// <param name="widthMm">Radial width, mm.</param>
    /// <param name="feedMmPerMin">Feed, mm/min.</param>
    /// <param name="specific">kc, N/mm^2.</param>
    /// <returns>kW.</returns>
    public static double MillingPowerKw(double depthMm, double widthMm, double feedMmPerMin, double specific) =>
        depthMm * widthMm * feedMmPerMin * specific / 60e6;

    /// <summary>Torque of tapping: kc P^2 D / 8, kc at a chip a quarter of the pitch thick over the tap's lead.</summary>
    /// <param name="kc11">kc1.1, N/mm^2.</param>
    /// <param name="mc">Exponent.</param>
    /// <param name="majorMm">Major diameter, mm.</param>
    /// <param name="pitchMm">Pitch, mm.</param>
    /// <returns>N m; a dull tap or a hole drilled small takes twice that.</returns>
    public static double TapTorqueNm(double kc11, double mc, double majorMm, double pitchMm) =>
        Specific(kc11, mc, pitchMm / 8) * pitchMm * pitchMm * majorMm / 8000;

    /// <summary>Force to push a form broach: the area it takes off in one push times kc, before friction.</summary>
    /// <param name="kc11">kc1.1, N/mm^2.</param>
    /// <param name="mc">Exponent.</param>
    /// <param name="areaMm2">Area taken off, mm^2, seen along the push.</param>
    /// <param name="thickMm">Thickness of the piece taken off, mm.</param>
    /// <returns>N.</returns>
    public static double PushN(double kc11, double mc, double areaMm2, double thickMm) => areaMm2 * Specific(kc11, mc, thickMm);
}
