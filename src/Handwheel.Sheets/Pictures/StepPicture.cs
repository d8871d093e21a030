using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Sheets.Text;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>One step from above, as the work then lies: the stock by its depth, hatched what the step takes, the part's outline, the cutter's places, the ways it and the work go.</summary>
internal sealed class StepPicture
{
    private const double RightWide = 17;
    private const double LeftWide = 3;
    private const double HalfTall = 1.5;

    private readonly HoldingScene _scene;
    private readonly string _step;
    private readonly string _end;
    private readonly double _theta;
    private readonly IReadOnlyList<Segment> _moves;
    private readonly IReadOnlyList<Segment> _shown;
    private readonly bool _cuts;
    private readonly double _radius;
    private readonly Svg _svg;
    private readonly ViewFrame _frame;
    private readonly IReadOnlyList<string> _words;
    private readonly string _clip;
    private readonly bool _undercuts;
    private (HeightMap? Map, IReadOnlyList<(double Level, double Divide)>? Levels) _levels;

    private StepPicture(HoldingScene scene, (string First, string Last) steps, int number, double theta, IReadOnlyList<Segment> moves, double width, double mostTall)
    {
        (_scene, _step, _end, _theta, _moves) = (scene, steps.First, steps.Last, theta, moves);
        _shown = [.. moves.Where(m => m.Cuts)];
        _cuts = _shown.Count > 0;
        _shown = _cuts ? _shown : [.. moves.Where(m => m.Touches > 0)];
        var cutter = moves.LastOrDefault(m => m.Cuts)?.Cutter;
        _radius = !_cuts ? _shown.Select(m => m.Touches).DefaultIfEmpty(0).Max()
            : cutter is not null && scene.Shop.Cutters.TryGetValue(cutter, out var c) ? c.TrueAcross / 2 : 0;
        _undercuts = cutter is not null && scene.Shop.Cutters.TryGetValue(cutter, out var u) && (u.Kind is CutterKind.Saw or CutterKind.TSlot or CutterKind.Woodruff or CutterKind.Dovetail);
        _words = Words();
        var world = World();
        var top = 2.5 + (4 * _words.Count);
        var scale = Math.Min(3, Math.Min((width - LeftWide - RightWide) / world.Wide, (mostTall - top - 9) / world.Tall));
        _frame = new(world, scale, LeftWide + ((width - LeftWide - RightWide - (world.Wide * scale)) / 2), top);
        _svg = new(width, top + _frame.Tall + (_shown.Count > 0 ? 8.5 : 1), $"Step {_step} from above.");
        _clip = FormattableString.Invariant($"c{_step}-{number}");
    }

    /// <summary>The pictures of a step: one for each way the work lies while it is cut, two at most; one where it touches or is worked by hand.</summary>
    /// <param name="scene">The holding.</param>
    /// <param name="step">The ids of the step drawn, and of the last one drawn with it; alike for one alone.</param>
    /// <param name="moves">Its moves.</param>
    /// <param name="width">Width on paper.</param>
    /// <param name="mostTall">Height of each at most.</param>
    /// <returns>Pictures, each with the first move it shows.</returns>
    public static IReadOnlyList<(Svg Picture, int Move)> Draw(HoldingScene scene, (string First, string Last) step, IReadOnlyList<Segment> moves, double width, double mostTall)
    {
        var ways = moves.Where(m => m.Cuts).Select(m => Lies(m.From.T)).Distinct().ToArray();
        if (ways.Length == 0)
        {
            var still = new StepPicture(scene, step, 0, moves.Where(m => m.Touches > 0).Select(m => Lies(m.From.T)).LastOrDefault(), moves, width, mostTall);
            still.Draw([]);
            return [(still._svg, 0)];
        }

        var pictures = new List<(Svg Picture, int Move)>();
        foreach (var theta in ways.Length > 2 ? ways.Take(1) : ways)
        {
            var mine = moves.Where(m => Lies(m.From.T) == theta || (m.Turns && m.Cuts && Lies(m.To.T) == theta)).ToArray();
            var picture = new StepPicture(scene, step, pictures.Count, theta, mine, width, mostTall);
            picture.Draw(ways.Length > 2 ? ways : []);
            pictures.Add((picture._svg, mine.Where(m => m.Number > 0).Select(m => m.Number).FirstOrDefault()));
        }

        return pictures;
    }

    private static double Lies(double t)
    {
        var wrapped = Math.Round(t % 360, 6);
        return wrapped < 0 ? wrapped + 360 : wrapped;
    }

    private static Point2 Plan(Reading reading) => new(reading.X, reading.Y);

    private void Draw(double[] others)
    {
        _svg.BeginClip(_clip, _frame.Left, _frame.Top, _frame.Wide, _frame.Tall);
        Metal();
        _svg.Path(_frame.OpenData(_scene.AtTheta(_scene.Hidden, _theta)), "parthidden");
        _svg.Path(_frame.OpenData(_scene.AtTheta(_scene.Seen, _theta)), "part");
        if (_cuts)
        {
            Travels();
        }

        Cutter();
        Figures(_levels.Map!, _levels.Levels!);
        _svg.EndClip();
        Turning();
        if (_shown.Count > 0)
        {
            Axes();
            Readings();
        }

        for (var i = 0; i < _words.Count; i++)
        {
            _svg.Text(0, 3 + (4 * i), _words[i], 8, i == 0 ? "sayt" : "say");
        }

        if (_undercuts)
        {
            _svg.Height += 4;
            _svg.Text(0, _svg.Height - 1, "hatched: cut under the top", 7.6, "say");
        }

        if (others.Length > 0)
        {
            var list = string.Join(", ", others.Skip(1).Take(4).Select(t => Markup.TrueMinus(_scene.Numbers.Reading(Axis.T, t))));
            _svg.Height += 4;
            _svg.Text(0, _svg.Height - 1, $"and so at T {list}{(others.Length > 5 ? " and on" : string.Empty)}", 7.6, "say");
        }
    }

    private IReadOnlyList<string> Words()
    {
        var words = new List<string>();
        if (_scene.Setup.Rotary is null)
        {
            return words;
        }

        var turn = _moves.FirstOrDefault(m => m is { Cuts: true, Turns: true });
        if (turn is not null)
        {
            var by = turn.To.T - turn.From.T;
            var round = Math.Abs(Math.Abs(by) - 360) < 1e-6;
            var numbers = _scene.Numbers;
            words.Add(round
                ? $"T once round from {Markup.TrueMinus(numbers.Reading(Axis.T, turn.From.T))}"
                : $"T {Markup.TrueMinus(numbers.Reading(Axis.T, turn.From.T))} to {Markup.TrueMinus(numbers.Reading(Axis.T, turn.To.T))}");
            words.Add(by < 0 ? "the work turns clockwise from above" : "the work turns counterclockwise from above");
        }
        else if (_cuts)
        {
            words.Add($"T {Markup.TrueMinus(_scene.Numbers.Reading(Axis.T, _theta))}{(_scene.Setup.Rotary.Lies && _theta != 0 ? ", drawn as it lies at T 0" : string.Empty)}");
        }

        return words;
    }

    private Box2 World()
    {
        var stock = _scene.AtTheta(_scene.Freed.Contains(_step) ? _scene.PartBox.Plan : _scene.StockBox.Plan, _theta);
        var places = _shown.SelectMany(m => new[] { Plan(m.From), Plan(m.To) }).ToArray();
        var focus = places.Length == 0 ? stock : Box2.Around(places).Grown(_radius > 12 ? 3 : _radius + 1).Shared(stock.Grown((2.2 * _radius) + 6));
        return stock.With(focus).Grown(1.2);
    }

    private void Metal()
    {
        var squares = Math.Clamp((int)(Math.Max(_frame.Wide, _frame.Tall) / 0.55), 40, 96);
        var step = Math.Max(_frame.World.Wide, _frame.World.Tall) / squares;
        var (wide, tall) = (Math.Max(8, (int)Math.Ceiling(_frame.World.Wide / step)), Math.Max(8, (int)Math.Ceiling(_frame.World.Tall / step)));
        var before = new HeightMap(_frame.World, wide, tall, _scene.Before(_step, _theta));
        var levels = before.Levels();
        for (var i = levels.Count - 1; i >= 0; i--)
        {
            var divide = double.IsNegativeInfinity(levels[i].Divide) ? -1e9 : levels[i].Divide;
            var tint = levels.Count <= 4 ? i : i * 4 / levels.Count;
            _svg.Path(_frame.Data(before.Above(divide)), FormattableString.Invariant($"tint{Math.Min(tint, 3)}"));
        }

        var after = new HeightMap(_frame.World, wide, tall, _scene.After(_end, _theta));
        var taken = OnPaper(before.Taken(after));
        if (!_undercuts)
        {
            _svg.Path(Hatch.Data(taken, 1.05), "hatch");
            _svg.Path(string.Concat(taken.Select(l => Svg.Data(l, close: true))), "taken");
        }
        else
        {
            // What is cut lies under metal: hatched the other way, and said so.
            var under = OnPaper(before.Where(Swept));
            _svg.Path(Hatch.Data(under, 1.3, falling: true), "hatch");
            _svg.Path(string.Concat(under.Select(l => Svg.Data(l, close: true))), "under");
        }

        _levels = (before, levels);
    }

    private IReadOnlyList<IReadOnlyList<Point2>> OnPaper(IReadOnlyList<IReadOnlyList<Point2>> loops) => [.. loops.Select(l => (IReadOnlyList<Point2>)[.. l.Select(_frame.At)])];

    private bool Swept(Point2 p) => _moves.Any(m => m.Cuts && !m.Turns && FromLine(p, Plan(m.From), Plan(m.To)) < _radius);

    private static double FromLine(Point2 p, Point2 a, Point2 b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = (dx * dx) + (dy * dy);
        var share = length < 1e-12 ? 0 : Math.Clamp((((p.X - a.X) * dx) + ((p.Y - a.Y) * dy)) / length, 0, 1);
        return Away(p, new(a.X + (share * dx), a.Y + (share * dy)));
    }

    private void Figures(HeightMap before, IReadOnlyList<(double Level, double Divide)> levels)
    {
        var high = double.PositiveInfinity;
        var rings = Rings().Select(r => r.At).ToArray();
        var written = new List<Box2>();
        var lines = _scene.AtTheta(_scene.Seen, _theta).Concat(_scene.AtTheta(_scene.Hidden, _theta)).SelectMany(r => r.Zip(r.Skip(1), (a, b) => (A: _frame.At(a), B: _frame.At(b)))).ToArray();
        foreach (var (sounded, divide) in levels)
        {
            // The depth it was planned to, not what was sounded off the place; a slope has none and is left without.
            var level = _scene.Planned.Count == 0 ? sounded : _scene.Planned.MinBy(z => Math.Abs(z - sounded));
            var text = Markup.TrueMinus(_scene.Numbers.Short(level, _scene.Numbers.Unit == Quantities.LengthUnit.Inch ? 3 : 2));
            var half = (TextMeasure.Width(text, Face.Figure, 7.6) / 2) + 0.4;
            Box2 Written(Point2 p) => new(p.X - half, p.Y - HalfTall, p.X + half, p.Y + HalfTall);
            // It lies within its level's picture, clear of the cutter's rings, of what is written, and of the part's outline.
            bool Free(Point2 place)
            {
                var box = Written(_frame.At(place));
                return box.Left >= _frame.Left && box.Right <= _frame.Left + _frame.Wide
                    && rings.All(r => Math.Abs(Away(r, place) - _radius) * _frame.Scale > HalfTall + 0.3)
                    && written.TrueForAll(w => w.Shared(box) is not { Wide: > 0, Tall: > 0 })
                    && !lines.Any(l => box.Crosses(l.A, l.B));
            }

            var middle = Math.Abs(level - sounded) < 0.1 ? before.Middle(divide, high, Free) : null;
            high = divide;
            if (middle is var (at, _))
            {
                var p = _frame.At(at);
                var box = Written(p);
                written.Add(box);
                _svg.Rect(box.Left, box.Low, box.Wide, box.Tall, "label");
                _svg.Text(p.X, p.Y + 0.95, text, 7.6, "fig", "middle");
            }
        }
    }

    private static double Away(Point2 a, Point2 b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    private IReadOnlyList<(Point2 At, string Look)> Rings()
    {
        var places = new List<Point2>();
        foreach (var move in _shown)
        {
            foreach (var place in new[] { Plan(move.From), Plan(move.To) })
            {
                if (places.All(p => Away(p, place) > 1e-6))
                {
                    places.Add(place);
                }
            }
        }

        return [.. places.Take(24).Select((p, i) => (p, i == 0 ? "first" : i == places.Count - 1 ? "last" : "between"))];
    }

    private void Cutter()
    {
        foreach (var (at, look) in Rings())
        {
            var p = _frame.At(at);
            _svg.Circle(p.X, p.Y, Math.Max(0.5, _radius * _frame.Scale), _cuts ? look : "first");
            if (_cuts && look == "first" && _radius * _frame.Scale is > 1.8 and < 10)
            {
                Marks.Turning(_svg, p, _radius * _frame.Scale * 0.62, 200, -120, "spin", "spinhead", 1.1);
            }

            _svg.Line(p.X - 0.8, p.Y, p.X + 0.8, p.Y, "thin");
            _svg.Line(p.X, p.Y - 0.8, p.X, p.Y + 0.8, "thin");
        }
    }

    private void Travels()
    {
        var drawn = new HashSet<(Point2, Point2, bool)>();
        foreach (var move in _moves.Where(m => m.Travels && !m.Turns).OrderBy(m => m.Cuts))
        {
            if (drawn.Add((Plan(move.From), Plan(move.To), move.Cuts)) && drawn.Count < 60 && (move.Cuts || !drawn.Contains((Plan(move.From), Plan(move.To), true))))
            {
                Marks.Travel(_svg, _frame.At(Plan(move.From)), _frame.At(Plan(move.To)), move.Cuts);
            }
        }
    }

    private void Turning()
    {
        if (_moves.FirstOrDefault(m => m is { Cuts: true, Turns: true }) is not { } turn || _scene.Setup.Rotary is not { Lies: false } rotary)
        {
            return;
        }

        var centre = _frame.At(new(rotary.X, rotary.Y));
        var reach = Math.Min(centre.Y - _frame.Top + 0.5, Math.Max(centre.X - _frame.Left, _frame.Left + _frame.Wide - centre.X));
        var radius = Math.Max(4, reach);
        var way = Math.Sign(turn.To.T - turn.From.T);
        var sweep = Math.Min(80, Math.Max(25, Math.Abs(turn.To.T - turn.From.T)));
        Marks.Turning(_svg, centre, radius, 90 - (way * sweep / 2), way * sweep, "turn", "turnhead", 3.2);
    }

    private void Axes()
    {
        if (_frame.World.Holds(0, 0))
        {
            Marks.Zero(_svg, _frame.X(0), _frame.Y(0));
        }
    }

    private void Readings()
    {
        var numbers = _scene.Numbers;
        var rings = Rings();
        var (bottom, right) = (_frame.Top + _frame.Tall, _frame.Left + _frame.Wide);
        var wide = numbers.Unit == Quantities.LengthUnit.Inch ? 15.5 : 14;
        var xs = Distinct(rings.Select(r => r.At.X), _frame.World.Left, _frame.World.Right, (int)((_svg.Width - 4.5) / wide));
        var ys = Distinct(rings.Select(r => r.At.Y), _frame.World.Low, _frame.World.High, Math.Max(2, (int)((_frame.Tall + 3) / 3.7)));
        Marks.Below(_svg, [.. xs.Select(x => (_frame.X(x), x == 0 && rings.All(r => r.At.X != 0) ? _frame.Y(0) + 2.4 : Foot(rings, x), numbers.Reading(Axis.X, x), rings.Any(r => r.At.X == x)))], bottom + 7, 8.6, 4.5, _svg.Width);
        Marks.Beside(_svg, [.. ys.Select(y => (_frame.Y(y), y == 0 && rings.All(r => r.At.Y != 0) ? _frame.X(0) + 2.4 : Side(rings, y), numbers.Reading(Axis.Y, y), rings.Any(r => r.At.Y == y)))], right + 3.2, right: true, 8.6, _frame.Top - 1, bottom + 2);
        _svg.Text(0, bottom + 7, "X", 9, "axis");
        _svg.Text(_svg.Width, 3, "Y", 9, "axis", "end");
    }

    private double Foot(IReadOnlyList<(Point2 At, string Look)> rings, double x) => Math.Min(_frame.Top + _frame.Tall, _frame.Y(rings.Where(r => r.At.X == x).Min(r => r.At.Y)) + 1);

    private double Side(IReadOnlyList<(Point2 At, string Look)> rings, double y) => Math.Min(_frame.Left + _frame.Wide, _frame.X(rings.Where(r => r.At.Y == y).Max(r => r.At.X)) + 1);

    // The readings that find room: first and last, then zero, then the rest as they come.
    private static IReadOnlyList<double> Distinct(IEnumerable<double> values, double low, double high, int most)
    {
        var all = values.Distinct().ToList();
        if (all.Count == 0)
        {
            return [];
        }

        List<double> kept = [all[0], all[^1]];
        if (low < 0 && high > 0)
        {
            kept.Add(0);
        }

        return [.. kept.Concat(all).Distinct().Take(most).Order()];
    }
}
