using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Plan.Lines;
using Handwheel.Quantities;

namespace Handwheel.Sheets.Pages;

/// <summary>How far a crank is turned, in the terms of its own dial.</summary>
internal sealed class TurnsText
{
    private readonly SetupFacts? _setup;
    private readonly Shop _shop;

    /// <summary>Initializes a new instance of the <see cref="TurnsText"/> class.</summary>
    /// <param name="setup">The holding.</param>
    /// <param name="shop">The shop.</param>
    public TurnsText(SetupFacts? setup, Shop shop) => (_setup, _shop) = (setup, shop);

    /// <summary>A move's turns; where its passes differ, from the least to the most.</summary>
    /// <param name="moves">One move as it is made in each pass.</param>
    /// <returns><c>5.6 turns</c>, <c>3 turns + 24 div</c>, <c>0.4 to 2.0 turns</c>.</returns>
    public string Of(params IEnumerable<MoveLine> moves)
    {
        var all = moves.ToArray();
        string least = One(all.MinBy(m => m.Turns)!), most = One(all.MaxBy(m => m.Turns)!);
        return string.Equals(least, most, StringComparison.Ordinal) ? most : $"{(least.EndsWith(" turns", StringComparison.Ordinal) && most.EndsWith(" turns", StringComparison.Ordinal) ? least[..^6] : least)} to {most}";
    }

    private string One(MoveLine move)
    {
        var divisions = Divisions(move.Axis);
        if (divisions <= 0)
        {
            var text = Bits.Fixed(move.Turns, 1);
            if (text == "0.0")
            {
                return Little(move);
            }

            return $"{text} {(text == "1.0" ? "turn" : "turns")}";
        }

        var all = Math.Round(move.Turns * divisions);
        var whole = Math.Floor(all / divisions);
        var rest = all - (whole * divisions);
        var turns = $"{Bits.Fixed(whole, 0)} {(whole == 1 ? "turn" : "turns")}";
        return rest == 0 ? turns : whole == 0 ? Rest(move.Axis, rest) : $"{turns} + {Rest(move.Axis, rest)}";
    }

    // Less than a twentieth of a turn is told by the dial it is made on.
    private string Little(MoveLine move)
    {
        var machine = move.Axis switch
        {
            Axis.X => _shop.Mill?.X,
            Axis.Y => _shop.Mill?.Y,
            Axis.Z => _shop.Mill?.Z,
            _ => null,
        };
        var divisions = Math.Round(move.Turns * (machine?.Divisions ?? 0), 1);
        return divisions >= 0.1 ? $"{Bits.Fixed(divisions, divisions >= 1 ? 0 : 1)} div" : "under 0.05 turn";
    }

    // What is left over whole turns: degrees and minutes of the rotary's own dial, divisions of a slide's.
    private string Rest(Axis axis, double divisions)
    {
        var step = (_shop.Rotary?.DialStep ?? 0) * 180 / Math.PI;
        return axis == Axis.T ? Text.Markup.TrueMinus(ReadingText.Rotary(divisions * step, step)) : $"{Bits.Fixed(divisions, 0)} div";
    }

    // Divisions of the dial that is counted on: the rotary's always, an axis's where it has no readout.
    private double Divisions(Axis axis)
    {
        if (axis == Axis.T)
        {
            return _shop.Rotary is { DialStep: > 0, Worm: > 0 } rotary && _setup?.Rotary is { Lies: false } ? Math.Round(2 * Math.PI / rotary.Worm / rotary.DialStep) : 0;
        }

        var (facts, machine) = axis switch
        {
            Axis.X => (_setup?.Axes.X, _shop.Mill?.X),
            Axis.Y => (_setup?.Axes.Y, _shop.Mill?.Y),
            _ => (_setup?.Axes.Z, _shop.Mill?.Z),
        };
        return facts is { Readout: false } ? machine?.Divisions ?? 0 : 0;
    }
}
