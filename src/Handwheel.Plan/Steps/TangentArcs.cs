using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Steps;

// The two rounds an outline runs tangent to, with the sums that tell where it leaves them: acos((R - r)/L) either side of the line of centres, and
// the flanks at asin((R - r)/L) to it.
internal sealed class TangentArcs
{
    private const double Same = 1e-6;

    private readonly string rise;
    private readonly double axis;
    private readonly double ratio;

    private TangentArcs(PlanEdge first, PlanEdge second, Figures figures)
    {
        var apart = Plane.Distance(first.Centre, second.Centre);
        ratio = (first.Radius - second.Radius) / apart;
        axis = Degrees(Plane.Angle(first.Centre, second.Centre));
        rise = $"({figures.L(2 * first.Radius)}/2 - {figures.L(2 * second.Radius)}/2)/{figures.L(apart)}";
    }

    // The rounds of an outline, the named one first (else the larger); null where it is not two rounds and their flanks.
    internal static TangentArcs? Of(PlanOutline outline, string? name, Figures figures)
    {
        var arcs = outline.Edges.Where(e => e.IsArc).OrderBy(e => string.Equals(e.Name, name, StringComparison.Ordinal) ? 0 : 1).ThenByDescending(e => e.Radius).ToArray();
        return arcs.Length == 2 && outline.Edges.Count == 4 ? new(arcs[0], arcs[1], figures) : null;
    }

    // Minus the angle at which the arc meets a flank, with its sum; the bare number where none fits.
    internal (string Sum, double Degrees) Touch(double degrees)
    {
        var acos = Math.Acos(ratio) * Plane.ToDegrees;
        return Alike(degrees, axis + acos) ? (axis == 0 ? $"-acos({rise})" : $"-({Figures.Deg(axis)} + acos({rise}))", -(axis + acos))
            : Alike(degrees, axis - acos) ? (axis == 0 ? $"acos({rise})" : $"-({Figures.Deg(axis)} - acos({rise}))", -(axis - acos))
            : ("-" + Figures.Deg(degrees), -degrees);
    }

    // The turn that lays a flank along X, with its sum; the bare number where none fits.
    internal (string Sum, double Degrees) Lay(double degrees)
    {
        var asin = Math.Asin(ratio) * Plane.ToDegrees;
        foreach (var half in new[] { 0.0, 180 })
        {
            var back = Positive(half - axis);
            var rest = back == 0 ? string.Empty : " + " + Figures.Deg(back);
            if (Alike(degrees, back + asin))
            {
                return ($"asin({rise}){rest}", back + asin);
            }

            if (Alike(degrees, back - asin))
            {
                return ($"-asin({rise}){rest}", back - asin);
            }
        }

        return (Figures.Deg(degrees), degrees);
    }

    private static bool Alike(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 360)) < Same;

    private static double Degrees(double radians) => Positive(radians * Plane.ToDegrees);

    private static double Positive(double degrees)
    {
        var rest = ((degrees % 360) + 360) % 360;
        return rest is < 1e-9 or > 360 - 1e-9 ? 0 : rest;
    }
}
