using Handwheel.Sheets.Text;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>The marks of a workshop drawing: dimension lines, centre lines, arrows, the zero.</summary>
internal static class Marks
{
    /// <summary>A dimension line between two arrow heads, with its text over the middle.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="x1">Left end.</param>
    /// <param name="x2">Right end.</param>
    /// <param name="y">Its height on paper.</param>
    /// <param name="label">The text.</param>
    public static void AcrossDimension(Svg svg, double x1, double x2, double y, SizeLabel label)
    {
        svg.Line(x1, y, x2, y, "dim");
        svg.Head(x1, y, Math.PI, 1.8, "dimhead");
        svg.Head(x2, y, 0, 1.8, "dimhead");
        label.Draw(svg, ((x1 + x2) / 2) - (label.Width / 2), y - 1);
    }

    /// <summary>An upright dimension line with its text turned beside it.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="x">Where it stands.</param>
    /// <param name="y1">Upper end.</param>
    /// <param name="y2">Lower end.</param>
    /// <param name="text">The text.</param>
    public static void UprightDimension(Svg svg, double x, double y1, double y2, string text)
    {
        svg.Line(x, y1, x, y2, "dim");
        svg.Head(x, y1, -Math.PI / 2, 1.8, "dimhead");
        svg.Head(x, y2, Math.PI / 2, 1.8, "dimhead");
        svg.TextUp(x - 1, (y1 + y2) / 2, text, 8, "fig");
    }

    /// <summary>Centre lines through a place.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="x">Place.</param>
    /// <param name="y">Place, downwards.</param>
    /// <param name="reach">How far they reach either way.</param>
    public static void Centre(Svg svg, double x, double y, double reach)
    {
        svg.Line(x - reach, y, x + reach, y, "centre");
        svg.Line(x, y - reach, x, y + reach, "centre");
    }

    /// <summary>The zero: a ring with a cross.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="x">Place.</param>
    /// <param name="y">Place, downwards.</param>
    public static void Zero(Svg svg, double x, double y)
    {
        svg.Circle(x, y, 1.25, "zero");
        svg.Line(x - 2.3, y, x + 2.3, y, "zeroline");
        svg.Line(x, y - 2.3, x, y + 2.3, "zeroline");
    }

    /// <summary>A travel arrow: thick and filled where it cuts, thin and dashed with an open head where it goes free.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="from">From, paper.</param>
    /// <param name="to">To, paper.</param>
    /// <param name="cuts">Whether it cuts.</param>
    public static void Travel(Svg svg, Point2 from, Point2 to, bool cuts)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length < 0.6)
        {
            return;
        }

        var angle = Math.Atan2(dy, dx);
        var head = Math.Min(cuts ? 2.6 : 2.0, length * 0.7);
        var short1 = cuts ? head * 0.8 : 0;
        svg.Line(from.X, from.Y, to.X - (dx / length * short1), to.Y - (dy / length * short1), cuts ? "cuts" : "free");
        if (cuts)
        {
            svg.Head(to.X, to.Y, angle, head, "cutshead");
            return;
        }

        var (s1, c1) = Math.SinCos(angle + 2.75);
        var (s2, c2) = Math.SinCos(angle - 2.75);
        svg.Path(Svg.Data([new(to.X + (head * c1), to.Y + (head * s1)), to, new(to.X + (head * c2), to.Y + (head * s2))], close: false), "freehead");
    }

    /// <summary>A turning arrow about a place.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="centre">The place, paper.</param>
    /// <param name="radius">Its radius.</param>
    /// <param name="from">Where it begins, degrees counterclockwise from the right.</param>
    /// <param name="sweep">How far it goes, degrees, counterclockwise positive.</param>
    /// <param name="line">Style of its line.</param>
    /// <param name="head">Style of its head.</param>
    /// <param name="length">Length of its head.</param>
    public static void Turning(Svg svg, Point2 centre, double radius, double from, double sweep, string line, string head, double length)
    {
        var radians = Math.PI / 180;
        var back = Math.Sign(sweep) * Math.Min(Math.Abs(sweep), length / radius / radians * 0.8);
        var points = OutlinePoints.Arc(default, radius, from * radians, (sweep - back) * radians).Select(p => new Point2(centre.X + p.X, centre.Y - p.Y)).ToArray();
        svg.Path(Svg.Data(points, close: false), line);
        var end = (from + sweep) * radians;
        var tipX = centre.X + (radius * Math.Cos(end));
        var tipY = centre.Y - (radius * Math.Sin(end));
        var tail = points[^1];
        svg.Head(tipX, tipY, Math.Atan2(tipY - tail.Y, tipX - tail.X), length, head);
    }

    /// <summary>Readings set along a lower edge, each on a thin line up to its place, none on another.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="readings">Place on paper, line's upper end, text, whether it stands out.</param>
    /// <param name="y">Base line of the texts.</param>
    /// <param name="points">Their size.</param>
    /// <param name="left">Left bound.</param>
    /// <param name="right">Right bound.</param>
    public static void Below(Svg svg, IReadOnlyList<(double X, double Top, string Text, bool Strong)> readings, double y, double points, double left, double right)
    {
        var sizes = readings.Select(r => TextMeasure.Width(r.Text, Face.FigureBold, points) + 1.6).ToArray();
        var at = Spread.Along([.. readings.Select(r => r.X)], sizes, left, right);
        var up = (points * 0.27) + 1;
        for (var i = 0; i < readings.Count; i++)
        {
            var (x, top, text, strong) = readings[i];
            svg.Path(Svg.Data([new(x, top), new(x, y - up - 1.6), new(at[i], y - up)], close: false), "thin");
            svg.Text(at[i], y, text, points, strong ? "figb" : "fig", "middle");
        }
    }

    /// <summary>Readings set down a side, each on a thin line to its place, none on another.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="readings">Place on paper, line's far end, text, whether it stands out.</param>
    /// <param name="x">Where the texts begin (or end).</param>
    /// <param name="right">Whether they stand at the right of the picture.</param>
    /// <param name="points">Their size.</param>
    /// <param name="top">Upper bound.</param>
    /// <param name="low">Lower bound.</param>
    public static void Beside(Svg svg, IReadOnlyList<(double Y, double End, string Text, bool Strong)> readings, double x, bool right, double points, double top, double low)
    {
        var sizes = readings.Select(_ => points * 0.42).ToArray();
        var at = Spread.Along([.. readings.Select(r => r.Y)], sizes, top, low);
        for (var i = 0; i < readings.Count; i++)
        {
            var (y, end, text, strong) = readings[i];
            var near = right ? x - 0.6 : x + 0.6;
            var bend = right ? x - 2.4 : x + 2.4;
            svg.Path(Svg.Data([new(end, y), new(bend, y), new(near, at[i])], close: false), "thin");
            svg.Text(x, at[i] + (points * 0.127), text, points, strong ? "figb" : "fig", right ? "start" : "end");
        }
    }
}
