using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Following;

/// <summary>
/// One axis as it truly stands: its readout or dial says <see cref="Reading"/>, the axis stands at <see cref="True"/>, holding frame as planned.
/// On a readout the two differ by what its zero was set off; on a plain dial also by the backlash, when it is reached from the other side than its
/// zero was. Millimetres (degrees for T). Mutable inside one proof.
/// </summary>
/// <param name="axis">Which axis.</param>
internal sealed class AxisState(Axis axis)
{
    private double offset;
    private int zeroSide;

    /// <summary>Which axis.</summary>
    public Axis Axis { get; } = axis;

    /// <summary>What the readout or dial says.</summary>
    public double Reading { get; private set; }

    /// <summary>Where it stands.</summary>
    public double True { get; private set; }

    /// <summary>Whether a touch-off or an earlier move has put it somewhere known.</summary>
    public bool Placed { get; private set; }

    /// <summary>Whether its zero was found in this holding (for Z: with this cutter) or carried into it.</summary>
    public bool Zeroed { get; private set; }

    /// <summary>Which way it last moved: -1, 0 (not yet) or +1.</summary>
    public int Side { get; private set; }

    /// <summary>How far the truth lies beyond the reading by the zero alone.</summary>
    public double Offset => offset;

    /// <summary>A reading as it truly stands, or would stand reached from the side its zero was.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>The place.</returns>
    public double TruthOf(double reading) => Placed && Math.Abs(reading - Reading) < 1e-9 ? True : reading + offset;

    /// <summary>The zero is found: at this true place the readout is set to a value.</summary>
    /// <param name="truePlace">Where it truly stands.</param>
    /// <param name="setTo">What the readout then says.</param>
    /// <param name="side">From which side it came: -1 or +1; 0 where it does not matter (the next side it is reached from then counts).</param>
    public void Zero(double truePlace, double setTo, int side)
    {
        offset = truePlace - setTo;
        zeroSide = side;
        Side = side;
        Reading = setTo;
        True = truePlace;
        Placed = true;
        Zeroed = true;
    }

    /// <summary>The zero is no longer anyone&#39;s: a new holding, or for Z a new cutter. It goes on as it was meant.</summary>
    public void LoseZero()
    {
        offset = 0;
        zeroSide = 0;
        Zeroed = false;
        Placed = false;
    }

    /// <summary>The zero holds although nothing was touched: carried from the holding before.</summary>
    public void Carry() => Zeroed = true;

    /// <summary>It stands nowhere known (the quill up, the table moved by hand).</summary>
    public void Lift() => Placed = false;

    /// <summary>Cranked to a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="facts">The axis as set up.</param>
    public void CrankTo(double reading, AxisFacts facts)
    {
        if (Placed && reading == Reading)
        {
            return;
        }

        var side = !Placed ? Side : Math.Sign(reading - Reading);
        Side = side;
        if (zeroSide == 0)
        {
            zeroSide = side;
        }

        var slack = facts.Readout ? 0 : facts.Backlash;
        var late = side == zeroSide || side == 0 ? 0 : slack * (zeroSide > 0 ? 1 : -1);
        var stands = reading + offset + late;

        // Within the slack the dial turns and nothing follows.
        True = !Placed || slack == 0 ? stands : side > 0 ? Math.Max(True, stands) : Math.Min(True, stands);
        Reading = reading;
        Placed = true;
    }
}
