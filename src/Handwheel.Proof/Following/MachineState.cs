using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Following;

/// <summary>The machine as it truly stands in one holding: four axes and what they say. Mutable inside one proof.</summary>
internal sealed class MachineState
{
    private readonly AxisState[] axes = [new(Axis.X), new(Axis.Y), new(Axis.Z), new(Axis.T)];

    /// <summary>One axis.</summary>
    /// <param name="axis">Which.</param>
    /// <returns>Its state.</returns>
    public AxisState this[Axis axis] => axes[(int)axis];

    /// <summary>Where the axes truly stand.</summary>
    public TrueReading True => new(axes[0].True, axes[1].True, axes[2].True, axes[3].True);

    /// <summary>What they say.</summary>
    public Reading Says => new(axes[0].Reading, axes[1].Reading, axes[2].Reading, axes[3].Reading);

    /// <summary>A new holding: zeros end, save those carried over.</summary>
    /// <param name="carried">The axes carried over: <c>x</c>, <c>y</c>, <c>z</c>, <c>t</c>.</param>
    public void NewHolding(IReadOnlyList<string> carried)
    {
        foreach (var axis in axes)
        {
            if (carried.Contains(NameOf(axis.Axis), StringComparer.Ordinal))
            {
                axis.Carry();
            }
            else
            {
                axis.LoseZero();
            }
        }

        this[Axis.Z].Lift();
    }

    /// <summary>A cutter is put in: the Z zero ends and the quill is up.</summary>
    public void NewCutter() => this[Axis.Z].LoseZero();

    /// <summary>An axis&#39;s name.</summary>
    /// <param name="axis">The axis.</param>
    /// <returns><c>x</c>, <c>y</c>, <c>z</c> or <c>t</c>.</returns>
    public static string NameOf(Axis axis) => axis switch
    {
        Axis.X => "x",
        Axis.Y => "y",
        Axis.Z => "z",
        _ => "t",
    };
}
