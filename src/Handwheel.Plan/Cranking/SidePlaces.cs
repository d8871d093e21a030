using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Cranking;

// Where a finder may meet a side of the metal as it stands: the outermost metal along an axis, well below its top and off its corners where there is room.
internal sealed class SidePlaces(HeldMetal metal, bool alongX, bool high)
{
    // How far a finder's end goes below the top of a side, millimetres: two or three, common practice, no source.
    private const double Below = 2.5;
    private const int Heights = 60;
    private const int Across = 8;
    private const double Same = 1e-6;

    // The highest place looked at is this far under the top, the lowest this far over what holds, millimetres: clear of rounding and of an edge's burr.
    private const double Under = 0.05;
    private const double Over = 0.3;

    private readonly record struct Met(double Place, double Across, double Height);

    // Place along the axis, place across it, height of the finder's end; null where there is no metal above what holds.
    internal (double Place, double Across, double Height)? Outermost(double? holds)
    {
        var box = metal.Box(0);
        var low = holds ?? box.Min.Z;
        var (from, to) = alongX ? (box.Min.Y, box.Max.Y) : (box.Min.X, box.Max.X);
        var top = metal.Heights().High;
        List<Met> met = [];
        for (var i = 0; i <= Heights; i++)
        {
            var z = top - Under - ((top - Under - low - Over) * i / Heights);
            for (var k = 1; k < Across; k++)
            {
                var across = from + ((to - from) * k / Across);
                if (Out(across, z) is { } place)
                {
                    met.Add(new(place, across, z));
                }
            }
        }

        if (met.Count == 0)
        {
            return null;
        }

        var outermost = high ? met.Max(m => m.Place) : met.Min(m => m.Place);
        var level = met.Where(m => Math.Abs(m.Place - outermost) <= Same).ToList();
        var best = level
            .OrderByDescending(Flatness)
            .ThenBy(m => Math.Round(OffWanted(level, m), 6))
            .ThenBy(m => Math.Round(Math.Abs(m.Across - ((from + to) / 2)), 6))
            .First();
        best = Round(best, [(0, 0.5), (0, -0.5)]) > 0 ? best : Climbed(best);
        return (best.Place, best.Across, best.Height);
    }

    private double? Out(double across, double z)
    {
        var spans = metal.Sound(alongX ? Line3.AlongX(across, z) : Line3.AlongY(across, z), 0);
        return spans.Count == 0 ? null : high ? spans[^1].To : spans[0].From;
    }

    // How many places round it lie in the same side: none on a corner or a crest.
    private int Flatness(Met m) => Round(m, [(1, 0), (-1, 0), (0, 0.5), (0, -0.5)]);

    private int Round(Met m, (double Across, double Height)[] round) =>
        round.Count(r => Out(m.Across + r.Across, m.Height + r.Height) is { } place && Math.Abs(place - m.Place) <= Same);

    // How far a place is from where it is wanted below the top of its side: a low side is met half way down.
    private static double OffWanted(List<Met> level, Met m)
    {
        var own = level.Where(l => l.Across == m.Across).Select(l => l.Height).ToList();
        var top = own.Max() + Under;
        return Math.Abs(top - m.Height - Math.Min(Below, (top - own.Min()) / 2));
    }

    // An edge between the heights looked at is gone to.
    private Met Climbed(Met best)
    {
        for (var step = 0.5; step > 1e-9; step /= 2)
        {
            foreach (var z in new[] { best.Height - step, best.Height + step })
            {
                if (Out(best.Across, z) is { } p && (high ? p > best.Place + 1e-12 : p < best.Place - 1e-12))
                {
                    best = best with { Place = p, Height = z };
                }
            }
        }

        return best;
    }
}
