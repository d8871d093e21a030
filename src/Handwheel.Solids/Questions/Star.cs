using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Questions;

// Directions all round, the same on every run.
internal static class Star
{
    internal static IReadOnlyList<Vector3> Directions { get; } = Made();

    // The axes, the diagonals of squares and of the cube, a little off so that none lies in a face.
    private static Vector3[] Made()
    {
        var all = new List<Vector3>();
        for (var i = -1; i <= 1; i++)
        {
            for (var j = -1; j <= 1; j++)
            {
                for (var k = -1; k <= 1; k++)
                {
                    if (i != 0 || j != 0 || k != 0)
                    {
                        var plain = Math.Abs(i) + Math.Abs(j) + Math.Abs(k) == 1;
                        all.Add((new Vector3(i, j, k) + (plain ? default : new Vector3(0.0137, 0.0071, -0.0093))).ToUnit());
                    }
                }
            }
        }

        return [.. all];
    }
}
