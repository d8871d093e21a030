using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

/// <summary>One axis of a machine while it is read.</summary>
internal sealed class AxisDraft
{
    /// <summary>Travel, millimetres.</summary>
    public double Travel { get; set; }

    /// <summary>Step of its readout.</summary>
    public double? Readout { get; set; }

    /// <summary>Travel of one turn.</summary>
    public double PerTurn { get; set; }

    /// <summary>Divisions of its dial.</summary>
    public int Divisions { get; set; }

    /// <summary>Slack.</summary>
    public double Backlash { get; set; }

    /// <summary>Whether its slack was told, if only as none.</summary>
    public bool IsSlackSaid { get; set; }

    /// <summary>Whether clockwise grows.</summary>
    public bool ClockwiseGrows { get; set; } = true;

    /// <summary>Whether it counts the other way.</summary>
    public bool OtherWay { get; set; }

    /// <summary>Its line.</summary>
    public SourceSpan Where { get; set; }

    public MachineAxis Made() => new()
    {
        Travel = Travel, ReadoutStep = Readout, CountsOtherWay = OtherWay, PerTurn = PerTurn, Divisions = Divisions, Backlash = Backlash, ClockwiseGrows = ClockwiseGrows,
    };
}
