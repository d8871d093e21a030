using System.Text;
using Handwheel.Solids.Grids;

namespace Handwheel.Timing;

/// <summary>How cost grows with moves and with spacing, beside a streaming loop over as many bytes, as a table and as an SVG.</summary>
internal static class Growth
{
    public static void Run(string? svgFile)
    {
        var moves = new List<(double X, double Ms, double Stream)>();
        foreach (var k in (int[])[1, 4, 16])
        {
            moves.Add((k, Cut(300 * k, 256, out var stream), stream));
            Console.WriteLine($"moves x{k} ({300 * k}), 256 rays across: {moves[^1].Ms:F2} ms; streaming the rays once: {stream:F2} ms");
        }

        var spacing = new List<(double X, double Ms, double Stream)>();
        foreach (var k in (int[])[1, 2, 4])
        {
            spacing.Add((k, Cut(300, 192 * k, out var stream), stream));
            Console.WriteLine($"spacing x1/{k} ({192 * k} rays across), 300 moves: {spacing[^1].Ms:F2} ms; streaming the rays once: {stream:F2} ms");
        }

        if (svgFile is not null)
        {
            File.WriteAllText(svgFile, Svg(moves, spacing));
        }
    }

    private static double Cut(int count, int across, out double stream)
    {
        var cuts = SampleJob.Cuts(SampleJob.Moves(count));
        RayGrid grid = null!;
        var best = Bench.Best(60, _ => grid.CutAll(cuts), _ => grid = new RayGrid(SampleJob.Stock, across, threads: 2));
        stream = Stream(3 * across * across * 2);
        return best;
    }

    // Reads and writes as many doubles as the rays hold ends, on two threads.
    private static double Stream(int doubles)
    {
        var data = new double[doubles];
        return Bench.Best(25, _ => Parallel.For(0, 2, t =>
        {
            var half = data.AsSpan(t * data.Length / 2, data.Length / 2);
            for (var i = 0; i < half.Length; i++)
            {
                half[i] += 1;
            }
        }));
    }

    private static string Svg(List<(double X, double Ms, double Stream)> moves, List<(double X, double Ms, double Stream)> spacing)
    {
        var svg = new StringBuilder();
        svg.AppendLine("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 760 340\" font-family=\"sans-serif\" font-size=\"13\">");
        svg.AppendLine("<rect width=\"760\" height=\"340\" fill=\"white\"/>");
        Panel(svg, 0, "moves, times 300", moves, "256 x 256 rays, three ways");
        Panel(svg, 380, "rays across, times 192", spacing, "300 moves");
        svg.AppendLine("</svg>");
        return svg.ToString();
    }

    private static void Panel(StringBuilder svg, double left, string along, List<(double X, double Ms, double Stream)> data, string title)
    {
        double low = Math.Pow(10, Math.Floor(Math.Log10(data.Min(d => d.Stream)))), high = Math.Pow(10, Math.Ceiling(Math.Log10(data.Max(d => d.Ms))));
        double X(double x) => left + 60 + (280 * Math.Log(x) / Math.Log(data[^1].X));
        double Y(double y) => 290 - (230 * Math.Log(y / low) / Math.Log(high / low));
        svg.AppendLine($"<text x=\"{left + 60:F0}\" y=\"24\" font-weight=\"bold\">{title}</text><text x=\"{left + 60:F0}\" y=\"42\" fill=\"#444\">ms: <tspan fill=\"#0b5\">engine</tspan>, <tspan fill=\"#888\">streaming the rays once</tspan></text>");
        for (var y = low; y <= high * 1.001; y *= 10)
        {
            svg.AppendLine($"<line x1=\"{left + 60:F0}\" x2=\"{left + 340:F0}\" y1=\"{Y(y):F1}\" y2=\"{Y(y):F1}\" stroke=\"#ddd\"/><text x=\"{left + 54:F0}\" y=\"{Y(y) + 4:F1}\" text-anchor=\"end\">{y:G3}</text>");
        }

        foreach (var (colour, pick) in ((string, Func<(double X, double Ms, double Stream), double>)[])[("#0b5", d => d.Ms), ("#888", d => d.Stream)])
        {
            svg.AppendLine($"<polyline fill=\"none\" stroke=\"{colour}\" stroke-width=\"2\" points=\"{string.Join(' ', data.Select(d => $"{X(d.X):F1},{Y(pick(d)):F1}"))}\"/>");
            foreach (var d in data)
            {
                svg.AppendLine($"<circle cx=\"{X(d.X):F1}\" cy=\"{Y(pick(d)):F1}\" r=\"4\" fill=\"{colour}\"/><text x=\"{X(d.X) + (d.X == 1 ? 4 : 0):F1}\" y=\"{Y(pick(d)) - 8:F1}\" text-anchor=\"{(d.X == 1 ? "start" : "end")}\">{pick(d):G3}</text>");
            }
        }

        foreach (var d in data)
        {
            svg.AppendLine($"<text x=\"{X(d.X):F1}\" y=\"308\" text-anchor=\"middle\">x{d.X:G}</text>");
        }

        svg.AppendLine($"<text x=\"{left + 200:F0}\" y=\"328\" text-anchor=\"middle\">{along}</text>");
    }
}
