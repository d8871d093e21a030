using Handwheel.Jobs.Moves;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>How the stock is held: from above and from the front, with what holds it, the part inside it, the zero, and the readings of the edges.</summary>
internal sealed class HoldingPicture
{
    private const double Left = 22;
    private const double Right = 31;

    private readonly HoldingScene _scene;
    private readonly Svg _svg;
    private readonly ViewFrame _plan;
    private readonly ViewFrame _front;
    private readonly string _step;
    private readonly bool _raw;
    private readonly (Box2 Plan, double Low, double High) _stock;

    private HoldingPicture(HoldingScene scene, string name, string firstStep, double width, double mostTall)
    {
        (_scene, _step, Name) = (scene, firstStep, name);
        var stock = _stock = Now(scene, firstStep);
        _raw = Math.Abs(stock.High - scene.StockBox.High) < 1e-6;
        var holds = Near().ToArray();
        var plan = holds.Aggregate(stock.Plan, (box, f) => box.With(Plan(f))).Grown(4);
        var low = Math.Min(stock.Low, Under().Append(stock.Low).Min()) - 3;
        var high = Math.Max(Math.Max(stock.High, scene.PartBox.High), 0) + 2;
        var scale = ViewFrame.Fit(plan.Wide, plan.Tall + (high - low), width - Left - Right, mostTall - 22, 1.5);
        var left = Left + ((width - Left - Right - (plan.Wide * scale)) / 2);
        _plan = new(plan, scale, left, 1);
        _front = new(new(plan.Left, low, plan.Right, high), scale, left, 1 + _plan.Tall + 12);
        _svg = new(width, _front.Top + _front.Tall + 2, $"Holding {name} from above and from the front.");
    }

    private string Name { get; }

    /// <summary>Draws it.</summary>
    /// <param name="scene">The holding.</param>
    /// <param name="name">Its letter.</param>
    /// <param name="firstStep">The id of its first step: the stock as it then is.</param>
    /// <param name="width">Width on paper.</param>
    /// <param name="mostTall">Height at most.</param>
    /// <returns>The picture, and its scale in words.</returns>
    public static (Svg Picture, string Says) Draw(HoldingScene scene, string name, string firstStep, double width, double mostTall)
    {
        var picture = new HoldingPicture(scene, name, firstStep, width, mostTall);
        picture.FromAbove();
        picture.FromFront();
        return (picture._svg, $"{(scene.Numbers.Unit == Quantities.LengthUnit.Inch ? "in" : "mm")}, {ViewFrame.Says(picture._plan.Scale)}; you stand at the bottom edge");
    }

    // The stock as it stands when it is clamped here: what was cut away before is not there to be held or touched.
    private static (Box2 Plan, double Low, double High) Now(HoldingScene scene, string firstStep)
    {
        var bare = scene.StockBox;
        var box = bare.Plan.Grown(0.01 * Math.Max(bare.Plan.Wide, bare.Plan.Tall));
        var map = new HeightMap(box, 90, Math.Clamp((int)(90 * box.Tall / box.Wide), 20, 120), scene.Before(firstStep, 0));
        var places = new List<Point2>();
        var high = double.NegativeInfinity;
        for (var i = 0; i <= map.Wide; i++)
        {
            for (var j = 0; j <= map.Tall; j++)
            {
                if (map[i, j] is { } top)
                {
                    places.Add(map.Place(i, j));
                    high = Math.Max(high, top);
                }
            }
        }

        if (places.Count == 0)
        {
            return bare;
        }

        // The grid finds the ends to its squares; an end that may be the bare stock's is taken to be.
        var (found, near) = (Box2.Around(places), 1.5 * Math.Max(box.Wide / map.Wide, box.Tall / map.Tall));
        double End(double at, double whole) => Math.Abs(at - whole) < near ? whole : at;
        return (new(End(found.Left, bare.Plan.Left), End(found.Low, bare.Plan.Low), End(found.Right, bare.Plan.Right), End(found.High, bare.Plan.High)), bare.Low, high);
    }

    private static Box2 Plan(FixtureFacts fixture) => fixture.Across > 0
        ? new(fixture.Least.X - (fixture.Across / 2), fixture.Least.Y - (fixture.Across / 2), fixture.Least.X + (fixture.Across / 2), fixture.Least.Y + (fixture.Across / 2))
        : new(fixture.Least.X, fixture.Least.Y, fixture.Most.X, fixture.Most.Y);

    private static bool Wide(FixtureFacts fixture) => fixture.Name is "rotary" or "table" or "milling table";

    private IEnumerable<FixtureFacts> Near() => _scene.Setup.Fixtures.Where(f => f.Holds || f.Name.Contains("jaw", StringComparison.Ordinal) || f.Name.Contains("clamp", StringComparison.Ordinal));

    private IEnumerable<double> Under() => _scene.Setup.Fixtures.Where(f => !Wide(f)).Select(f => f.Most.Z).Where(z => z <= _stock.High);

    private void FromAbove()
    {
        _svg.BeginClip("h" + Name + "a", _plan.Left, _plan.Top, _plan.Wide, _plan.Tall);
        _svg.Rect(_plan.Left, _plan.Top, _plan.Wide, _plan.Tall, "ground");
        foreach (var fixture in _scene.Setup.Fixtures.Where(f => f.Name is not ("table" or "milling table")).OrderBy(f => f.Most.Z).ThenBy(f => f.Name, StringComparer.Ordinal))
        {
            Solid(fixture);
        }

        var top = _scene.Before(_step, 0);
        var box = _stock.Plan.Grown(1);
        var wide = Math.Clamp((int)(box.Wide * _plan.Scale / 0.8), 20, 90);
        var map = new HeightMap(box, wide, Math.Clamp((int)(wide * box.Tall / box.Wide), 10, 90), top);
        _svg.Path(_plan.Data(map.Above(-1e9)), "tint0 stockline");
        _svg.Path(_plan.OpenData(_scene.Hidden), "parthidden");
        _svg.Path(_plan.OpenData(_scene.Seen), "part");
        _svg.EndClip();
        Names();
        Marks.Zero(_svg, _plan.X(0), _plan.Y(0));
        var n = _scene.Numbers;
        var foot = _plan.Top + _plan.Tall;
        var stock = _stock.Plan;
        List<(double X, double Top, string Text, bool Strong)> xs = [(_plan.X(stock.Left), foot - 2, n.Reading(Axis.X, stock.Left), false), (_plan.X(0), foot - 2, n.Reading(Axis.X, 0), true), (_plan.X(stock.Right), foot - 2, n.Reading(Axis.X, stock.Right), false)];
        // An end that was cut is found to the picture's squares only: it is drawn, and no reading is printed for it.
        xs.RemoveAll(x => (x.Text == n.Reading(Axis.X, stock.Left) && !IsBare(stock.Left, b => b.Left)) || (x.Text == n.Reading(Axis.X, stock.Right) && !IsBare(stock.Right, b => b.Right)));
        xs.AddRange(Centres().Select(c => (_plan.X(c), foot - 2, n.Reading(Axis.X, c), false)));
        Marks.Below(_svg, [.. xs.DistinctBy(x => x.Text).OrderBy(x => x.X)], foot + 6, 8.6, 6, _svg.Width - 2);
        _svg.Text(0, foot + 6, "X", 10, "axis");
        List<(double Y, double End, string Text, bool Strong)> ys = [(_plan.Y(0), _plan.Left - 1, n.Reading(Axis.Y, 0), true), (_plan.Y(stock.Low), _plan.Left - 1, n.Reading(Axis.Y, stock.Low), false), (_plan.Y(stock.High), _plan.Left - 1, n.Reading(Axis.Y, stock.High), false)];
        ys.RemoveAll(y => (y.Text == n.Reading(Axis.Y, stock.Low) && !IsBare(stock.Low, b => b.Low)) || (y.Text == n.Reading(Axis.Y, stock.High) && !IsBare(stock.High, b => b.High)));
        Marks.Beside(_svg, [.. ys.DistinctBy(y => y.Text)], _plan.Left - 3.6, right: false, 8.6, _plan.Top, foot);
        _svg.Text(0, _plan.Top + 4, "Y", 10, "axis");
    }

    private bool IsBare(double end, Func<Box2, double> of) => Math.Abs(end - of(_scene.StockBox.Plan)) < 1e-9;

    private IEnumerable<double> Centres() => _scene.Part.Features.Where(f => f.Drawn.Feature is { IsCut: true, View: Jobs.Drawings.View.Top }).Select(f =>
    {
        var h = _scene.Pose.Apply(new(f.Drawn.Feature.Centre.X, f.Drawn.Feature.Centre.Y, 0));
        return Math.Round(h.X, 6);
    }).Distinct().Where(x => Math.Abs(x) > 1e-6).Take(3);

    private void Solid(FixtureFacts fixture)
    {
        var look = fixture.Holds ? "jaw" : "body";
        if (fixture.Across > 0)
        {
            _svg.Circle(_plan.X(fixture.Least.X), _plan.Y(fixture.Least.Y), fixture.Across / 2 * _plan.Scale, look);
            return;
        }

        _svg.Rect(_plan.X(fixture.Least.X), _plan.Y(fixture.Most.Y), (fixture.Most.X - fixture.Least.X) * _plan.Scale, (fixture.Most.Y - fixture.Least.Y) * _plan.Scale, look);
    }

    private void Names()
    {
        List<(double Y, double End, string Text, bool Strong)> names = [];
        foreach (var fixture in Near())
        {
            var box = Plan(fixture).Shared(_plan.World);
            names.Add((_plan.Y((box.Low + box.High) / 2), _plan.X(box.Right) - 1, fixture.Name, false));
        }

        var stock = _stock.Plan;
        names.Add((_plan.Y((stock.Low + stock.High) / 2), _plan.X(stock.Right) - 1.5, "stock", false));
        Labelled(names, _plan.Left + _plan.Wide + 3.5, _plan.Top, _plan.Top + _plan.Tall);
    }

    private void Labelled(IReadOnlyList<(double Y, double End, string Text, bool Strong)> names, double x, double top, double low)
    {
        var at = Spread.Along([.. names.Select(t => t.Y)], [.. names.Select(_ => 3.6)], top, low);
        for (var i = 0; i < names.Count; i++)
        {
            _svg.Path(Svg.Data([new(names[i].End, names[i].Y), new(x - 2, names[i].Y), new(x - 0.5, at[i])], close: false), "thin");
            _svg.Text(x, at[i] + 1, names[i].Text, 7.6, "say");
        }
    }

    private void FromFront()
    {
        _svg.BeginClip("h" + Name + "f", _front.Left, _front.Top, _front.Wide, _front.Tall);
        foreach (var fixture in _scene.Setup.Fixtures.Where(f => !Wide(f)).OrderByDescending(f => f.Most.Y).ThenBy(f => f.Name, StringComparer.Ordinal))
        {
            var half = fixture.Across / 2;
            _svg.Rect(_front.X(fixture.Least.X - half), _front.Y(fixture.Most.Z), (fixture.Most.X - fixture.Least.X + fixture.Across) * _front.Scale, (fixture.Most.Z - fixture.Least.Z) * _front.Scale, fixture.Holds ? "jaw" : "body");
        }

        Stock();
        var loops = Part();
        _svg.Path(_front.Data(loops), "part");
        _svg.EndClip();
        if (_front.World.Low <= 0)
        {
            Marks.Zero(_svg, _front.X(0), _front.Y(0));
        }

        Heights();
    }

    private void Stock()
    {
        // Jaws hide the stock from the front: its outline is drawn whole, dashed where they stand before it.
        var (plan, low, _) = _stock;
        var tops = Silhouette().ToArray();
        var outline = new List<Point2> { new(plan.Left, low) };
        outline.AddRange(tops);
        outline.Add(new(plan.Right, low));
        _svg.Path(_front.Data([outline]), "stockfront");
        var jaws = Near().Select(f => f.Most.Z).DefaultIfEmpty(double.NegativeInfinity).Max();
        _svg.Path(_front.Data([[.. outline.Select(p => new Point2(p.X, Math.Max(p.Y, Math.Max(low, jaws))))]]), "stockseen");
    }

    private IEnumerable<Point2> Silhouette()
    {
        var (plan, low, _) = _stock;
        var top = _scene.Before(_step, 0);
        const int Across = 120;
        double? last = null;
        for (var i = 0; i <= Across; i++)
        {
            var x = plan.Left + (plan.Wide * Math.Clamp(i, 0.02, Across - 0.02) / Across);
            var highest = Enumerable.Range(0, 25).Max(j => top(new(x, plan.Low + (plan.Tall * (j + 0.5) / 25)))) ?? low;
            if (last is { } z && Math.Abs(z - highest) > 0.05)
            {
                yield return new(x, z);
            }

            yield return new(x, highest);
            last = highest;
        }
    }

    private IReadOnlyList<IReadOnlyList<Point2>> Part()
    {
        var box = _scene.PartBox;
        var loops = SectionLoops.Middle(_scene.Part, _scene.Job.Drawing, _front.Scale).Select(l => (IReadOnlyList<Point2>)[.. l.Select(p =>
        {
            var h = _scene.Pose.Apply(p);
            return new Point2(h.X, h.Z);
        })]).ToArray();
        var drawn = Box2.Around(loops.SelectMany(l => l));
        return drawn.Wide > box.Plan.Wide * 0.6 && drawn.Tall > (box.High - box.Low) * 0.6
            ? loops
            : [[new(box.Plan.Left, box.Low), new(box.Plan.Right, box.Low), new(box.Plan.Right, box.High), new(box.Plan.Left, box.High)]];
    }

    private void Heights()
    {
        var stock = _stock;
        List<(double Z, double X, string Name)> levels = [(stock.High, stock.Plan.Left, _raw ? "raw top" : "stock\u2019s top"), (_scene.PartBox.Low, _scene.PartBox.Plan.Left, "part\u2019s lowest"), (stock.Low, stock.Plan.Left, "stock rests"), (0, 0, "zero")];
        levels.AddRange(_scene.Setup.Fixtures.Where(f => !Wide(f) && f.Most.Z >= _front.World.Low).Select(f => (f.Most.Z, f.Least.X - (f.Across / 2), "top of " + f.Name)));
        var shown = levels.OrderByDescending(l => l.Z).GroupBy(l => Math.Round(l.Z, 4)).Select(g => (Z: g.Key, g.First().X, Name: string.Join(", ", g.Select(l => l.Name).Distinct()))).ToArray();
        var n = _scene.Numbers;
        var foot = _front.Top + _front.Tall;
        Marks.Beside(_svg, [.. shown.Select(l => (_front.Y(l.Z), Math.Max(_front.Left, _front.X(l.X)) - 0.5, n.Reading(Axis.Z, l.Z), l.Z == 0))], _front.Left - 3.6, right: false, 8.6, _front.Top - 3, foot + 1);
        _svg.Text(0, _front.Top + 2, "Z", 10, "axis");
        Labelled([.. shown.Where(l => l.Name != "zero").Select(l => (_front.Y(l.Z), _front.Left + _front.Wide + 0.5, Short(l.Name), false))], _front.Left + _front.Wide + 3.5, _front.Top - 3, foot + 1);
    }

    private static string Short(string name) => name
        .Replace("zero, ", string.Empty, StringComparison.Ordinal)
        .Replace(", zero", string.Empty, StringComparison.Ordinal)
        .Replace("top of fixed jaw, top of moving jaw", "tops of jaws", StringComparison.Ordinal)
        .Replace("top of moving jaw, top of fixed jaw", "tops of jaws", StringComparison.Ordinal)
        .Replace("top of ", string.Empty, StringComparison.Ordinal);
}
