namespace Handwheel.Trade.Indexing;

/// <summary>The arithmetic of dividing heads, indexers and rotary tables.</summary>
/// <remarks>All exact in whole numbers, but angular indexing, which states its error.</remarks>
public static class Divider
{
    private static readonly int[] ChangeGears = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];

    /// <summary>Simple indexing.</summary>
    /// <param name="ratio">Worm ratio: turns of the crank for one of the spindle, 1 to 1000.</param>
    /// <param name="divisions">Equal divisions wanted, 1 to 100 000.</param>
    /// <param name="circles">Hole circles on hand.</param>
    /// <returns>Turns, fraction and every circle that gives it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Ratio or divisions out of range.</exception>
    public static SimpleIndexing Simple(int ratio, int divisions, IEnumerable<int> circles)
    {
        Guard(ratio, 1000, nameof(ratio));
        Guard(divisions, 100_000, nameof(divisions));
        ArgumentNullException.ThrowIfNull(circles);
        var turns = ratio / divisions;
        var left = ratio % divisions;
        if (left == 0)
        {
            return new SimpleIndexing(turns, 0, 1, []);
        }

        var common = Gcd(left, divisions);
        var under = divisions / common;
        return new SimpleIndexing(
            turns,
            left / common,
            under,
            [.. circles.Distinct().Order().Where(c => c > 0 && c % under == 0).Select(c => new CircleChoice(c, checked((int)(c / under * (left / common)))))]);
    }

    /// <summary>Angle of one turn of the crank.</summary>
    /// <param name="ratio">Worm ratio, 1 to 1000.</param>
    /// <returns>Degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Ratio out of range.</exception>
    public static double DegreesPerTurn(int ratio)
    {
        Guard(ratio, 1000, nameof(ratio));
        return 360.0 / ratio;
    }

    /// <summary>Nearest move to an angle on one circle.</summary>
    /// <param name="ratio">Worm ratio, 1 to 1000.</param>
    /// <param name="angleDeg">Angle wanted, degrees, 0 to 36 000.</param>
    /// <param name="circle">Hole circle, 1 to 1000.</param>
    /// <returns>Turns, spaces and what is missed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Any of them out of range or not a number.</exception>
    public static AngularIndexing Angular(int ratio, double angleDeg, int circle)
    {
        Guard(ratio, 1000, nameof(ratio));
        Guard(circle, 1000, nameof(circle));
        if (angleDeg is not (>= 0 and <= 36_000))
        {
            throw new ArgumentOutOfRangeException(nameof(angleDeg), angleDeg, "an angle of 0 to 36000 degrees is needed");
        }

        var spaces = (long)Math.Round(angleDeg * ratio / 360 * circle, MidpointRounding.AwayFromZero);
        return new AngularIndexing(spaces / circle, (int)(spaces % circle), circle, (spaces * 360.0 / ratio / circle) - angleDeg);
    }

    /// <summary>The circles that come nearest to an angle, best first.</summary>
    /// <param name="ratio">Worm ratio, 1 to 1000.</param>
    /// <param name="angleDeg">Angle wanted, degrees.</param>
    /// <param name="circles">Hole circles on hand.</param>
    /// <returns>One move a circle, by error.</returns>
    public static IReadOnlyList<AngularIndexing> Angular(int ratio, double angleDeg, IEnumerable<int> circles)
    {
        ArgumentNullException.ThrowIfNull(circles);
        return [.. circles.Distinct().Select(c => Angular(ratio, angleDeg, c)).OrderBy(a => Math.Round(Math.Abs(a.ErrorDeg), 9)).ThenBy(a => a.Circle)];
    }

    /// <summary>Compound indexing: two moves on circles of one plate; exact ones first, fewest holes first.</summary>
    /// <param name="ratio">Worm ratio, 1 to 1000.</param>
    /// <param name="divisions">Divisions, 2 to 1000.</param>
    /// <param name="plates">Plates on hand; both circles must be on one.</param>
    /// <returns>The best found, or null where none is exact.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Ratio or divisions out of range.</exception>
    public static CompoundIndexing? Compound(int ratio, int divisions, IReadOnlyList<IReadOnlyList<int>> plates)
    {
        Guard(ratio, 1000, nameof(ratio));
        Guard(divisions, 1000, nameof(divisions));
        ArgumentNullException.ThrowIfNull(plates);
        var found = new List<CompoundIndexing>();
        for (var rounds = 1; rounds <= 12; rounds++)
        {
            if (Gcd(rounds, divisions) != 1)
            {
                continue;
            }

            foreach (var plate in plates)
            {
                Pairs(ratio, divisions, rounds, plate, found);
            }

            if (found.Count > 0)
            {
                return found.OrderBy(f => Math.Abs(f.FirstSpaces) + Math.Abs(f.SecondSpaces)).ThenBy(f => f.FirstCircle).ThenBy(f => f.SecondCircle).First();
            }
        }

        return null;
    }

    /// <summary>Differential indexing with the usual set of change gears (24 24 28 32 40 44 48 56 64 72 86 100).</summary>
    /// <param name="ratio">Worm ratio, 1 to 1000.</param>
    /// <param name="divisions">Divisions, 2 to 2000.</param>
    /// <param name="circles">Hole circles on hand.</param>
    /// <returns>A near division with gears that make up the difference, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Ratio or divisions out of range.</exception>
    public static DifferentialIndexing? Differential(int ratio, int divisions, IReadOnlyList<int> circles)
    {
        Guard(ratio, 1000, nameof(ratio));
        Guard(divisions, 2000, nameof(divisions));
        for (var step = 1; step <= Math.Max(12, divisions / 5); step++)
        {
            foreach (var near in new[] { divisions - step, divisions + step })
            {
                if (near < 2 || Simple(ratio, near, circles) is not { Choices.Count: > 0 } simple)
                {
                    continue;
                }

                var (drivers, driven) = Train((long)ratio * Math.Abs(near - divisions), near);
                if (drivers.Length > 0)
                {
                    return new DifferentialIndexing(near, simple.Choices[0], simple.Turns, drivers, driven, near > divisions);
                }
            }
        }

        return null;
    }

    private static void Pairs(int ratio, int divisions, int rounds, IReadOnlyList<int> plate, List<CompoundIndexing> found)
    {
        foreach (var a in plate)
        {
            foreach (var b in plate.Where(b => b != a))
            {
                // x/a + y/b = ratio*rounds/divisions, exact: x*b*n + y*a*n = ratio*rounds*a*b
                for (var y = -b + 1; y < b; y++)
                {
                    var top = ((long)ratio * rounds * a * b) - ((long)y * a * divisions);
                    var under = (long)b * divisions;
                    if (y != 0 && top > 0 && top % under == 0)
                    {
                        found.Add(new CompoundIndexing(a, (int)(top / under), b, y, rounds, 0));
                    }
                }
            }
        }
    }

    private static (int[] Drivers, int[] Driven) Train(long over, long under)
    {
        foreach (var a in ChangeGears.Distinct())
        {
            foreach (var b in ChangeGears.Distinct())
            {
                if (Enough(a, b) && a * under == b * over)
                {
                    return ([a], [b]);
                }
            }
        }

        foreach (var a in ChangeGears.Distinct())
        {
            foreach (var c in ChangeGears.Distinct().Where(c => c >= a))
            {
                foreach (var b in ChangeGears.Distinct())
                {
                    foreach (var d in ChangeGears.Distinct().Where(d => d >= b))
                    {
                        if (Enough(a, b, c, d) && (long)a * c * under == (long)b * d * over)
                        {
                            return ([a, c], [b, d]);
                        }
                    }
                }
            }
        }

        return ([], []);
    }

    private static bool Enough(params int[] gears) =>
        gears.GroupBy(g => g).All(g => g.Count() <= ChangeGears.Count(x => x == g.Key));

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);

    private static void Guard(int value, int most, string name)
    {
        if (value < 1 || value > most)
        {
            throw new ArgumentOutOfRangeException(name, value, "a whole number from 1 is needed");
        }
    }
}
