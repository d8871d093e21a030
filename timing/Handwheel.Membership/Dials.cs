namespace Handwheel.Membership;

/// <summary>What the four dials (X, Y, Z, the rotary) say, and where the axes truly stand.</summary>
internal sealed class Dials
{
    private readonly double[] reading = new double[4];
    private readonly double[] truth = new double[4];
    private readonly double[] offset = new double[4];
    private readonly int[] side = new int[4];
    private readonly bool[] placed = new bool[4];

    /// <summary>Gets where the axes truly stand, a copy.</summary>
    public double[] Truth => [.. truth];

    /// <summary>Gets how far truth lies from the readings, a copy.</summary>
    public double[] Offset => [.. offset];

    /// <summary>Whether an axis stands at a reading.</summary>
    /// <param name="a">The axis.</param>
    /// <returns>Whether it does.</returns>
    public bool Placed(int a) => placed[a];

    /// <summary>A new holding: what is not carried over is to be found again, and the quill is up.</summary>
    /// <param name="next">The holding.</param>
    public void Anew(Setting next)
    {
        for (var a = 0; a < 4; a++)
        {
            if (!next.Carried.Contains("xyzt"[a].ToString()))
            {
                offset[a] = 0;
                Forget(a);
            }
        }

        Lift();
    }

    /// <summary>An axis stands nowhere known, from no side.</summary>
    /// <param name="a">The axis.</param>
    public void Forget(int a)
    {
        side[a] = 0;
        placed[a] = false;
    }

    /// <summary>The quill goes up.</summary>
    public void Lift() => placed[2] = false;

    /// <summary>Truth comes to lie farther from the readings: another cutter stands out farther or less.</summary>
    /// <param name="a">The axis.</param>
    /// <param name="by">By how much.</param>
    public void Shift(int a, double by) => offset[a] += by;

    /// <summary>A dial is set where its axis stands. Setting Z leaves the quill to be brought down again.</summary>
    /// <param name="a">The axis.</param>
    /// <param name="says">What it is set to.</param>
    /// <param name="stands">Where the axis truly stands.</param>
    /// <param name="from">The side its slack was taken up from; 0 for none.</param>
    public void Set(int a, double says, double stands, int from)
    {
        offset[a] = stands - says;
        side[a] = from;
        reading[a] = says;
        truth[a] = stands;
        placed[a] = a != 2;
    }

    /// <summary>Cranks an axis; slack shows where it is reached from the other side.</summary>
    /// <param name="axes">The axes.</param>
    /// <param name="a">The axis.</param>
    /// <param name="to">The reading.</param>
    /// <param name="troubles">Takes a reading beyond travel.</param>
    public void Crank(IReadOnlyList<AxisSetting> axes, int a, double to, List<string> troubles)
    {
        var axis = axes[a];
        if (to < axis.Least - 1e-9 || to > axis.Most + 1e-9)
        {
            troubles.Add($"{"xyzt"[a]} {to} is out of travel");
        }

        if (placed[a] && to == reading[a])
        {
            return;
        }

        var way = placed[a] ? Math.Sign(to - reading[a]) : side[a];
        side[a] = side[a] == 0 ? way : side[a];
        var late = !axis.Readout && way != 0 && way != side[a] ? axis.Backlash * side[a] : 0;
        var stands = to + offset[a] + late;

        // A dial turned back less than its slack moves nothing.
        truth[a] = axis.Readout || axis.Backlash <= 0 || !placed[a] || (stands - truth[a]) * way >= 0 ? stands : truth[a];
        reading[a] = to;
        placed[a] = true;
    }
}
