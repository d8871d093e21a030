using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Shops;

/// <summary>A rotary table: axis up, through the point C of a holding. Theta is the work's counterclockwise turn seen from above; reading T = T0 + Sense * theta.</summary>
public sealed record Rotary
{
    /// <summary>Turns of the crank for one of the table.</summary>
    public required double Worm { get; init; }

    /// <summary>Its dial's step, radians.</summary>
    public required double DialStep { get; init; }

    /// <summary>+1 where the reading grows as the work turns counterclockwise from above, -1 where it grows clockwise.</summary>
    public required int Sense { get; init; }

    /// <summary>Diameter of its table.</summary>
    public required double Across { get; init; }

    /// <summary>Height from the milling table to its own.</summary>
    public double High { get; init; } = 80;

    /// <summary>Slack of its crank on reversing, radians.</summary>
    public double Backlash { get; init; }

    /// <summary>Whether turning its crank clockwise turns the work clockwise from above.</summary>
    public bool CrankClockwiseTurnsClockwise { get; init; } = true;

    /// <summary>Hole circles of its plates.</summary>
    public IReadOnlyList<int> Circles { get; init; } = [];

    /// <summary>Where it was typed.</summary>
    public required SourceSpan Where { get; init; }
}
