using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>The volume a cut removes.</summary>
public static class Removed
{
    /// <summary>Volume of metal a cut takes off, by soundings along Z on a lattice doubled until two answers agree within 0.02 %.</summary>
    /// <param name="before">The metal before the cut.</param>
    /// <param name="cut">The cut.</param>
    /// <returns>Volume, mm3, to 0.1 %, and the difference of the last two answers.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static (double Volume, double Uncertain) By(ISolid before, ISolid cut)
    {
        Solid metal = Solid.From(before), gone = Solid.From(cut);
        var box = metal.Bounds.Intersection(gone.Bounds);
        if (box.IsEmpty || !double.IsFinite(box.Size.Length))
        {
            return (0, 0);
        }

        var coarse = On(metal, gone, box, 48);
        for (var n = 96; ; n *= 2)
        {
            var fine = On(metal, gone, box, n);
            var slip = Math.Abs(fine - coarse);
            if (slip <= 2e-4 * fine || n >= 768)
            {
                return (fine, slip);
            }

            coarse = fine;
        }
    }

    private static double On(Solid metal, Solid gone, Box3 box, int n)
    {
        using var first = SpanPool.Rent(out var a);
        using var second = SpanPool.Rent(out var b);
        double sum = 0, sx = box.Size.X / n, sy = box.Size.Y / n;
        for (var i = 0; i < n; i++)
        {
            // Rows shifted by the golden ratio, so that edges along an axis do not fall between all lines at once.
            var slide = i * 0.6180339887498949 % 1;
            for (var j = 0; j < n; j++)
            {
                var line = Line3.AlongZ(
                    box.Min.X + ((i + ((j * 0.6180339887498949) % 1)) * sx),
                    box.Min.Y + ((j + slide) * sy));
                b.Clear();
                gone.Sound(line, closed: false, b);
                if (b.Count == 0)
                {
                    continue;
                }

                b.Normalise();
                a.Clear();
                metal.Sound(line, closed: true, a);
                a.Normalise();
                a.Intersect(b);
                foreach (ref readonly var span in a.Items)
                {
                    sum += span.Length;
                }
            }
        }

        return sum * sx * sy;
    }
}
