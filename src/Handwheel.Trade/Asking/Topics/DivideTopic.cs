using System.Globalization;
using Handwheel.Trade.Indexing;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Dividing.</summary>
internal static class DivideTopic
{
    private static readonly HashSet<string> RatioWords = new(StringComparer.Ordinal) { "on", "ratio", "worm", "rotary", "table", "head", "indexer", "using", "with", "to" };

    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var angle = q.InUnit("deg");
        var dial = q.Has("dial") ? q.InUnit("min", "sec") : null;
        angle ??= q.InUnit("min") is { } m ? m / 60 : null;
        var plates = TakePlates(q, r);
        var ratio = TakeRatio(q, angle is not null);
        if (ratio is null)
        {
            ratio = 40;
            r.Note("No worm ratio was said; 40 to 1 was taken (say 'on 72' or '90:1' for another).");
        }

        var sides = q.Has("hex", "hexagon") ? 6 : q.Has("square") ? 4 : q.Has("octagon") ? 8 : (double?)null;
        q.Has("sides", "sided", "plate", "plates", "holes", "hole", "circle", "teeth", "gear", "divisions", "parts", "equal", "spaces", "head", "worm", "degrees", "per", "turn", "turns", "ratio", "handle", "crank");
        r.Add("angle of one crank turn", Divider.DegreesPerTurn(ratio.Value), "deg", SimpleIndexing.Basis, $"360 / {N(ratio.Value)}");
        if (angle is { } wanted)
        {
            Angular(r, ratio.Value, wanted, plates, dial);
            return;
        }

        if ((q.Plain() ?? q.InUnit("teeth") ?? sides) is { } divisions)
        {
            Divisions(r, ratio.Value, Whole(divisions, 100_000, "divisions"), plates);
        }
        else if (q.Tokens.All(t => t.Low is not ("rotary" or "turn" or "worm")))
        {
            throw new UnansweredException("how many divisions, or what angle, is missing");
        }
    }

    private static int Whole(double value, int most, string what) =>
        value >= 1 && value <= most && value == Math.Floor(value) ? (int)value
            : throw new UnansweredException($"{N(value)} {what} cannot be; a whole number from 1 to {most.ToString(CultureInfo.InvariantCulture)} is needed");

    private static int? TakeRatio(Question q, bool angular)
    {
        if (Colon(q) is { } written)
        {
            return written;
        }

        if (q.JustBefore("worm") is { } worm)
        {
            return Whole(worm, 1000, "to one");
        }

        for (var i = 0; i < q.Tokens.Count; i++)
        {
            if (!RatioWords.Contains(q.Tokens[i].Low))
            {
                continue;
            }

            var next = i + 1 < q.Tokens.Count ? q.Tokens[i + 1] : null;
            next = next is { IsNumber: false } && (Fillers.Contains(next.Low) || RatioWords.Contains(next.Low)) && i + 2 < q.Tokens.Count ? q.Tokens[i + 2] : next;
            if (next is { IsNumber: true, Used: false, Unit: "" } && next.Value is >= 2 and <= 1000)
            {
                next.Used = true;
                OneAfter(q, next);
                return Whole(next.Value, 1000, "to one");
            }
        }

        var free = q.Tokens.Where(t => t is { IsNumber: true, Used: false, Unit: "" }).ToArray();
        var token2 = angular ? free.FirstOrDefault() : free.Length >= 2 ? free[1] : null;
        if (token2 is null)
        {
            return null;
        }

        token2.Used = true;
        return Whole(token2.Value, 1000, "to one");
    }

    private static int? Colon(Question q)
    {
        foreach (var token in q.Tokens.Where(t => !t.IsNumber && !t.Used))
        {
            var parts = token.Raw.Split(':');
            if (parts.Length == 2 && double.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var high) && double.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var low))
            {
                token.Used = true;
                return Whole(Math.Max(high, low), 1000, "to one");
            }
        }

        return null;
    }

    // "40 to 1": the one belongs to the ratio.
    private static void OneAfter(Question q, Token ratio)
    {
        var at = q.Tokens.ToList().IndexOf(ratio);
        if (at + 2 < q.Tokens.Count && q.Tokens[at + 1].Low == "to" && q.Tokens[at + 2] is { IsNumber: true, Value: 1 } one)
        {
            one.Used = true;
        }
    }

    private static PlateSet TakePlates(Question q, ReplyBuilder r)
    {
        var at = q.Tokens.ToList().FindIndex(t => t.Low is "plate" or "plates" or "circles" or "circle");
        var circles = new List<int>();
        for (var i = at + 1; at >= 0 && i < q.Tokens.Count; i++)
        {
            var parts = q.Tokens[i].Raw.Split([',', '/'], StringSplitOptions.RemoveEmptyEntries);
            if (parts.Length == 0 || !parts.All(p => int.TryParse(p, NumberStyles.None, CultureInfo.InvariantCulture, out var c) && c is >= 2 and <= 500))
            {
                break;
            }

            q.Tokens[i].Used = true;
            circles.AddRange(parts.Select(p => int.Parse(p, CultureInfo.InvariantCulture)));
        }

        if (circles.Count > 0)
        {
            return new PlateSet("the plate given", [circles], new Basis("as given", Evidence.StandardFormula));
        }

        var set = q.Has("two-sided", "double-sided", "twosided") ? PlateSet.TwoSided : PlateSet.ThreePlates;
        r.Note($"Plates taken: {set.Name} ({string.Join(" ", set.Circles)}). Say 'plate 21 23 25' for your own.");
        return set;
    }

    private static void Divisions(ReplyBuilder r, int ratio, int divisions, PlateSet plates)
    {
        var simple = Divider.Simple(ratio, divisions, plates.Circles);
        var fraction = simple.Numerator == 0 ? "0" : $"{N(simple.Numerator)}/{N(simple.Denominator)}";
        r.Add("whole turns", simple.Turns, "turns", SimpleIndexing.Basis, $"{N(ratio)} / {N(divisions)} = {N(simple.Turns)} and {fraction}")
            .Say("fraction of a turn left", fraction, SimpleIndexing.Basis);
        if (simple.Numerator == 0)
        {
            r.Say("holes", "none: whole turns only, any circle", SimpleIndexing.Basis);
        }

        foreach (var choice in simple.Choices)
        {
            r.Add($"spaces on the {N(choice.Circle)} circle", choice.Spaces, "spaces", SimpleIndexing.Basis, $"{fraction} x {N(choice.Circle)} = {N(choice.Spaces)}; the sector takes in {N(choice.Spaces + 1)} holes");
        }

        if (!simple.Possible)
        {
            Harder(r, ratio, divisions, plates);
        }

        r.Add("angle of one division", 360.0 / divisions, "deg", SimpleIndexing.Basis, $"360 / {N(divisions)}")
            .Caution("Always turn the same way and come back beyond for a hole missed; count spaces, not holes; lock the spindle before cutting.");
    }

    private static void Harder(ReplyBuilder r, int ratio, int divisions, PlateSet plates)
    {
        r.Say("simple indexing", "not possible with these circles", SimpleIndexing.Basis);
        if (divisions <= 1000 && Divider.Compound(ratio, divisions, plates.Plates) is { } c)
        {
            r.Say("compound indexing", $"crank {N(c.FirstSpaces)} spaces on {N(c.FirstCircle)}, then plate and crank {(c.SecondSpaces < 0 ? "back" : "on")} {N(Math.Abs(c.SecondSpaces))} spaces on {N(c.SecondCircle)}", SimpleIndexing.Basis,
                $"{N(c.FirstSpaces)}/{N(c.FirstCircle)} {(c.SecondSpaces < 0 ? "-" : "+")} {N(Math.Abs(c.SecondSpaces))}/{N(c.SecondCircle)} = {N(ratio * c.Rounds)}/{N(divisions)}" + (c.Rounds > 1 ? $"; every {N(c.Rounds)} divisions, going round {N(c.Rounds)} times" : string.Empty));
        }

        if (divisions <= 2000 && Divider.Differential(ratio, divisions, plates.Circles) is { } d)
        {
            r.Say("differential indexing", $"set for {N(d.NearDivisions)}: {N(d.Turns)} turns and {N(d.Choice.Spaces)} spaces on {N(d.Choice.Circle)}, gears {string.Join(" x ", d.Drivers)} driving {string.Join(" x ", d.Driven)}, plate turning {(d.PlateWithCrank ? "with" : "against")} the crank", SimpleIndexing.Basis,
                $"gear ratio = ratio x |{N(d.NearDivisions)} - {N(divisions)}| / {N(d.NearDivisions)} = {N(ratio * Math.Abs(d.NearDivisions - divisions))}/{N(d.NearDivisions)}");
        }

        var exact = 360.0 / divisions;
        var near = Divider.Angular(ratio, exact, plates.Circles)[0];
        if (near is { Turns: 0, Spaces: 0 })
        {
            r.Note("A division is finer than half a space of any circle here: a dial, a bigger ratio or an encoder is needed.");
            return;
        }

        r.Say("nearest by holes", $"{N(near.Turns)} turns and {N(near.Spaces)} spaces on {N(near.Circle)}, off by {N(near.ErrorDeg * 3600, 1)} seconds a division", SimpleIndexing.Basis,
            "the error adds up division by division: set each from its own angle, not from the last");
    }

    private static void Angular(ReplyBuilder r, int ratio, double angle, PlateSet plates, double? dialMinutes)
    {
        if (angle is not (> 0 and <= 36_000))
        {
            throw new UnansweredException($"an angle of {N(angle)} deg cannot be indexed");
        }

        var perTurn = 360.0 / ratio;
        r.Add("crank turns", angle / perTurn, "turns", SimpleIndexing.Basis, $"{N(angle, 5)} / {N(perTurn)} = {N(angle / perTurn, 6)}");
        var whole = Math.Floor((angle / perTurn) + 1e-9);
        var left = Math.Max(0, angle - (whole * perTurn));
        var minutes = left * 60;
        r.Say("whole turns and rest on the dial", $"{N(whole)} turns and {N(Math.Floor(left + 1e-9))} deg {N(minutes - (60 * Math.Floor(left + 1e-9)), 3)} min", SimpleIndexing.Basis, $"{N(angle, 5)} - {N(whole)} x {N(perTurn)} = {N(left, 5)} deg");
        if (dialMinutes is { } step)
        {
            var divisions = Math.Round(minutes / step);
            r.Add("dial divisions beyond the turns", divisions, "divisions", SimpleIndexing.Basis, $"{N(minutes, 3)} min / {N(step)} min, off by {N(((divisions * step) - minutes) * 60, 1)} seconds");
        }

        foreach (var move in Divider.Angular(ratio, angle, plates.Circles).Take(3))
        {
            r.Say($"on the {N(move.Circle)} circle", $"{N(move.Turns)} turns and {N(move.Spaces)} spaces, off by {N(move.ErrorDeg * 3600, 1)} seconds", SimpleIndexing.Basis, $"{N(angle / perTurn, 6)} x {N(move.Circle)} = {N(angle / perTurn * move.Circle, 3)} spaces");
        }
    }
}
