using Handwheel.Jobs.Moves;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Following;

/// <summary>
/// Where a touch-off truly finds its surface: metal as it then is, posed as it is held; a fixture; the rotary&#39;s centre; the axis of a hole or boss.
/// Holding frame, millimetres.
/// </summary>
internal static class TouchingOff
{
    /// <summary>A surface further than this from where it is meant is another surface, millimetres.</summary>
    public const double SameSurface = 2;

    // A finder whose end is level with an edge meets nothing: the side must go on this much higher, and near the same place, millimetres.
    private const double Overlap = 0.02;
    private const double SameSide = 0.1;

    private const double Finest = 1e-9;
    private const int Rings = 16;
    private const int Spokes = 48;
    private const int Levels = 48;

    /// <summary>Finds the surface.</summary>
    /// <param name="touch">The touch-off.</param>
    /// <param name="at">Where the spindle truly stands (the axis touched along left out of account).</param>
    /// <param name="setup">The set-up.</param>
    /// <param name="frame">Its frames.</param>
    /// <param name="metal">The metal as it then is, part frame.</param>
    /// <param name="cutter">The cutter in the spindle; null where none is.</param>
    /// <returns>What was met.</returns>
    public static Touched Find(TouchOff touch, TrueReading at, SetupFacts setup, HoldingFrame frame, ISolid metal, CutterShape? cutter) => touch.On switch
    {
        "rotary centre" => OnCentre(touch.Axis, setup),
        "fixture" => OnFixture(touch, setup),
        "axis" => OnAxis(touch, at, frame, metal),
        _ when touch.Axis == Axis.Z => OnMetalAlongZ(touch, at, frame, metal, cutter),
        _ when touch.Axis == Axis.T => new Touched(at.T, null),
        _ => OnMetalSideways(touch, at, frame, metal),
    };

    private static Touched OnCentre(Axis axis, SetupFacts setup) => (axis, setup.Rotary) switch
    {
        (_, null) => Touched.Nothing,
        (Axis.X, { Lies: false } r) => new Touched(r.X, r.X),
        (Axis.Y, { } r) => new Touched(r.Y, r.Y),
        (Axis.Z, { Lies: true } r) => new Touched(r.Z, r.Z),
        (Axis.T, _) => new Touched(0, 0),
        _ => Touched.Nothing,
    };

    private static Touched OnFixture(TouchOff touch, SetupFacts setup)
    {
        var fixture = setup.Fixtures.FirstOrDefault(f => string.Equals(f.Name, touch.Surface, StringComparison.Ordinal))
            ?? setup.Fixtures.FirstOrDefault(f => touch.Surface.Contains(f.Name, StringComparison.Ordinal));
        if (touch.Axis == Axis.T)
        {
            return new Touched(0, 0);
        }

        if (fixture is null)
        {
            return Touched.Nothing;
        }

        var half = fixture.Across / 2;
        var low = touch.Axis switch
        {
            Axis.X => fixture.Least.X - half,
            Axis.Y => fixture.Least.Y - half,
            _ => fixture.Least.Z,
        };
        var high = touch.Axis switch
        {
            Axis.X => fixture.Most.X + half,
            Axis.Y => fixture.Most.Y + half,
            _ => fixture.Most.Z,
        };
        return Against(touch, touch.Towards < 0 ? high : low);
    }

    private static Touched Against(TouchOff touch, double surface) => new(surface - (touch.Towards * (touch.Half + touch.Paper)), surface);

    // Felt for on rings, then closer and closer about the best place: a sharp edge is met where it is.
    private static Touched OnMetalAlongZ(TouchOff touch, TrueReading at, HoldingFrame frame, ISolid metal, CutterShape? cutter)
    {
        var toPart = frame.PartAt(at.T).Inverse();
        (double Tip, double Surface, double X, double Y)? best = null;
        void Try(double x, double y, double rise)
        {
            var spans = metal.Sound(new Line3(new Point3(at.X + x, at.Y + y, 0), Vector3.UnitZ).Placed(toPart));
            if (spans.Count == 0)
            {
                return;
            }

            var met = touch.Towards < 0 ? spans[^1].To : spans[0].From;
            var stands = met - rise - (touch.Towards * touch.Paper);
            if (best is not { } sofar || (touch.Towards < 0 ? stands > sofar.Tip : stands < sofar.Tip))
            {
                best = (stands, met, x, y);
            }
        }

        foreach (var (x, y, rise) in Footprint(cutter, touch.Towards))
        {
            Try(x, y, rise);
        }

        for (var step = (cutter?.GreatestRadius ?? 0) / Rings; best is { } from && step > Finest; step /= 2)
        {
            foreach (var (x, y, rise) in About(cutter!, from.X, from.Y, step, touch.Towards))
            {
                Try(x, y, rise);
            }
        }

        return new Touched(best?.Tip, best?.Surface);
    }

    private static IEnumerable<(double X, double Y, double Rise)> About(CutterShape cutter, double x, double y, double step, int towards)
    {
        for (var i = 0; i < 8; i++)
        {
            var (s, c) = Math.SinCos(Math.PI * i / 4);
            var (u, v) = (x + (step * c), y + (step * s));
            var radius = Math.Sqrt((u * u) + (v * v));
            if (radius <= 0.999 * cutter.GreatestRadius && EdgeAt(cutter, radius, towards) is { } rise)
            {
                yield return (u, v, rise);
            }
        }
    }

    // Places under (or over) the cutter and how far its edge there stands above its lowest point.
    private static IEnumerable<(double X, double Y, double Rise)> Footprint(CutterShape? cutter, int towards)
    {
        if (cutter is null)
        {
            yield return (0, 0, 0);
            yield break;
        }

        for (var ring = 0; ring <= Rings; ring++)
        {
            var radius = cutter.GreatestRadius * (ring == Rings ? 0.999 : (double)ring / Rings);
            if (EdgeAt(cutter, radius, towards) is not { } rise)
            {
                continue;
            }

            var spokes = ring == 0 ? 1 : Spokes;
            for (var i = 0; i < spokes; i++)
            {
                var (s, c) = Math.SinCos(2 * Math.PI * i / Spokes);
                yield return (radius * c, radius * s, rise);
            }
        }
    }

    // Height of the cutter's lowest (coming down) or highest (coming up) cutting edge at a radius; null where no edge passes over it. A tap, which takes nothing, touches with its end.
    private static double? EdgeAt(CutterShape cutter, double radius, int towards)
    {
        double? found = null;
        var bare = cutter.Pieces.All(p => !p.Cuts);
        foreach (var piece in cutter.Pieces.Where(p => p.Cuts || bare))
        {
            const int Steps = 64;
            for (var i = 0; i <= Steps; i++)
            {
                var z = piece.Z0 + ((piece.Z1 - piece.Z0) * i / Steps);
                if (piece.RadiusAt(z) < radius || piece.InnerAt(z) > radius)
                {
                    continue;
                }

                found = found is null ? z : towards < 0 ? Math.Min(found.Value, z) : Math.Max(found.Value, z);
            }
        }

        return found;
    }

    private static Touched OnMetalSideways(TouchOff touch, TrueReading at, HoldingFrame frame, ISolid metal)
    {
        var toPart = frame.PartAt(at.T).Inverse();
        var alongX = touch.Axis == Axis.X;
        double? stands = null;
        double? surface = null;
        for (var level = 0; level <= 4; level++)
        {
            for (var i = -16; i <= 16; i++)
            {
                var offset = touch.Half * i / 16;
                var z = at.Z + (level * 0.5);
                var line = alongX ? Line3.AlongX(at.Y + offset, z) : Line3.AlongY(at.X + offset, z);
                if (Met(line) is not { } met || Met(line with { Origin = line.Origin + (Vector3.UnitZ * Overlap) }) is not { } above || Math.Abs(above - met) > SameSide)
                {
                    continue;
                }

                var reach = Math.Sqrt(Math.Max(0, (touch.Half * touch.Half) - (offset * offset)));
                var axis = met - (touch.Towards * (reach + touch.Paper));
                if (stands is null || (touch.Towards < 0 ? axis > stands : axis < stands))
                {
                    stands = axis;
                    surface = met;
                }
            }
        }

        return new Touched(stands, surface);

        double? Met(Line3 line)
        {
            var spans = metal.Sound(line.Placed(toPart));
            return spans.Count == 0 ? null : touch.Towards < 0 ? spans[^1].To : spans[0].From;
        }
    }

    private static Touched OnAxis(TouchOff touch, TrueReading at, HoldingFrame frame, ISolid metal)
    {
        var toPart = frame.PartAt(at.T).Inverse();
        var bounds = metal.Bounds.Placed(frame.PartAt(at.T));
        double? best = null;
        var width = double.PositiveInfinity;
        for (var level = 0; level < Levels; level++)
        {
            var z = bounds.Max.Z - (bounds.Size.Z * (level + 0.5) / Levels);
            if (AxisAt(at, z, toPart, metal) is { } found && found.Width < width)
            {
                width = found.Width;
                best = touch.Axis == Axis.X ? found.X : found.Y;
            }
        }

        return best is { } value ? new Touched(value, value) : Touched.Nothing;
    }

    // Middle of the hole (else the boss) about a place at one height, found by halves in turn.
    private static (double X, double Y, double Width)? AxisAt(TrueReading at, double z, Pose toPart, ISolid metal)
    {
        double x = at.X, y = at.Y, width = 0;
        for (var turn = 0; turn < 6; turn++)
        {
            var alongX = MiddleAbout(metal.Sound(Line3.AlongX(y, z).Placed(toPart)), x);
            if (alongX is null)
            {
                return null;
            }

            x = alongX.Value.Middle;
            var alongY = MiddleAbout(metal.Sound(Line3.AlongY(x, z).Placed(toPart)), y);
            if (alongY is null)
            {
                return null;
            }

            y = alongY.Value.Middle;
            width = Math.Max(alongX.Value.Width, alongY.Value.Width);
        }

        return (x, y, width);
    }

    // The gap between metal that holds the place, else the metal that holds it.
    private static (double Middle, double Width)? MiddleAbout(Spans spans, double place)
    {
        for (var i = 0; i < spans.Count; i++)
        {
            if (spans[i].From <= place && place <= spans[i].To)
            {
                return (spans[i].Middle, spans[i].Length);
            }

            if (i > 0 && spans[i - 1].To < place && place < spans[i].From)
            {
                return ((spans[i - 1].To + spans[i].From) / 2, spans[i].From - spans[i - 1].To);
            }
        }

        return null;
    }
}
