using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Nets;

/// <summary>
/// Three sets of parallel soundings on one lattice over a box, part frame: along X through each (y, z), along Y through each (x, z), along Z through each
/// (x, y). Every interval is exact; the net only says where it was looked. Immutable. Lattice lines lie off round numbers.
/// </summary>
internal sealed class RayNet
{
    // Where in its cell a line lies: no round share, different for each axis.
    private static readonly double[] Off = [0.4637, 0.5389, 0.4871];

    private readonly double[][] lattice;
    private readonly Spans[][] metal;

    private RayNet(double spacing, double[][] places, Spans[][] rays)
    {
        Spacing = spacing;
        lattice = places;
        metal = rays;
    }

    /// <summary>Spacing of the lattice, millimetres.</summary>
    public double Spacing { get; }

    /// <summary>Lattice places along X, Y, Z.</summary>
    /// <param name="axis">0, 1 or 2.</param>
    /// <returns>The places.</returns>
    public IReadOnlyList<double> Places(int axis) => lattice[axis];

    /// <summary>How many rays a set holds.</summary>
    /// <param name="axis">The axis they run along.</param>
    /// <returns>The count.</returns>
    public int Count(int axis) => metal[axis].Length;

    /// <summary>One ray&#39;s metal.</summary>
    /// <param name="axis">The axis it runs along.</param>
    /// <param name="index">Its index: first lattice axis fastest.</param>
    /// <returns>Its intervals, part coordinates along the axis.</returns>
    public Spans Ray(int axis, int index) => metal[axis][index];

    /// <summary>One ray by its lattice indices on the two other axes in cyclic order (X: y, z; Y: z, x; Z: x, y).</summary>
    /// <param name="axis">The axis it runs along.</param>
    /// <param name="first">Index on the next axis.</param>
    /// <param name="second">Index on the one after.</param>
    /// <returns>Its intervals.</returns>
    public Spans Ray(int axis, int first, int second) => metal[axis][first + (second * lattice[(axis + 1) % 3].Length)];

    /// <summary>Where a ray runs.</summary>
    /// <param name="axis">The axis it runs along.</param>
    /// <param name="index">Its index.</param>
    /// <returns>The line; distance along it is the part coordinate.</returns>
    public Line3 Line(int axis, int index)
    {
        var next = lattice[(axis + 1) % 3];
        double a = next[index % next.Length], b = lattice[(axis + 2) % 3][index / next.Length];
        return axis switch
        {
            0 => Line3.AlongX(a, b),
            1 => Line3.AlongY(b, a),
            _ => Line3.AlongZ(a, b),
        };
    }

    /// <summary>Sounds a solid over a box.</summary>
    /// <param name="solid">The solid.</param>
    /// <param name="box">The box.</param>
    /// <param name="spacing">Spacing, millimetres.</param>
    /// <param name="threads">Threads; the result does not depend on them.</param>
    /// <returns>The net.</returns>
    public static RayNet Of(ISolid solid, Box3 box, double spacing, int threads)
    {
        double[][] places =
        [
            Lattice(box.Min.X, box.Max.X, spacing, Off[0]),
            Lattice(box.Min.Y, box.Max.Y, spacing, Off[1]),
            Lattice(box.Min.Z, box.Max.Z, spacing, Off[2]),
        ];
        var rays = new Spans[3][];
        for (var axis = 0; axis < 3; axis++)
        {
            rays[axis] = new Spans[places[(axis + 1) % 3].Length * places[(axis + 2) % 3].Length];
        }

        var net = new RayNet(spacing, places, rays);
        net.Fill(threads, (axis, index) => solid.Sound(net.Line(axis, index)));
        return net;
    }

    /// <summary>The net with a volume taken away; rays that miss its box stay as they are.</summary>
    /// <param name="cut">The volume.</param>
    /// <param name="owner">The owner its surfaces get.</param>
    /// <param name="threads">Threads.</param>
    /// <returns>The net after it.</returns>
    public RayNet Without(ISolid cut, int owner, int threads)
    {
        var after = new Spans[3][];
        for (var axis = 0; axis < 3; axis++)
        {
            after[axis] = [.. metal[axis]];
        }

        var box = cut.Bounds;
        var low = new[] { box.Min.X, box.Min.Y, box.Min.Z };
        var high = new[] { box.Max.X, box.Max.Y, box.Max.Z };
        for (var axis = 0; axis < 3; axis++)
        {
            int u = (axis + 1) % 3, v = (axis + 2) % 3;
            var (firstU, lastU) = Range(lattice[u], low[u], high[u]);
            var (firstV, lastV) = Range(lattice[v], low[v], high[v]);
            var along = axis;
            Each(firstV, lastV, threads, j =>
            {
                for (var i = firstU; i < lastU; i++)
                {
                    var index = i + (j * lattice[u].Length);
                    var before = metal[along][index];
                    if (before.Count == 0 || before[^1].To < low[along] || before[0].From > high[along])
                    {
                        continue;
                    }

                    var taken = cut.Sound(Line(along, index));
                    if (taken.Count > 0)
                    {
                        after[along][index] = before.Difference(Owned(taken, owner)).Cleaned(1e-6);
                    }
                }
            });
        }

        return new RayNet(Spacing, lattice, after);
    }

    /// <summary>Another solid sounded on the same lattice.</summary>
    /// <param name="solid">The solid.</param>
    /// <param name="threads">Threads.</param>
    /// <returns>Its net.</returns>
    public RayNet Same(ISolid solid, int threads)
    {
        var fresh = new RayNet(Spacing, lattice, [new Spans[metal[0].Length], new Spans[metal[1].Length], new Spans[metal[2].Length]]);
        fresh.Fill(threads, (axis, index) => solid.Sound(fresh.Line(axis, index)));
        return fresh;
    }

    /// <summary>The lattice place nearest to a value.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="value">The value.</param>
    /// <returns>Its index.</returns>
    public int Nearest(int axis, double value) =>
        (int)Math.Clamp(Math.Round((value - lattice[axis][0]) / Spacing), 0, lattice[axis].Length - 1);

    /// <summary>The index of the first lattice place not below a value, and the index past the last not above another.</summary>
    /// <param name="places">Rising places.</param>
    /// <param name="low">Least.</param>
    /// <param name="high">Greatest.</param>
    /// <returns>From, and one past the last.</returns>
    public static (int First, int Past) Range(IReadOnlyList<double> places, double low, double high)
    {
        if (places.Count == 0)
        {
            return (0, 0);
        }

        var spacing = places.Count > 1 ? places[1] - places[0] : 1;
        var first = (int)Math.Clamp(Math.Ceiling((low - places[0]) / spacing), 0, places.Count);
        var past = (int)Math.Clamp(Math.Floor((high - places[0]) / spacing) + 1, 0, places.Count);
        while (first > 0 && places[first - 1] >= low)
        {
            first--;
        }

        while (first < places.Count && places[first] < low)
        {
            first++;
        }

        while (past < places.Count && places[past] <= high)
        {
            past++;
        }

        while (past > 0 && places[past - 1] > high)
        {
            past--;
        }

        return (first, Math.Max(first, past));
    }

    private static Spans Owned(Spans spans, int owner) =>
        Spans.Of(spans.Select(s => s with { FromSurface = s.FromSurface with { Owner = owner }, ToSurface = s.ToSurface with { Owner = owner } }));

    private static double[] Lattice(double low, double high, double spacing, double off)
    {
        var count = (int)Math.Max(1, Math.Ceiling((high - low) / spacing));
        var places = new double[count];
        for (var i = 0; i < count; i++)
        {
            places[i] = low + ((i + off) * spacing);
        }

        return places;
    }

    private static void Each(int from, int past, int threads, Action<int> work)
    {
        if (threads <= 1 || past - from < 8)
        {
            for (var i = from; i < past; i++)
            {
                work(i);
            }
        }
        else
        {
            Parallel.For(from, past, new ParallelOptions { MaxDegreeOfParallelism = threads }, work);
        }
    }

    private void Fill(int threads, Func<int, int, Spans> sound)
    {
        for (var axis = 0; axis < 3; axis++)
        {
            var along = axis;
            var width = lattice[(axis + 1) % 3].Length;
            Each(0, lattice[(axis + 2) % 3].Length, threads, j =>
            {
                for (var i = 0; i < width; i++)
                {
                    var index = i + (j * width);
                    metal[along][index] = sound(along, index);
                }
            });
        }
    }
}
