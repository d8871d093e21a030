using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Plan.Lines;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>The lines of a step as rows to work down: each with its box.</summary>
internal sealed class MoveRows
{
    private const double RowTall = 5.7;
    private const double Wide = Block.StepRight;
    private const double TurnsWide = 14.2;

    private readonly SheetNumbers _numbers;
    private readonly SetupFacts? _setup;
    private readonly TurnsText _turns;
    private readonly IReadOnlySet<int> _cutting;

    /// <summary>Initializes a new instance of the <see cref="MoveRows"/> class.</summary>
    /// <param name="numbers">How readings are printed.</param>
    /// <param name="setup">The holding.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="cutting">Numbers of the moves that cut.</param>
    public MoveRows(SheetNumbers numbers, SetupFacts? setup, Shop shop, IReadOnlySet<int> cutting) => (_numbers, _setup, _turns, _cutting) = (numbers, setup, new(setup, shop), cutting);

    /// <summary>The heading over the readings.</summary>
    /// <returns>A piece.</returns>
    public Piece Heading() => new(
        $"<div class=\"mh\"><span class=\"h1\">move</span><span class=\"h2\">from</span><span class=\"h3\">crank to, {(_numbers.Unit == Quantities.LengthUnit.Inch ? "in" : "mm")}{(_setup?.Rotary is null ? string.Empty : " (T: \u00B0 \u2032)")}</span><span class=\"h4\">arrive</span><span class=\"h5\">crank</span><span class=\"h6\">s a turn</span><span class=\"h7\">lock, remark</span></div>",
        3.8) { KeepsNext = true };

    /// <summary>Lines as pieces.</summary>
    /// <param name="lines">The lines.</param>
    /// <returns>Pieces.</returns>
    public IEnumerable<Piece> Of(IEnumerable<SheetLine> lines) => lines.SelectMany(Of);

    private static string Text(string text) => Markup.Escape(text);

    private IEnumerable<Piece> Of(SheetLine line) => line switch
    {
        MoveLine move => Move(move, inBracket: false),
        TouchOffLine touch => [TouchOff(touch)],
        CutterLine cutter => [PutIn(cutter)],
        HeadLine head => [Head(head)],
        SpindleLine spindle => [Spindle(spindle)],
        PassBracket bracket => Bracket(bracket),
        MeasureLine measure => [MeasurePiece.Of(measure, _numbers)],
        HandLine hand => [Hand(hand)],
        _ => [],
    };

    private IEnumerable<Piece> Move(MoveLine move, bool inBracket)
    {
        const double Room = 14.8;
        var remark = Remark(move);
        var beside = remark.Length == 0 || (!move.ReadBack && TextMeasure.Lines(remark, Face.Plain, 7.6, Room) <= 2);
        var cell = beside ? $"<em>{Text(remark)}</em>" : string.Empty;
        var html = $"<div class=\"mv{(move.Cutting ? " cut" : string.Empty)}\"><span class=\"c0\">{(inBracket ? string.Empty : Bits.Box)}</span>{Readings(move)}{Crank(move)}<span class=\"c10\">{cell}</span></div>";
        yield return new(html, Math.Max(RowTall, 3.1 + (TextMeasure.Lines(Turns(move), Face.Plain, 7.6, TurnsWide) * 2.9))) { KeepsNext = !beside || move.ReadBack };
        if (move.ReadBack)
        {
            yield return ReadBack(move, beside ? string.Empty : remark);
        }
        else if (!beside)
        {
            yield return Under(remark);
        }
    }

    // What the readout shows is written once the place is reached and before the next row is cranked: so the box stands between the two.
    private static Piece ReadBack(MoveLine move, string remark)
    {
        var says = remark.Length > 0 ? $"<span>{Text(remark)}</span>" : string.Empty;
        return new($"<div class=\"rr\">{says}<span class=\"rq\">stop: {move.Axis} reads</span><b class=\"rb\"></b><span>then on</span></div>", Math.Max(6, (TextMeasure.Lines(remark, Face.Plain, 7.6, 36) * 3.4) + 0.8));
    }

    private static string Remark(MoveLine move)
    {
        var locks = move.Lock.Count > 0 ? "lock " + string.Join(' ', move.Lock.Select(a => a.ToString())) : string.Empty;
        return string.Join("; ", new[] { Turning(move), locks, move.Remark }.Where(r => r.Length > 0));
    }

    private string Readings(MoveLine move)
    {
        var along = move.Along is { } other ? $" and {other}" : string.Empty;
        var to = _numbers.Reading(move.Axis, move.To);
        var small = Markup.TrueMinus(to).Length > (move.Axis == Axis.T ? 5 : 7) ? " s" : string.Empty;
        return $"<span class=\"c1\">{Bits.Count(move.Number)}</span><span class=\"c2\">{move.Axis}{along}</span>{From(move)}<span class=\"c4\">{Bits.Symbol(move.Cutting ? "gocut" : "go", 4.4, 2.5)}</span><span class=\"c5 n{small}\">{Markup.Figures(to)}</span><span class=\"c6\">{Text(Arrive(move))}</span>";
    }

    // A row of passes begins where the pass left the slide: told so, as no one number is true of all.
    private string From(MoveLine move)
    {
        var from = Markup.Figures(_numbers.Reading(move.Axis, move.From));
        return move.Last is not { } last ? $"<span class=\"c3 n\">{from}</span>"
            : move.Axis == Axis.Z ? "<span class=\"c3 w\">the depth<br>reached</span>"
            : $"<span class=\"c3 w\">first <b class=\"n\">{from}</b><br>then <b class=\"n\">{Markup.Figures(_numbers.Reading(last.Axis, last.From))}</b></span>";
    }

    private string Turns(MoveLine move) => move.Last is { } last ? _turns.Of(move, last) : _turns.Of(move);

    private string Crank(MoveLine move) =>
        $"<span class=\"c7\">{Bits.Symbol(move.CrankClockwise ? "cw" : "ccw", 5, 4.4)}</span><span class=\"c8\">{(move.CrankClockwise ? "clockwise" : "counter")}<br>{Text(Turns(move))}</span><span class=\"c9{(move.Pace > 0 ? " n" : string.Empty)}\">{(move.Pace > 0 ? Markup.Figures(Bits.Fixed(move.Pace, 1)) : "free")}</span>";

    // The side told must agree with the readings printed: where those count the other way, the side is the other one too.
    private string Arrive(MoveLine move) => Arrive(move.Axis, move.Arrive);

    private string Arrive(Axis axis, string from) => from switch
    {
        "from -" => _numbers.Flips(axis) ? "from +" : "from \u2212",
        "from +" => _numbers.Flips(axis) ? "from \u2212" : "from +",
        var other => other,
    };

    private static Piece Under(string remark) => new(
        $"<div class=\"ur\">{Text(remark)}</div>",
        (TextMeasure.Lines(remark, Face.Plain, 7.6, Wide - 42) * 3.4) + 0.6);

    private static string Turning(MoveLine move)
    {
        if (move.Axis != Axis.T || move.WorkTurns.Length == 0)
        {
            return string.Empty;
        }

        var rounds = Math.Abs(move.To - move.From) / 360;
        var whole = rounds >= 0.999 && Math.Abs(rounds - Math.Round(rounds)) < 1e-6;
        var times = !whole ? string.Empty : Math.Round(rounds) switch
        {
            1 => "once round, ",
            2 => "twice round, ",
            var n => $"{Bits.Fixed(n, 0)} times round, ",
        };
        return $"{times}work turns {move.WorkTurns}";
    }

    private Piece TouchOff(TouchOffLine line)
    {
        var says = line.Remark.Length > 0 ? $"{line.Says}; {line.Remark}" : line.Says;
        says = line.Arrive.Length > 0 ? $"Arrive {Arrive(line.TouchOff.Axis, line.Arrive)}, slack taken up. {says}" : says;
        var set = _numbers.Reading(line.TouchOff.Axis, line.TouchOff.SetTo);
        var lines = TextMeasure.Lines(says, Face.Plain, 7.8, 51);
        return new(
            $"<div class=\"mv set\"><span class=\"c0\">{Bits.Box}</span><span class=\"c1\"></span><span class=\"c2\">{line.TouchOff.Axis}</span><span class=\"c34\">touch off, set</span><span class=\"c5 n{(line.TouchOff.Axis == Axis.T || Markup.TrueMinus(set).Length > 7 ? " s" : string.Empty)}\"><b class=\"fr\">{Markup.Figures(set)}</b></span><span class=\"cs\">{Text(says)}</span></div>",
            Math.Max(6.4, (lines * 3.5) + 1.2));
    }

    private Piece Head(HeadLine line)
    {
        var set = _numbers.Length(line.Across);
        var lines = TextMeasure.Lines(line.Says, Face.Plain, 7.8, 51);
        return new(
            $"<div class=\"mv set\"><span class=\"c0\">{Bits.Box}</span><span class=\"c1\"></span><span class=\"c2\"></span><span class=\"c34\">head, to bore</span><span class=\"c5 n{(set.Length > 7 ? " s" : string.Empty)}\"><b class=\"fr\">{Markup.Figures(set)}</b></span><span class=\"cs\">{Text(Markup.TrueMinus(Markup.FormulaText(line.Says)))}</span></div>",
            Math.Max(6.4, (lines * 3.5) + 1.2));
    }

    private Piece PutIn(CutterLine line)
    {
        var speed = line.Rpm > 0 ? $"{Bits.Fixed(line.Rpm, 0)} rpm" : "by hand";
        var more = line.Remark.Length > 0 ? "; " + line.Remark : string.Empty;
        var text = $"put in, spindle stopped, {_numbers.Short(line.Out)} out; {speed}{more}";
        var lines = TextMeasure.Lines(text, Face.Plain, 8.4, Wide - 32);
        return new($"<div class=\"pi\"><span class=\"c0\">{Bits.Box}</span><b class=\"id\">{Text(line.Cutter)}</b><span>{Text(text)}</span></div>", Math.Max(5.7, (lines * 3.8) + 1.6)) { KeepsNext = true };
    }

    private static Piece Spindle(SpindleLine line)
    {
        var what = line.Rpm > 0 ? "spindle on" : "spindle stopped";
        var text = string.Join("; ", new[] { line.Rpm > 0 ? $"{Bits.Fixed(line.Rpm, 0)} rpm, clockwise from above" : string.Empty, line.Remark }.Where(t => t.Length > 0));
        var lines = TextMeasure.Lines($"{what} {text}", Face.Plain, 8.4, Wide - 20);
        return new($"<div class=\"pi\"><span class=\"c0\">{Bits.Box}</span><b class=\"id\">{what}</b><span>{Text(text)}</span></div>", Math.Max(5.7, (lines * 3.8) + 1.6)) { KeepsNext = line.Rpm > 0 };
    }

    private IEnumerable<Piece> Bracket(PassBracket bracket)
    {
        // A ladder of depths, each with a box for every time through; four to a line.
        var cells = bracket.Depths.Select(z => $"<span class=\"dp\"><span class=\"n\">{Markup.Figures(_numbers.Reading(Axis.Z, z))}</span>{string.Concat(Enumerable.Repeat(Bits.SmallBox, Math.Clamp(bracket.Times, 1, 6)))}</span>").ToArray();
        var a = bracket.Times > 2 ? 3 : 4;
        var ladder = string.Concat(cells.Chunk(a).Select(row => $"<span class=\"dr\">{string.Concat(row)}</span>"));
        var rows = (int)Math.Ceiling(cells.Length / (double)a);
        var word = bracket.Depths.Count == 1 ? "one pass" : "each pass";
        var says = bracket.Remark.Length == 0 || bracket.Remark == "each pass" ? word : $"{word}: {bracket.Remark}";
        if (bracket.Times > 1)
        {
            says += $"; {Bits.Count(bracket.Times)} times through";
        }

        var inner = bracket.Lines.SelectMany(l => l is MoveLine move ? Move(move, inBracket: true) : Of(l)).ToArray();
        var head = new Piece(
            $"<div class=\"bs\">{Text(says)}</div><div class=\"ladder{(_cutting.Contains(bracket.Number) ? " cut" : string.Empty)}\"><span class=\"c1\">{Bits.Count(bracket.Number)}</span><span class=\"c2\">Z</span><span class=\"dps\">{ladder}</span></div>{Down(bracket, out var tallDown)}",
            (TextMeasure.Lines(says, Face.Plain, 7.6, Wide - 20) * 3.3) + Math.Max(5.4, rows * 4.7) + 0.6 + tallDown);
        var tall = head.Height + inner.Sum(p => p.Height);
        if (tall < 150)
        {
            return [new($"<div class=\"br\">{head.Boxed()}{string.Concat(inner.Select(p => p.Boxed()))}</div>", tall + 1.2)];
        }

        return new[] { head }.Concat(inner).Select(p => p with { Html = $"<div class=\"br\">{p.Html}</div>" });
    }

    // How the depths are cranked to: from where, which side, which way, how far, how fast, what is locked.
    private string Down(PassBracket bracket, out double tall)
    {
        tall = 0;
        if (bracket.DepthMoves.Count == 0)
        {
            return string.Empty;
        }

        var first = bracket.DepthMoves[0];
        var from = _numbers.Reading(Axis.Z, first.From);
        if (bracket.DepthMoves.Any(m => Math.Abs(m.From - first.From) > 1e-9))
        {
            from += bracket.DepthMoves.Zip(bracket.DepthMoves.Skip(1), (a, b) => Math.Abs(b.From - a.To) < 1e-9).All(same => same)
                ? ", then from the depth reached"
                : $", then from {_numbers.Reading(Axis.Z, bracket.DepthMoves[^1].From)}";
        }

        List<string> after = [first.CrankClockwise ? "clockwise" : "counter", _turns.Of(bracket.DepthMoves)];
        after.Add(first.Pace > 0 ? $"{Bits.Fixed(first.Pace, 1)} s a turn" : "free");
        if (first.Lock.Count > 0)
        {
            after.Add("lock " + string.Join(' ', first.Lock));
        }

        var before = $"Z from {Markup.TrueMinus(from)}, arrive {Arrive(first)}; ";
        var rest = string.Join(", ", after);
        tall = (TextMeasure.Lines($"{before}ooo {rest}", Face.Plain, 7.6, Wide - 20) * 3.4) + 0.6;
        return $"<div class=\"dm\">{Text(before)}{Bits.Symbol(first.CrankClockwise ? "cw" : "ccw", 4.4, 3.2)} {Text(rest)}</div>";
    }

    private static Piece Hand(HandLine line)
    {
        var says = line.Remark.Length > 0 ? $"{line.Says} ({line.Remark})" : line.Says;
        var tall = (TextMeasure.Lines(says, Face.Plain, 9.6, Wide - 12) * 4.4) + 1.8;
        var check = string.Empty;
        if (line.Check.Length > 0)
        {
            check = $"<div class=\"chk\">{Bits.SmallBox}<span><b>check</b> {Text(line.Check)}</span></div>";
            tall += (TextMeasure.Lines("check " + line.Check, Face.Plain, 8.6, Wide - 20) * 4) + 1.2;
        }

        return new($"<div class=\"ha\"><span class=\"c0\">{Bits.Box}</span><span>{Text(says)}</span></div>{check}", tall);
    }
}
