namespace Handwheel.Membership;

/// <summary>Where a cutter went in one go: straight, or round a vertical axis at one height. Its axis is Z of the frame it is told in.</summary>
public sealed class Sweep
{
    private readonly Layer[] layers;
    private readonly double low;
    private readonly double high;
    private readonly double widest;

    public Sweep(int owner, Frame fromPart, IReadOnlyList<Layer> all, Vec from, Vec to, Vec? centre = null, double degrees = 0)
    {
        Owner = owner;
        FromPart = fromPart;
        All = all;
        From = from;
        To = to;
        Centre = centre;
        Degrees = degrees;
        layers = [.. all.Where(l => l.Cuts)];
        low = layers.Length == 0 ? 1 : layers.Min(l => l.Z0);
        high = layers.Length == 0 ? 0 : layers.Max(l => l.Z1);
        widest = layers.Length == 0 ? 0 : layers.Max(l => Math.Max(l.R0, l.R1));
    }

    /// <summary>Gets the number of the event that made it.</summary>
    public int Owner { get; }

    public Frame FromPart { get; }

    public IReadOnlyList<Layer> All { get; }

    public Vec From { get; }

    public Vec To { get; }

    /// <summary>Gets the axis it goes round; null: straight.</summary>
    public Vec? Centre { get; }

    /// <summary>Gets how far round, counterclockwise.</summary>
    public double Degrees { get; }

    public bool IsUpright => Centre is null && From.X == To.X && From.Y == To.Y;

    /// <summary>Where the cutter stands a share of the way along.</summary>
    /// <param name="share">0 to 1.</param>
    /// <returns>Its lowest cutting point.</returns>
    public Vec At(double share)
    {
        if (Centre is { } c)
        {
            return Frame.Turn('Z', Degrees * share, c).Of(From);
        }

        return From + ((To - From) * share);
    }

    public double Length => Centre is { } c ? Math.Abs(Degrees) * Math.PI / 180 * Flat(From, c) : (To - From).Length;

    /// <summary>Whether the sweep takes a place of the part, made larger (room above 0) or smaller by a little.</summary>
    /// <param name="p">The place, part frame.</param>
    /// <param name="room">How much larger.</param>
    /// <returns>True where it is taken.</returns>
    public bool Takes(Vec p, double room)
    {
        if (layers.Length == 0)
        {
            return false;
        }

        var q = FromPart.Of(p);
        var (z0, z1) = From.Z < To.Z ? (From.Z, To.Z) : (To.Z, From.Z);
        if (q.Z < z0 + low - room || q.Z > z1 + high + room)
        {
            return false;
        }

        if (Centre is null)
        {
            var reach = widest + room;
            if (q.X < Math.Min(From.X, To.X) - reach || q.X > Math.Max(From.X, To.X) + reach
                || q.Y < Math.Min(From.Y, To.Y) - reach || q.Y > Math.Max(From.Y, To.Y) + reach)
            {
                return false;
            }
        }

        if (z0 != z1 && !IsUpright)
        {
            return Slanted(q, room);
        }

        var near = Nearest(q);
        var far = layers.Any(l => l.Inner > 0) ? Farthest(q) : double.PositiveInfinity;
        foreach (var l in layers)
        {
            // Heights of the layer that pass this place on the way.
            var a = Math.Max(q.Z - z1 - room, l.Z0);
            var b = Math.Min(q.Z - z0 + room, l.Z1);
            if (room < 0)
            {
                (a, b) = (Math.Max(q.Z - z1, l.Z0 - room), Math.Min(q.Z - z0, l.Z1 + room));
            }

            if (a <= b && near - room < Math.Max(l.At(a), l.At(b)) && far + room > l.Inner)
            {
                return true;
            }
        }

        return false;
    }

    private static double Flat(Vec a, Vec b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    private double Nearest(Vec q)
    {
        if (Centre is { } c)
        {
            var there = Flat(q, c);
            return Passes(q) ? Math.Abs(there - Flat(From, c)) : Math.Min(Flat(q, From), Flat(q, To));
        }

        var (dx, dy) = (To.X - From.X, To.Y - From.Y);
        var n = (dx * dx) + (dy * dy);
        var s = n > 0 ? Math.Clamp((((q.X - From.X) * dx) + ((q.Y - From.Y) * dy)) / n, 0, 1) : 0;
        return Flat(q, new Vec(From.X + (s * dx), From.Y + (s * dy), 0));
    }

    private double Farthest(Vec q)
    {
        var far = Math.Max(Flat(q, From), Flat(q, To));
        if (Centre is { } c && Passes((c * 2) - q))
        {
            far = Math.Max(far, Flat(q, c) + Flat(From, c));
        }

        return far;
    }

    // Whether the arc goes by the direction in which a place lies from its centre.
    private bool Passes(Vec q)
    {
        if (Math.Abs(Degrees) >= 360)
        {
            return true;
        }

        var c = Centre!.Value;
        var start = Math.Atan2(From.Y - c.Y, From.X - c.X);
        var there = Math.Atan2(q.Y - c.Y, q.X - c.X);
        var on = (there - start) * Math.Sign(Degrees) % (2 * Math.PI);
        on = on < 0 ? on + (2 * Math.PI) : on;
        return on <= Math.Abs(Degrees) * Math.PI / 180;
    }

    // Along a slant the distance less the radius is convex over each layer: its least is found by thirds.
    private bool Slanted(Vec q, double room)
    {
        var dz = To.Z - From.Z;
        foreach (var l in layers)
        {
            var a = (q.Z - l.Z1 - From.Z) / dz;
            var b = (q.Z - l.Z0 - From.Z) / dz;
            var lo = Math.Max(0, Math.Min(a, b));
            var hi = Math.Min(1, Math.Max(a, b));
            if (lo > hi)
            {
                continue;
            }

            double Over(double s)
            {
                var at = At(s);
                return Flat(q, at) - l.At(Math.Clamp(q.Z - at.Z, l.Z0, l.Z1));
            }

            for (var i = 0; i < 120; i++)
            {
                var (u, v) = (lo + ((hi - lo) / 3), hi - ((hi - lo) / 3));
                (lo, hi) = Over(u) < Over(v) ? (lo, v) : (u, hi);
            }

            if (Over((lo + hi) / 2) < room)
            {
                return true;
            }
        }

        return false;
    }
}
