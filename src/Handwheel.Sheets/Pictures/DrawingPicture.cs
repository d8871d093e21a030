using Handwheel.Jobs;
using Handwheel.Jobs.Drawings;
using Handwheel.Quantities;
using Handwheel.Sheets.Text;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>The workshop drawing: the part from above and cut through, dimensioned from the drawing's own features.</summary>
internal sealed class DrawingPicture
{
    private const double LabelTall = 9.2;

    private readonly Job _job;
    private readonly PartColumns _part;
    private readonly SheetNumbers _numbers;
    private readonly Svg _svg;
    private readonly ViewFrame _plan;
    private readonly ViewFrame _cut;
    private readonly double _cutY;
    private readonly IReadOnlyList<(SizeLabel Label, Point2 Centre, double Rim, string Name)> _labels;

    private DrawingPicture(Job job, PartColumns part, SheetNumbers numbers, double width, double roomTall)
    {
        (_job, _part, _numbers) = (job, part, numbers);
        _labels = FeatureLabels.Of(job.Drawing, numbers);
        var (leftWide, rightWide) = (ColumnWide(left: true), ColumnWide(left: false));
        var above = 6 + (6.5 * Across().Count);
        var tall = _part.Box.Tall;
        var deep = _part.High - _part.Low;
        var scale = ViewFrame.Fit(_part.Box.Wide, tall + deep, width - leftWide - rightWide - 22, Math.Max(20, roomTall - above - 30), 5);
        var labelsTall = LabelTall * Math.Max(_labels.Count(l => IsLeft(l.Centre)), _labels.Count(l => !IsLeft(l.Centre)));
        var planTall = Math.Max(tall * scale, labelsTall);
        var left = leftWide + 11 + ((width - leftWide - rightWide - 22 - (_part.Box.Wide * scale)) / 2);
        _plan = new(_part.Box, scale, left, above + ((planTall - (tall * scale)) / 2));
        _cutY = SectionLoops.PlaneY(part, job.Drawing);
        var cutTop = above + planTall + 14;
        _cut = new(new(_part.Box.Left, _part.Low, _part.Box.Right, _part.High), scale, left, cutTop);
        _svg = new(width, cutTop + (deep * scale) + 11, "The finished part from above, and cut through the middle, with its sizes.");
        (LeftWide, RightWide) = (leftWide, rightWide);
    }

    /// <summary>What is drawn, in words, for the heading: unit and scale.</summary>
    public string Says => $"{_numbers.Unit.Symbol()}, {ViewFrame.Says(_plan.Scale)}";

    private double LeftWide { get; }

    private double RightWide { get; }

    /// <summary>Draws it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="part">Its part.</param>
    /// <param name="numbers">How the sheet prints.</param>
    /// <param name="width">Width on paper.</param>
    /// <param name="roomTall">Height there is room for.</param>
    /// <returns>The picture, and its scale in words.</returns>
    public static (Svg Picture, string Says) Draw(Job job, PartColumns part, SheetNumbers numbers, double width, double roomTall)
    {
        var drawing = new DrawingPicture(job, part, numbers, width, roomTall);
        drawing.Plan();
        drawing.Section();
        drawing.Labels(left: true);
        drawing.Labels(left: false);
        return (drawing._svg, drawing.Says);
    }

    private static string Others(SheetNumbers numbers, Limits? others) => others is { } o && Math.Abs(o.UpperDeviation + o.LowerDeviation) < 1e-9
        ? "others \u00B1" + numbers.Short(o.UpperDeviation)
        : others is { } p ? $"others +{numbers.Short(p.UpperDeviation)} {numbers.Short(p.LowerDeviation)}" : string.Empty;

    private bool IsLeft(Point2 centre) => centre.X < (_part.Box.Left + _part.Box.Right) / 2;

    private double ColumnWide(bool left) => _labels.Where(l => IsLeft(l.Centre) == left).Select(l => l.Label.Width).DefaultIfEmpty(0).Max() + 1;

    private List<Size> Across() => [.. _job.Drawing.Sizes.Where(s => s is { Stated: true, Kind: SizeKind.Distance, Along: "x", Other: not null } && Centre(s.Feature) is not null && Centre(s.Other!) is not null)];

    private Point2? Centre(string name) => _job.Drawing.Features.FirstOrDefault(f => f.View == View.Top && string.Equals(f.Name, name, StringComparison.Ordinal))?.Centre;

    private void Plan()
    {
        _svg.Text(0, 3, "from above", 7.6, "say");
        var metal = _part.Features.Where(f => !f.Drawn.Feature.IsCut && f.Drawn.Feature.View == View.Top).Select(f => f.Loops).ToArray();
        foreach (var loops in metal)
        {
            _svg.Path(_plan.Data(loops), "metal");
        }

        var edges = PartEdges.FromAbove(_part);
        _svg.Path(_plan.OpenData(edges.Hidden), "parthidden");
        _svg.Path(_plan.OpenData(edges.Seen), "part");
        foreach (var place in _job.Drawing.Features.Where(f => f.View == View.Top && f.Shape is RoundShape or RingShape or PolygonShape or SlotShape).SelectMany(f => f.Places).Select(p => p.Centre).Distinct())
        {
            Marks.Centre(_svg, _plan.X(place.X), _plan.Y(place.Y), 2.6);
        }

        var y = _plan.Y(_cutY);
        var (left, right) = (_plan.X(_part.Box.Left), _plan.X(_part.Box.Right));
        _svg.Line(left - 4, y, right + 4, y, "centre");
        CutMark(left - 5, y);
        CutMark(right + 5, y);
        if (_part.Box.Holds(0, 0))
        {
            Marks.Zero(_svg, _plan.X(0), _plan.Y(0));
        }

        var sizes = Across();
        for (var i = 0; i < sizes.Count; i++)
        {
            var (a, b) = (Centre(sizes[i].Feature)!.Value, Centre(sizes[i].Other!)!.Value);
            var at = 8 + (6.5 * i);
            var (x1, x2) = (_plan.X(Math.Min(a.X, b.X)), _plan.X(Math.Max(a.X, b.X)));
            _svg.Line(x1, _plan.Y(a.X < b.X ? a.Y : b.Y) - 2.8, x1, at - 1.5, "thin");
            _svg.Line(x2, _plan.Y(a.X < b.X ? b.Y : a.Y) - 2.8, x2, at - 1.5, "thin");
            Marks.AcrossDimension(_svg, x1, x2, at, SizeLabel.Of(_numbers, sizes[i].Limits, stated: true));
        }
    }

    private void CutMark(double x, double y)
    {
        _svg.Line(x - 1.5, y, x + 1.5, y, "cutmark");
        _svg.Line(x, y, x, y - 2.4, "dim");
        _svg.Head(x, y - 4, -Math.PI / 2, 2, "dimhead");
        _svg.Text(x, y + 4, "A", 8.6, "sayb", "middle");
    }

    private void Section()
    {
        var loops = SectionLoops.Middle(_part, _job.Drawing, _cut.Scale).Select(l => (IReadOnlyList<Point2>)[.. l.Select(p => new Point2(p.X, p.Z))]).ToArray();
        _svg.Path(_cut.Data(loops), "metal");
        _svg.Path(Hatch.Data(loops.Select(l => (IReadOnlyList<Point2>)[.. l.Select(_cut.At)]), 1.5), "hatch");
        _svg.Path(_cut.Data(loops), "part");
        foreach (var (feature, low, high) in _job.Drawing.Features.Where(f => f is { View: View.Top, IsCut: true } && Math.Abs(f.Centre.Y - _cutY) < 1e-6).Select(f => (f, Math.Max(f.From.Middle, _part.Low), Math.Min(f.To.Middle, _part.High))))
        {
            _svg.Line(_cut.X(feature.Centre.X), _cut.Y(high) - 2.5, _cut.X(feature.Centre.X), _cut.Y(low) + 2.5, "centre");
        }

        if (_part.Low <= 0 && _part.High >= 0 && _part.Box.Holds(0, _cutY))
        {
            Marks.Zero(_svg, _cut.X(0), _cut.Y(0));
        }

        var (right, left) = (_cut.X(_part.Box.Right), _cut.X(_part.Box.Left));
        var levels = Levels();
        Marks.Beside(_svg, [.. levels.Select(z => (_cut.Y(z), EndAt(z), Signed(z), false))], right + 9, right: true, 8.2, _cut.Top - 4, _cut.Y(_part.Low) + 5);
        Heights(left);
        var low2 = _cut.Y(_part.Low);
        Marks.Below(_svg, [.. Ordinates().Select(x => (_cut.X(x), low2 + 1, Signed(x), false))], low2 + 8.5, 8.2, 4, _svg.Width);
        _svg.Text(0, low2 + 8.5, "X", 8.6, "axis");
        _svg.Text(right + 9, _cut.Top - 6, "Z", 8.6, "axis");
        _svg.Text(0, _cut.Top - 6.5, "A\u2013A, cut through and seen from the front", 7.6, "say");
        _svg.Text(_svg.Width, low2 + 8.5, Others(_numbers, _job.Drawing.Others), 7.6, "say", "end");
        Aside();
    }

    // What is seen from the front lies hidden behind or before the cut; its sizes, and those seen from the right, are told in words.
    private void Aside()
    {
        foreach (var (drawn, loops) in _part.Features.Where(f => f.Drawn.Feature.View == View.Front))
        {
            _svg.Path(_cut.OpenData([.. loops.Select(l => (IReadOnlyList<Point2>)[.. l, l[0]])]), "parthidden");
        }

        foreach (var line in FeatureLabels.FromAside(_job.Drawing, _numbers).SelectMany(l => TextMeasure.Wrapped(l, Face.Plain, 7.6, _svg.Width)))
        {
            _svg.Height += 3.8;
            _svg.Text(0, _svg.Height - 1, line, 7.6, "say");
        }
    }

    private string Signed(double value)
    {
        var text = _numbers.Short(value);
        return value > 0 && text != "0" ? "+" + text : text;
    }

    private double EndAt(double z)
    {
        // The level's line begins at the right of the feature that ends there.
        var right = _part.Features.Where(f => f.Drawn.Feature.View == View.Top && (Math.Abs(f.Drawn.Feature.From.Nominal - z) < 0.06 || Math.Abs(f.Drawn.Feature.To.Nominal - z) < 0.06))
            .SelectMany(f => f.Loops).SelectMany(l => l).Select(p => p.X).DefaultIfEmpty(_part.Box.Right).Max();
        return _cut.X(Math.Min(right, _part.Box.Right)) + 0.6;
    }

    private void Heights(double left)
    {
        var at = left - 6;
        foreach (var size in _job.Drawing.Sizes.Where(s => s.Stated && s.Kind is SizeKind.High or SizeKind.Deep))
        {
            if (_job.Drawing.Features.FirstOrDefault(f => f.View == View.Top && string.Equals(f.Name, size.Feature, StringComparison.Ordinal)) is not { } feature || at < 2)
            {
                continue;
            }

            var (y1, y2) = (_cut.Y(feature.To.Middle), _cut.Y(feature.From.Middle));
            _svg.Line(left - 1, y1, at - 1, y1, "thin");
            _svg.Line(left - 1, y2, at - 1, y2, "thin");
            var label = SizeLabel.Of(_numbers, size.Limits, stated: true);
            Marks.UprightDimension(_svg, at, y1, y2, string.Empty);
            label.Draw(_svg, Math.Max(0, at - label.Width - 1.2), ((y1 + y2) / 2) + 1);
            at -= label.Width + 5;
        }
    }

    private List<double> Levels() => Distinct(_job.Drawing.Features.Where(f => f.View == View.Top).SelectMany(f => f.IsCut && f.Through ? [] : new[] { f.From.Nominal, f.To.Nominal }).Where(z => z >= _part.Low - 1e-6 && z <= _part.High + 1e-6));

    private List<double> Ordinates() => Distinct([.. _job.Drawing.Features.Where(f => f.View == View.Top && f.Shape is not (TangentShape or OutlineShape)).SelectMany(f => f.Places).Select(p => p.Centre.X), Nominal(_part.Box.Left, -1), Nominal(_part.Box.Right, 1)]);

    // An end that a round makes is told at its nominal size, not as aimed.
    private double Nominal(double end, int way)
    {
        foreach (var feature in _job.Drawing.Features.Where(f => f is { View: View.Top, IsCut: false }))
        {
            var across = feature.Shape switch
            {
                RoundShape round => round.Across,
                RingShape ring => ring.Across,
                _ => (Limits?)null,
            };
            if (across is { } size && Math.Abs(feature.Centre.X + (way * size.Middle / 2) - end) < 1e-6)
            {
                return feature.Centre.X + (way * size.Nominal / 2);
            }
        }

        return end;
    }

    private static List<double> Distinct(IEnumerable<double> values)
    {
        var kept = new List<double>();
        foreach (var value in values.Order())
        {
            if (kept.Count == 0 || value - kept[^1] > 0.06)
            {
                kept.Add(value);
            }
        }

        return kept;
    }

    private void Labels(bool left)
    {
        var mine = _labels.Where(l => IsLeft(l.Centre) == left).ToArray();
        var at = Spread.Along([.. mine.Select(l => _plan.Y(l.Centre.Y) + (l.Rim * _plan.Scale * (l.Label.Name.Contains("deep", StringComparison.Ordinal) || l.Label.Name.Contains("through", StringComparison.Ordinal) ? 0.7 : -0.7)))], [.. mine.Select(_ => LabelTall)], 3, _cut.Top - 9);
        for (var i = 0; i < mine.Length; i++)
        {
            var (label, centre, _, _) = mine[i];
            var x = left ? 0 : _svg.Width - RightWide + 1;
            var edge = left ? label.ValueWidth + 0.6 : x - 0.6;
            var (cx, cy) = (_plan.X(centre.X), _plan.Y(centre.Y));
            label.Draw(_svg, x, at[i]);
            _svg.Text(x, at[i] + 3.6, label.Name, 7.6, "say");
            _svg.Line(left ? 0 : x - 0.6, at[i] + 0.9, left ? edge : x + label.ValueWidth, at[i] + 0.9, "dim");
            var tip = PartEdges.Lines(_part, mine[i].Name).Select(_plan.At).OrderBy(p => ((p.X - edge) * (p.X - edge)) + ((p.Y - at[i]) * (p.Y - at[i]))).FirstOrDefault(new Point2(cx, cy));
            var (tipX, tipY) = (tip.X, tip.Y);
            var angle = Math.Atan2(at[i] + 0.9 - tipY, edge - tipX);
            _svg.Line(edge, at[i] + 0.9, tipX, tipY, "dim");
            _svg.Head(tipX, tipY, angle + Math.PI, 1.8, "dimhead");
        }
    }
}
