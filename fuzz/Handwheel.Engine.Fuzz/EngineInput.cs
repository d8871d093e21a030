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
            var pieces = Pieces(Next, Number);
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
            var cutter = CutterShape.Of(pieces);

            // Half the time a turning cut, coarse, so that absurd sizes stay quick.
            Solid cut = (Next() & 1) == 0
                ? new SweptCut(cutter, path, pose)
                : TurnedCut.AboutX(cutter, path.From, path.To, Number(), (Next() & 3) == 0 ? Number() : 0, pose, chord: 0.1);
            var piece = new Workpiece(bar).After(cut);
            for (var i = 0; i < 6; i++)
            {
                var line = Line(i, Next, Number);
                var spans = piece.Sound(line);
                Check(spans);
                Normals(piece, line, spans);
            }

            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private static List<ProfilePiece> Pieces(Func<byte> next, Func<double> number)
    {
        var pieces = new List<ProfilePiece>();
        double z = number();
        for (var i = (next() % 4) + 1; i > 0; i--)
        {
            var top = z + Math.Abs(number());
            pieces.Add(Piece(z, top, next, number));
            z = top;
        }

        return pieces;
    }

    // One in four of any numbers, the rest of sizes that fit together.
    private static ProfilePiece Piece(double z, double top, Func<byte> next, Func<double> number)
    {
        double N() => Math.Abs(number());
        var fits = next() % 4 > 0;
        double half = (top - z) / 2, middle = z + half, arc = half * (1 + (next() / 256.0)), aside = fits ? arc + N() : N();
        var kind = next() % 5;
        if (!fits)
        {
            (middle, arc) = (number(), N());
        }

        return kind switch
        {
            0 => ProfilePiece.Straight(z, N(), top, N()),
            1 => ProfilePiece.Round(N(), middle, arc, z, top),
            2 => ProfilePiece.Round(aside, middle, arc, z, top, bulges: false),
            3 => ProfilePiece.Straight(z, aside + arc, top, aside + arc).HollowRound(aside, middle, arc, (next() & 1) == 0),
            _ => ProfilePiece.Straight(z, aside, top, aside + 1).Hollow(fits ? aside * next() / 256 : N(), fits ? 0.9 * aside : N()),
        };
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

    // Every end has a normal of unit length.
    private static void Normals(Workpiece piece, Line3 line, Spans spans)
    {
        foreach (var span in spans)
        {
            var (a, b) = (piece.NormalAt(span.FromSurface, line.At(span.From)), piece.NormalAt(span.ToSurface, line.At(span.To)));
            if (!(Math.Abs(a.Length - 1) < 1e-9 && Math.Abs(b.Length - 1) < 1e-9))
            {
                throw new InvalidOperationException($"Unsound normal: {a} or {b} at {span.From:R}..{span.To:R}");
            }
        }
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
