using System.Globalization;

namespace Handwheel.Cases.Tests.Variations;

/// <summary>
/// Plates drawn by a seed, worked from the top in one vise: a shoulder at one end, a slot one way or the other, a pocket with round corners, a row of blind holes; in any number
/// of each job's features, in any order of steps. Every length is a whole number of hundredths of an inch, so that it can be written exactly in millimetres too.
/// </summary>
internal static class PlateVariation
{
    /// <summary>The job.</summary>
    /// <param name="seed">Draws it.</param>
    /// <param name="unit">Its unit, <c>mm</c> or <c>in</c>.</param>
    /// <param name="written">A length in hundredths of an inch as it is to be written.</param>
    public static string Text(int seed, string unit, Func<int, string> written)
    {
        var random = new Random(seed);
        int n(int least, int most) => random.Next(least, most + 1);
        string w(int hundredths) => written(hundredths);
        var (wide, high) = (n(80, 130), n(40, 55));
        var x = 0;
        List<string> drawing = [], steps = [];
        if (n(0, 2) > 0)
        {
            var (end, deep) = (n(30, 60), n(8, 20));
            drawing.Add($"step    cut block {w(2 * end)} by {w(2 * wide)} at 0, 0   from -{w(deep)} to 0");
            steps.Add($"pocket step to -{w(deep)} with em10, {w(n(4, 8))} a pass");
            x = end + 20;
        }

        if (n(0, 2) > 0)
        {
            var (deep, across, alongX) = (n(6, 16), n(26, 36), n(0, 1) == 0);
            var length = alongX ? n(60, 90) : n(50, wide - 24);
            var middle = x + ((alongX ? length : across) / 2) + 10;
            drawing.Add($"key     cut slot {w(length)} by {w(across)} at {w(middle)}, 0   from -{w(deep)} to 0, along {(alongX ? "x" : "y")}");
            steps.Add($"slot key with em6, {w(n(3, 6))} a pass");
            x = middle + ((alongX ? length : across) / 2) + 12;
        }

        if (n(0, 2) > 0)
        {
            var (deep, length) = (n(6, 16), n(44, 70));
            var (across, radius) = (n(40, wide - 30), n(13, 16));
            drawing.Add($"pool    cut block {w(length)} by {w(across)} at {w(x + 10 + length - (length / 2))}, 0, corner radius {w(radius)}   from -{w(deep)} to 0");
            steps.Add($"pocket pool to -{w(deep)} with em6, {w(n(3, 6))} a pass");
            x += length + 24;
        }

        if (n(0, 2) > 0 || drawing.Count == 0)
        {
            var (deep, across) = (n(14, 22), n(15, 20));
            drawing.Add($"pins    hole {w(17)} at {w(x + 20)}, -{w(across)}, row of 2, {w(2 * across)} apart along y, {w(deep)} deep from 0, point 118");
            steps.Add($"spot pins\n  drill pins to -{w(deep)} with d4.3");
            x += 40;
        }

        var length2 = Math.Max(x + 16, 140);
        for (var i = steps.Count - 1; i > 0; i--)
        {
            var k = n(0, i);
            (steps[i], steps[k]) = (steps[k], steps[i]);
        }

        return string.Create(CultureInfo.InvariantCulture, $"""
            job   Plate {seed}
            unit  {unit}
            metal brass, free-cutting
            shop  home.handwheel

            drawing
              base    block {w(length2 + 1 - (length2 % 2) + 1)} by {w(wide + (wide % 2))} at {w((length2 + 1 - (length2 % 2) + 1) / 2)}, 0   from -{w(high)} to 0
              {string.Join("\n  ", drawing)}
              others  +/-{w(1)}

            stock bar {w(wide + (wide % 2))} wide, {w(high + 4)} high, {w(length2 + 1 - (length2 % 2) + 1)} long
              x from 0
              z top {w(4)}

            holding A in large vise, bar along jaws on parallels 25 mm
              zero x on left end of stock by finder 10 mm
              zero y on fixed jaw by indicator
              zero z on bar top by paper 0.05 mm
              face to 0 with em10
              {string.Join("\n  ", steps)}

            """);
    }
}
