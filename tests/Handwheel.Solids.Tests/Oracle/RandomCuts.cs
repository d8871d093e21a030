using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Tests.Oracle;

/// <summary>Cutters, paths and lines drawn from a seed; a share of them on purpose along axes and on round numbers.</summary>
internal sealed class RandomCuts(int seed)
{
    private readonly Random random = new(seed);

    public int Kind { get; private set; }

    public double Between(double lo, double hi) => lo + (random.NextDouble() * (hi - lo));

    public int Pick(int n) => random.Next(n);

    public Point3 Place(double reach) => new(Number(reach), Number(reach), Number(reach));

    public CutterShape Cutter()
    {
        Kind = random.Next(14);
        var d = Between(1, 12);
        return Kind switch
        {
            0 => CutterShape.EndMill(d, Between(2, 20), 6, 30),
            1 => CutterShape.BallNose(d, d, 6, 30),
            2 => CutterShape.BullNose(d, Between(0.05, 0.45) * d, d, 6, 30),
            3 => CutterShape.Drill(d, Between(1, 2.5), 20, d, 40),
            4 => CutterShape.Dovetail(d, Between(0.9, 1.3), 0.3 * d, d / 3, 30),
            5 => CutterShape.Saw(4 * d, Between(0.3, 2), 8, 20, 3, 6),
            6 => CutterShape.CentreDrill(0.3 * d, 0.4 * d, 2, 1.05, d, 40),
            7 => CutterShape.CupWheel(d, 0.7 * d, 3, 5),
            8 => CutterShape.Of([ProfilePiece.Round(1 + (0.5 * d), 0, 0.5 * d, 0, 0.5 * d, bulges: false), ProfilePiece.Straight(0.5 * d, 1 + (0.5 * d), d, 1 + (0.5 * d))]),
            9 => CutterShape.Of([ProfilePiece.Straight(0, 0.4 * d, 1, 0.5 * d).Hollow(0.1 * d, 0.3 * d), ProfilePiece.Straight(1, 0.5 * d, 4, 0.3 * d).Hollow(0.3 * d, 0.1 * d)], false),
            10 => CutterShape.FlyCutter(d, 0.4 * d, 0.5 * d, 0.3 * d, 5, 0.1 * d),
            11 => CutterShape.Of([ProfilePiece.Straight(0, 0.5 * d, 0.6 * d, 0.5 * d).HollowRound(0.05 * d, 0.2 * d, 0.42 * d, bulges: true)], false),
            12 => CutterShape.Of([ProfilePiece.Round(0.3 * d, 0.2 * d, 0.2 * d, 0, 0.4 * d).HollowRound(0.2 * d, 0.2 * d, 0.2 * d, bulges: false), ProfilePiece.Straight(0.4 * d, 0.4 * d, 0.5 * d, 0.4 * d).Hollow(0.1 * d, 0.2 * d)], false),
            _ => CutterShape.Of([ProfilePiece.Round(0.3 * d, 0.2 * d, 0.2 * d, 0, 0.4 * d), ProfilePiece.Straight(0.4 * d, 0.2 * d, d, 0.4 * d)]),
        };
    }

    /// <summary>A ring on a path smaller than its hole, so that a core is left standing.</summary>
    public (CutterShape Ring, CutterPath Path) RingOnSmallPath()
    {
        CutterShape ring;
        do
        {
            ring = Cutter();
        }
        while (!ring.Pieces.Any(p => p.Cuts && p.IsHollow));
        var reach = 0.25 * ring.GreatestRadius;
        var from = Place(2);
        var to = from + new Vector3(Between(-reach, reach), Between(-reach, reach), 0);
        return (ring, random.Next(3) == 0 ? CutterPath.Straight(from, to) : CutterPath.Arc(to.Plan, from, Between(-7, 7)));
    }

    public CutterPath Path(bool mayClimb)
    {
        var @from = Place(10);
        return random.Next(mayClimb ? 5 : 3) switch
        {
            0 => CutterPath.At(@from),
            1 => CutterPath.Straight(@from, Place(10) with { Z = @from.Z }),
            2 => CutterPath.Arc(Place(8).Plan, @from, random.Next(4) == 0 ? 7 : Between(-6.2, 6.2)),
            3 => CutterPath.Straight(@from, @from with { Z = Number(10) }),
            _ => CutterPath.Straight(@from, Place(10)),
        };
    }

    public Line3 Line()
    {
        var at = Place(12);
        return random.Next(6) switch
        {
            0 => Line3.AlongX(at.Y, at.Z),
            1 => Line3.AlongY(at.X, at.Z),
            2 => Line3.AlongZ(at.X, at.Y),
            3 => new(at, new Vector3(Between(-1, 1), Between(-1, 1), 0).ToUnit()),
            _ => new(at, new Vector3(Between(-1, 1), Between(-1, 1), Between(-1, 1)).ToUnit()),
        };
    }

    private double Number(double reach) => random.Next(5) == 0 ? Math.Round(Between(-reach, reach)) : Between(-reach, reach);
}
