using Handwheel.Jobs.Designs;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Metals;
using static Handwheel.Proof.Designs.DesignAnswers;

namespace Handwheel.Proof.Designs;

/// <summary>A square or hexagon socket driven by a shaft: pressure on its flats, twist of the shaft.</summary>
internal static class DriveCheck
{
    /// <summary>Works it out.</summary>
    /// <param name="site">What it is checked on.</param>
    /// <param name="line">The line.</param>
    /// <returns>The result.</returns>
    public static DesignResult Of(DesignSite site, DriveDesign line)
    {
        var answers = new DesignAnswers(site.Unit);
        var drawn = site.Least.Find(line.Feature);
        var length = line.Long?.Value ?? (drawn is null ? 0 : site.RoundHole(drawn, 1 / Math.Cos(Math.PI / line.Sides)));
        if (!(length > 0))
        {
            return Verdicts.Unworkable(line, answers, "the drawing has no metal round the socket; say '6 long'");
        }

        var shaft = line.Of is null ? MetalTable.Find("mild steel")! : site.MetalOf(line.Of);
        var flats = line.Flats.Lower;
        var pressure = PolygonDrives.PressureMPa(line.Torque.Value, line.Sides, flats, length);
        var twist = PolygonDrives.TwistMPa(line.Torque.Value, line.Sides, flats);
        var (hub, bar) = (DesignSite.Strength(site.Metal), 0.577 * DesignSite.Strength(shaft));
        var rule = line.Sides == 4 ? "3 T / (s^2 L)" : "6 T / (s^2 L)";
        answers.Add("pressure at the corners", pressure, "MPa", PolygonDrives.PressureBasis, "a third; more where the shaft is loose in it", $"{rule} = T {answers.T(line.Torque.Value / 1000)}, s {answers.L(flats)}, L {answers.L(length)}; {site.Metal.Name} gives way at {N(hub)} MPa");
        answers.Add($"twist in the shaft, {shaft.Name}", twist, "MPa", PolygonDrives.TwistBasis, "15 %", $"T / ({(line.Sides == 4 ? "0.208" : "0.188")} s^3); it gives way at 0.577 x yield = {N(bar)} MPa");
        return hub / pressure <= bar / twist
            ? Verdicts.Margin(line, answers, hub / pressure, $"the flats give way first, {N(pressure)} MPa against {N(hub)} MPa", "A deeper or larger socket, or a bush of a harder metal.")
            : Verdicts.Margin(line, answers, bar / twist, $"the shaft twists first, {N(twist)} MPa against {N(bar)} MPa", "A larger square, or a stronger shaft.");
    }
}
