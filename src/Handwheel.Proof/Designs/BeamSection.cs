using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Designs;

/// <summary>One upright section of a part: its second moment about its own middle and the farthest fibre. mm4, mm.</summary>
/// <param name="Inertia">Second moment.</param>
/// <param name="Farthest">From the middle to the farthest fibre.</param>
internal readonly record struct BeamSection(double Inertia, double Farthest)
{
    private const int Lines = 160;

    /// <summary>The section square to a way in plan, through a place, sounded on upright lines.</summary>
    /// <param name="part">The part.</param>
    /// <param name="at">A place of it in plan.</param>
    /// <param name="way">Unit direction along the beam.</param>
    /// <param name="across">Whether it is bent in plan, else along Z.</param>
    /// <returns>The section; 0 where there is no metal.</returns>
    public static BeamSection At(ISolid part, Point2 at, Point2 way, bool across)
    {
        var box = part.Bounds;
        var reach = box.Min.Plan.DistanceTo(box.Max.Plan);
        var found = new List<(double Y, double From, double To)>();

        // First wide, to find where metal is; then within that.
        var (low, high) = Wide(part, at, way, reach);
        var step = (high - low) / Lines;
        for (var i = 0; i < Lines && high > low; i++)
        {
            var y = low + ((i + 0.5) * step);
            foreach (var span in part.Sound(Line3.AlongZ(at.X - (way.Y * y), at.Y + (way.X * y))))
            {
                found.Add((y, span.From, span.To));
            }
        }

        var area = found.Sum(f => (f.To - f.From) * step);
        if (!(area > 1e-9))
        {
            return default;
        }

        return across ? Plan(found, area, step) : Upright(found, area, step);
    }

    private static (double Low, double High) Wide(ISolid part, Point2 at, Point2 way, double reach)
    {
        const int coarse = 400;
        double low = double.PositiveInfinity, high = double.NegativeInfinity, step = 2 * reach / coarse;
        for (var i = 0; i < coarse; i++)
        {
            var y = -reach + ((i + 0.5) * step);
            if (part.Sound(Line3.AlongZ(at.X - (way.Y * y), at.Y + (way.X * y))).Count > 0)
            {
                (low, high) = (Math.Min(low, y - step), Math.Max(high, y + step));
            }
        }

        return (low, high);
    }

    private static BeamSection Upright(List<(double Y, double From, double To)> found, double area, double step)
    {
        var middle = found.Sum(f => ((f.To * f.To) - (f.From * f.From)) / 2 * step) / area;
        var inertia = found.Sum(f => (Math.Pow(f.To - middle, 3) - Math.Pow(f.From - middle, 3)) / 3 * step);
        return new BeamSection(inertia, Math.Max(found.Max(f => f.To) - middle, middle - found.Min(f => f.From)));
    }

    private static BeamSection Plan(List<(double Y, double From, double To)> found, double area, double step)
    {
        var middle = found.Sum(f => f.Y * (f.To - f.From) * step) / area;
        var inertia = found.Sum(f => (((f.Y - middle) * (f.Y - middle)) + (step * step / 12)) * (f.To - f.From) * step);
        return new BeamSection(inertia, Math.Max(found.Max(f => f.Y) - middle, middle - found.Min(f => f.Y)) + (step / 2));
    }
}
