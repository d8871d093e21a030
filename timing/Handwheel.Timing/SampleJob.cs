using System.Text.Json.Nodes;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Timing;

/// <summary>A job of any number of moves on a 48 x 14 x 30 bar: faced in rows, a hub and an end turned round, flanks, holes; in thin passes.</summary>
internal static class SampleJob
{
    public static readonly Block Stock = new(new(-9, -7, -30), new(39, 7, 0.5));

    public sealed record Move(string Kind, double Radius, double Low, Point2 From, Point2 To, Point2 Centre, double Sweep)
    {
        public const double Flute = 22;

        public SweptCut ToCut() => new(
            CutterShape.EndMill(2 * Radius, Flute, 2 * Radius, 30),
            Kind switch
            {
                "line" => CutterPath.Straight(From.At(Low), To.At(Low)),
                "arc" => CutterPath.Arc(Centre, From.At(Low), Sweep),
                _ => CutterPath.At(From.At(Low)),
            });

        public JsonObject ToJson()
        {
            JsonObject move = new() { ["kind"] = Kind, ["radius"] = Radius, ["low"] = Low, ["high"] = Low + Flute };
            switch (Kind)
            {
                case "line":
                    move["from"] = Pair(From);
                    move["to"] = Pair(To);
                    break;
                case "arc":
                    move["centre"] = Pair(Centre);
                    move["from"] = Pair(From);
                    move["sweep"] = Sweep;
                    break;
                default:
                    move["at"] = Pair(From);
                    break;
            }

            return move;
        }

        private static JsonArray Pair(Point2 p) => [p.X, p.Y];
    }

    public static List<Move> Moves(int count)
    {
        var random = new Random(20);
        var moves = new List<Move>();
        for (var i = 0; i < count; i++)
        {
            // Passes go down as the job goes on; each with places slightly off round numbers, as rounded readings are.
            var share = (i + 1.0) / count;
            var z = -8 * share;
            var slip = 0.01 * random.NextDouble();
            moves.Add((i % 10) switch
            {
                0 or 1 => new("line", 5, z * 0.06, new(50, 3 + slip), new(-20, 3 + slip), default, 0),
                2 or 3 => new("line", 5, z, new(50, -3 - slip), new(9.84 + slip, -3 - slip), default, 0),
                4 => new("arc", 5, z, new(9.99 + slip, 0), default, default, -2 * Math.PI),
                5 => new("arc", 5, z * 1.6, new(-9.99 - slip, 0.3), default, default, 1.5 - slip),
                6 => new("line", 5, z * 1.6, new(28.2, 9.9 + slip), new(0.3, 10.9 + slip), default, 0),
                7 => new("line", 5, z * 1.6, new(0.3, -10.9 - slip), new(28.2, -9.9 - slip), default, 0),
                8 => new("arc", 5, z * 1.6, new(28, 9 + slip), default, new(28, 0), -Math.PI),
                _ => new("plunge", 1 + slip, z * 1.7, new(28 * (i / 10 % 3) / 2.0, slip), default, default, 0),
            });
        }

        return moves;
    }

    public static string Write(List<Move> moves, IEnumerable<(int Axis, double U, double V)> lines)
    {
        var job = new JsonObject
        {
            ["chord"] = 0.002,
            ["stock"] = new JsonArray(-9, -7, -30, 39, 7, 0.5),
            ["cuts"] = new JsonArray([.. moves.Select(m => (JsonNode)m.ToJson())]),
            ["lines"] = new JsonArray([.. lines.Select(l => (JsonNode)new JsonArray(l.Axis, l.U, l.V))]),
        };
        var path = Path.Combine(Path.GetTempPath(), FormattableString.Invariant($"handwheel-peer-{moves.Count}.json"));
        File.WriteAllText(path, job.ToJsonString());
        return path;
    }

    public static IReadOnlyList<ISolid> Cuts(List<Move> moves) => [.. moves.Select(m => m.ToCut())];
}
