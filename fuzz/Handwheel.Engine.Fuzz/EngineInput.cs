using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Engine.Fuzz;

/// <summary>Bytes into a profile, a path, a pose and lines; every answer must be finite, sorted and within the bar.</summary>
internal static class EngineInput
{
    private static readonly double[] Odd = [0, -0.0, 1, -1, 1e-300, 1e-12, -1e-9, 1e10, 1e11, double.NaN, double.PositiveInfinity, double.MaxValue, Math.PI, Math.Tau];

    /// <summary>False when the engine refused the numbers as out of range; anything else thrown is a defect and is let through.</summary>
    /// <param name="bytes">The input.</param>
    public static bool Try(byte[] bytes)
    {
        var at = 0;
        byte Next() => at < bytes.Length ? bytes[at++] : (byte)0;
        double Number()
        {
            var kind = Next();
            return kind < 5 ? Odd[Next() % Odd.Length] : kind < 90 ? (sbyte)Next() / 4.0 : ((Next() << 8) + Next() - 32768) / 1000.0;
        }

        Point3 Place() => new(Number(), Number(), Number());
        try
        {
            var pieces = new List<ProfilePiece>();
            double z = Number();
            for (var i = (Next() % 4) + 1; i > 0; i--)
            {
                var top = z + Math.Abs(Number());
                pieces.Add((Next() % 3) switch
                {
                    0 => ProfilePiece.Straight(z, Math.Abs(Number()), top, Math.Abs(Number())),
                    1 => ProfilePiece.Round(Math.Abs(Number()), Number(), Math.Abs(Number()), z, top, (Next() & 1) == 0),
                    _ => ProfilePiece.Straight(z, Math.Abs(Number()), top, Math.Abs(Number())).Hollow(Math.Abs(Number()), Math.Abs(Number())),
                });
                z = top;
            }

            var path = (Next() % 3) switch
            {
                0 => CutterPath.At(Place()),
                1 => CutterPath.Straight(Place(), Place()),
                _ => CutterPath.Arc(Place().Plan, Place(), Number()),
            };
            var pose = (Next() % 3) switch
            {
                0 => Pose.Identity,
                1 => Pose.TurnAboutZ((sbyte)Next() / 20.0),
                _ => Pose.TurnAboutX((sbyte)Next() / 20.0).Then(Pose.TurnAboutY((sbyte)Next() / 20.0)),
            };
            var bar = new Block(new(-20, -10, -12), new(20, 10, 0));
            var piece = new Workpiece(bar).After(new SweptCut(CutterShape.Of(pieces), path, pose));
            for (var i = 0; i < 6; i++)
            {
                Check(piece.Sound(Line(i, Next, Number)));
            }

            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private static Line3 Line(int i, Func<byte> next, Func<double> number)
    {
        double a = (sbyte)next() / 8.0, b = (sbyte)next() / 8.0;
        return i switch
        {
            0 => Line3.AlongX(a, b),
            1 => Line3.AlongY(a, b),
            2 => Line3.AlongZ(a, b),
            _ => Line3.Through(new(a, b, -5), new(a + 1 + ((sbyte)next() / 200.0), b + ((sbyte)next() / 100.0), -5 + ((sbyte)next() / 100.0))),
        };
    }

    private static void Check(Spans spans)
    {
        var last = double.NegativeInfinity;
        foreach (var span in spans)
        {
            if (!(span.From > last && span.To > span.From && Math.Abs(span.From) < 100 && Math.Abs(span.To) < 100))
            {
                throw new InvalidOperationException($"Unsound: {span.From:R}..{span.To:R} after {last:R}");
            }

            last = span.To;
        }
    }
}
