using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>How the world lies on paper: a scale and a corner; up in the world is up on paper.</summary>
/// <param name="World">What is shown, millimetres.</param>
/// <param name="Scale">Paper millimetres to one of the world.</param>
/// <param name="Left">Paper X of the world's left.</param>
/// <param name="Top">Paper Y of the world's top.</param>
internal readonly record struct ViewFrame(Box2 World, double Scale, double Left, double Top)
{
    private static readonly double[] Scales = [10, 8, 5, 4, 3, 2.5, 2, 1.5, 1.25, 1, 0.8, 0.75, 2.0 / 3, 0.5, 0.4, 1.0 / 3, 0.25, 0.2, 0.15, 0.1, 0.05, 0.02, 0.01, 0.005];

    /// <summary>Width on paper.</summary>
    public double Wide => World.Wide * Scale;

    /// <summary>Height on paper.</summary>
    public double Tall => World.Tall * Scale;

    /// <summary>Paper X.</summary>
    /// <param name="x">World X.</param>
    /// <returns>Paper X.</returns>
    public double X(double x) => Left + ((x - World.Left) * Scale);

    /// <summary>Paper Y, downwards.</summary>
    /// <param name="y">World Y.</param>
    /// <returns>Paper Y.</returns>
    public double Y(double y) => Top + ((World.High - y) * Scale);

    /// <summary>A point on paper.</summary>
    /// <param name="p">World.</param>
    /// <returns>Paper.</returns>
    public Point2 At(Point2 p) => new(X(p.X), Y(p.Y));

    /// <summary>Path data of loops.</summary>
    /// <param name="loops">World loops.</param>
    /// <returns>One path.</returns>
    public string Data(IEnumerable<IReadOnlyList<Point2>> loops)
    {
        var frame = this;
        return string.Concat(loops.Select(l => Svg.Data([.. l.Select(frame.At)], close: true)));
    }

    /// <summary>Path data of open runs.</summary>
    /// <param name="runs">World runs.</param>
    /// <returns>One path.</returns>
    public string OpenData(IEnumerable<IReadOnlyList<Point2>> runs)
    {
        var frame = this;
        return string.Concat(runs.Select(l => Svg.Data([.. l.Select(frame.At)], close: false)));
    }

    /// <summary>The greatest round scale at which a box fits.</summary>
    /// <param name="wide">World width.</param>
    /// <param name="tall">World height.</param>
    /// <param name="roomWide">Paper width.</param>
    /// <param name="roomTall">Paper height.</param>
    /// <param name="most">The greatest scale wanted.</param>
    /// <returns>The scale.</returns>
    public static double Fit(double wide, double tall, double roomWide, double roomTall, double most)
    {
        var fits = Math.Min(roomWide / Math.Max(wide, 1e-6), roomTall / Math.Max(tall, 1e-6));
        foreach (var scale in Scales)
        {
            if (scale <= most + 1e-9 && scale <= fits + 1e-9)
            {
                return scale;
            }
        }

        return fits;
    }

    /// <summary>A scale in words.</summary>
    /// <param name="scale">Paper to world.</param>
    /// <returns><c>full size</c>, <c>twice full size</c>, <c>half full size</c>, <c>1.5 times full size</c>.</returns>
    public static string Says(double scale) => scale switch
    {
        > 0.9999 and < 1.0001 => "full size",
        > 1.9999 and < 2.0001 => "twice full size",
        > 0.4999 and < 0.5001 => "half full size",
        _ => $"{Text.Markup.Number(Math.Round(scale, 2))} times full size",
    };
}
