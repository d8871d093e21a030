using System.Text;
using Handwheel.Sheets.Text;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>A picture written as SVG. Paper millimetres, y downwards; text sizes in points.</summary>
internal sealed class Svg
{
    private readonly StringBuilder _body = new();
    private readonly string _says;

    /// <summary>Initializes a new instance of the <see cref="Svg"/> class.</summary>
    /// <param name="width">Width on paper, millimetres.</param>
    /// <param name="height">Height on paper, millimetres.</param>
    /// <param name="says">What the picture shows, for those who do not see it.</param>
    public Svg(double width, double height, string says)
    {
        Width = width;
        Height = height;
        _says = says;
    }

    /// <summary>Width on paper, millimetres.</summary>
    public double Width { get; }

    /// <summary>Height on paper, millimetres.</summary>
    public double Height { get; set; }

    /// <summary>A straight line.</summary>
    /// <param name="x1">From.</param>
    /// <param name="y1">From, downwards.</param>
    /// <param name="x2">To.</param>
    /// <param name="y2">To, downwards.</param>
    /// <param name="look">The style class.</param>
    public void Line(double x1, double y1, double x2, double y2, string look) =>
        _body.Append("<path class=\"").Append(look).Append("\" d=\"M").Append(N(x1)).Append(' ').Append(N(y1)).Append('L').Append(N(x2)).Append(' ').Append(N(y2)).Append("\"/>");

    /// <summary>A rectangle.</summary>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    /// <param name="look">The style class.</param>
    public void Rect(double x, double y, double width, double height, string look) =>
        _body.Append("<rect class=\"").Append(look).Append("\" x=\"").Append(N(x)).Append("\" y=\"").Append(N(y)).Append("\" width=\"").Append(N(Math.Max(0, width))).Append("\" height=\"").Append(N(Math.Max(0, height))).Append("\"/>");

    /// <summary>A circle.</summary>
    /// <param name="x">Centre.</param>
    /// <param name="y">Centre, downwards.</param>
    /// <param name="radius">Radius.</param>
    /// <param name="look">The style class.</param>
    public void Circle(double x, double y, double radius, string look) =>
        _body.Append("<circle class=\"").Append(look).Append("\" cx=\"").Append(N(x)).Append("\" cy=\"").Append(N(y)).Append("\" r=\"").Append(N(radius)).Append("\"/>");

    /// <summary>A path given as its own data.</summary>
    /// <param name="data">The path's data.</param>
    /// <param name="look">The style class.</param>
    public void Path(string data, string look)
    {
        if (data.Length > 0)
        {
            _body.Append("<path class=\"").Append(look).Append("\" d=\"").Append(data).Append("\"/>");
        }
    }

    /// <summary>Text of a person or figures, escaped.</summary>
    /// <param name="x">Where it is anchored.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="text">The text.</param>
    /// <param name="points">Size, points.</param>
    /// <param name="look">The style class.</param>
    /// <param name="anchor"><c>start</c>, <c>middle</c> or <c>end</c>.</param>
    public void Text(double x, double y, string text, double points, string look, string anchor = "start")
    {
        _body.Append("<text class=\"").Append(look).Append("\" x=\"").Append(N(x)).Append("\" y=\"").Append(N(y)).Append("\" font-size=\"").Append(N(points * TextMeasure.MillimetresPerPoint)).Append('"');
        if (anchor != "start")
        {
            _body.Append(" text-anchor=\"").Append(anchor).Append('"');
        }

        _body.Append('>').Append(look.StartsWith("fig", StringComparison.Ordinal) ? Markup.Figures(text).Replace("<i>", "<tspan class=\"pt\">", StringComparison.Ordinal).Replace("</i>", "</tspan>", StringComparison.Ordinal) : Markup.Escape(Markup.TrueMinus(text))).Append("</text>");
    }

    /// <summary>Text turned to read from the right.</summary>
    /// <param name="x">The middle, across.</param>
    /// <param name="y">The middle, down.</param>
    /// <param name="text">The text.</param>
    /// <param name="points">Size, points.</param>
    /// <param name="look">The style class.</param>
    public void TextUp(double x, double y, string text, double points, string look) =>
        _body.Append("<text class=\"").Append(look).Append("\" transform=\"translate(").Append(N(x)).Append(' ').Append(N(y)).Append(") rotate(-90)\" text-anchor=\"middle\" font-size=\"").Append(N(points * TextMeasure.MillimetresPerPoint)).Append("\">").Append(Markup.Escape(Markup.TrueMinus(text))).Append("</text>");

    /// <summary>Begins a part of the picture that is cut off at a rectangle.</summary>
    /// <param name="id">A name of its own within the page.</param>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    public void BeginClip(string id, double x, double y, double width, double height)
    {
        _body.Append("<clipPath id=\"").Append(id).Append("\"><rect x=\"").Append(N(x)).Append("\" y=\"").Append(N(y)).Append("\" width=\"").Append(N(width)).Append("\" height=\"").Append(N(height)).Append("\"/></clipPath><g clip-path=\"url(#").Append(id).Append(")\">");
    }

    /// <summary>Ends what <see cref="BeginClip"/> began.</summary>
    public void EndClip() => _body.Append("</g>");

    /// <summary>A closed arrow head.</summary>
    /// <param name="x">Its tip.</param>
    /// <param name="y">Its tip, downwards.</param>
    /// <param name="angle">The way it points, radians, clockwise on paper from right.</param>
    /// <param name="length">Its length.</param>
    /// <param name="look">The style class.</param>
    public void Head(double x, double y, double angle, double length, string look)
    {
        var (sin, cos) = Math.SinCos(angle);
        var half = length * 0.32;
        var backX = x - (length * cos);
        var backY = y - (length * sin);
        Path(Data([new(x, y), new(backX - (half * sin), backY + (half * cos)), new(backX + (half * sin), backY - (half * cos))], close: true), look);
    }

    /// <summary>The finished picture.</summary>
    /// <returns>An <c>svg</c> element.</returns>
    public override string ToString() =>
        $"<svg role=\"img\" aria-label=\"{Markup.Escape(_says)}\" width=\"{N(Width)}mm\" height=\"{N(Height)}mm\" viewBox=\"0 0 {N(Width)} {N(Height)}\">{_body}</svg>";

    /// <summary>Path data of a run of points.</summary>
    /// <param name="points">Paper points.</param>
    /// <param name="close">Whether it closes.</param>
    /// <returns>Path data.</returns>
    public static string Data(IReadOnlyList<Point2> points, bool close)
    {
        if (points.Count < 2)
        {
            return string.Empty;
        }

        var data = new StringBuilder(points.Count * 12);
        for (var i = 0; i < points.Count; i++)
        {
            data.Append(i == 0 ? 'M' : 'L').Append(N2(points[i].X)).Append(' ').Append(N2(points[i].Y));
        }

        return data.Append(close ? "Z" : string.Empty).ToString();
    }

    private static string N(double value) => Markup.Number(value);

    private static string N2(double value) => Markup.Number(Math.Round(value, 2, MidpointRounding.AwayFromZero));
}
