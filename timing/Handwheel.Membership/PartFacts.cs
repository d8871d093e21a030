namespace Handwheel.Membership;

/// <summary>A dimension and its limits.</summary>
/// <param name="Nominal">As written.</param>
/// <param name="Lower">Least allowed.</param>
/// <param name="Upper">Greatest allowed.</param>
public readonly record struct Lim(double Nominal, double Lower, double Upper)
{
    public double Take(int sense) => sense > 0 ? Upper : sense < 0 ? Lower : Nominal;
}

/// <summary>One corner of an outline.</summary>
/// <param name="X">X.</param>
/// <param name="Y">Y.</param>
/// <param name="HasArc">Whether an arc leaves it.</param>
/// <param name="CentreX">The arc&#39;s centre, X.</param>
/// <param name="CentreY">The arc&#39;s centre, Y.</param>
/// <param name="Counterclockwise">The way round.</param>
public readonly record struct Corner(double X, double Y, bool HasArc, double CentreX, double CentreY, bool Counterclockwise);

/// <summary>One feature of a drawing in plain numbers; the meaning of the two dimensions depends on its shape.</summary>
public sealed record FeatureFacts
{
    public required string Name { get; init; }

    public required bool Cut { get; init; }

    /// <summary>Gets the shape: <c>round</c>, <c>ring</c>, <c>polygon</c>, <c>block</c>, <c>slot</c>, <c>tangent</c>, <c>outline</c>, <c>cone</c>.</summary>
    public required string Shape { get; init; }

    public Lim A { get; init; }

    public Lim B { get; init; }

    public int Sides { get; init; }

    public double Turn { get; init; }

    public string First { get; init; } = string.Empty;

    public string Second { get; init; } = string.Empty;

    public IReadOnlyList<Corner> Corners { get; init; } = [];

    /// <summary>Gets the places: centre, turn, whether mirrored.</summary>
    public required IReadOnlyList<(double X, double Y, double Turn, bool Mirrored)> Places { get; init; }

    public required Lim From { get; init; }

    public required Lim To { get; init; }

    public bool Through { get; init; }

    /// <summary>Gets the view: <c>top</c>, <c>front</c>, <c>right</c>.</summary>
    public string View { get; init; } = "top";

    /// <summary>Gets whether it is drawn from the far side of its view: below, the back, the left.</summary>
    public bool Behind { get; init; }

    public double Point { get; init; }
}

/// <summary>One size of a drawing.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Kind">What it measures, in lower case.</param>
/// <param name="Feature">The feature.</param>
/// <param name="Other">The second feature.</param>
/// <param name="Along">The direction.</param>
/// <param name="Limits">Its limits.</param>
/// <param name="Stated">Whether a line of the drawing states it.</param>
public sealed record SizeFacts(string Name, string Kind, string Feature, string Other, string Along, Lim Limits, bool Stated);

/// <summary>A drawing in plain numbers, and which places are metal in its least, nominal and most variants.</summary>
/// <param name="Features">In the order typed.</param>
/// <param name="Sizes">Its sizes.</param>
/// <param name="Others">Half width of the general limits.</param>
public sealed record PartFacts(IReadOnlyList<FeatureFacts> Features, IReadOnlyList<SizeFacts> Sizes, double Others)
{
    private readonly Dictionary<(string Name, int Sense), (double X, double Y)[]> lines = [];

    /// <summary>Whether a place is metal.</summary>
    /// <param name="p">The place.</param>
    /// <param name="variant">-1 least, 0 nominal, +1 most metal.</param>
    /// <param name="only">Only this feature; null: the whole part.</param>
    /// <returns>True for metal.</returns>
    public bool Metal(Vec p, int variant, string? only = null)
    {
        var metal = false;
        foreach (var f in Features)
        {
            if (!string.IsNullOrEmpty(only) && f.Name != only)
            {
                continue;
            }

            if (metal == f.Cut && In(f, p, f.Cut ? -variant : variant))
            {
                metal = !f.Cut || !string.IsNullOrEmpty(only);
            }
        }

        return metal;
    }

    /// <summary>How far a feature&#39;s axis may lie from its place, and how far it is aimed off it.</summary>
    /// <param name="f">The feature.</param>
    /// <returns>The disc&#39;s radius; the shift.</returns>
    public (double Radius, double X, double Y) Place(FeatureFacts f)
    {
        var (radius, x, y) = (-1.0, 0.0, 0.0);
        foreach (var s in Sizes.Where(s => s.Stated))
        {
            if (s.Kind == "position" && s.Feature == f.Name)
            {
                radius = Math.Max(radius, s.Limits.Upper / 2);
            }
            else if (s.Kind == "distance" && s.Along != "z" && Moved(s) == f)
            {
                var datum = Find(s.Feature) == f ? Find(s.Other)! : Find(s.Feature)!;
                var (dx, dy) = (f.Places[0].X - datum.Places[0].X, f.Places[0].Y - datum.Places[0].Y);
                var n = Math.Sqrt((dx * dx) + (dy * dy));
                var off = ((s.Limits.Lower + s.Limits.Upper) / 2) - s.Limits.Nominal;
                x += off * (s.Along == "x" ? Math.Sign(dx) : s.Along == "y" ? 0 : dx / n);
                y += off * (s.Along == "y" ? Math.Sign(dy) : s.Along == "x" ? 0 : dy / n);
                radius = Math.Max(radius, (s.Limits.Upper - s.Limits.Lower) / 2);
            }
        }

        var atOrigin = Math.Abs(f.Places[0].X) < 1e-6 && Math.Abs(f.Places[0].Y) < 1e-6;
        return (radius < 0 && atOrigin ? 0 : Math.Max(radius, Others), x, y);
    }

    public FeatureFacts? Find(string name) => Features.FirstOrDefault(f => f.Name == name);

    /// <summary>The plan and depth of a place as a view has it.</summary>
    /// <param name="view">The view.</param>
    /// <param name="p">The place.</param>
    /// <returns>Plan X, plan Y, depth.</returns>
    public static (double U, double V, double W) Seen(string view, Vec p) => view switch
    {
        "front" => (p.X, p.Z, p.Y),
        "right" => (p.Y, p.Z, p.X),
        _ => (p.X, p.Y, p.Z),
    };

    private FeatureFacts? Moved(SizeFacts s)
    {
        var (a, b) = (Find(s.Feature), Find(s.Other));
        if (a is null || b is null || a.View != b.View)
        {
            return null;
        }

        var (dx, dy) = (Math.Abs(b.Places[0].X - a.Places[0].X), Math.Abs(b.Places[0].Y - a.Places[0].Y));
        var length = s.Along switch { "x" => dx, "y" => dy, _ => Math.Sqrt((dx * dx) + (dy * dy)) };
        if (Math.Abs(length - s.Limits.Nominal) > 1e-6)
        {
            return null;
        }

        return Far(a) > Far(b) + 1e-6 ? a : b;
    }

    private static double Far(FeatureFacts f) => Math.Sqrt((f.Places[0].X * f.Places[0].X) + (f.Places[0].Y * f.Places[0].Y));

    // A stated depth lies on the floor: on the end of a cut that is no end of what is added before it.
    private (Lim From, Lim To) Ends(FeatureFacts f)
    {
        if (!f.Cut || f.Through || Sizes.FirstOrDefault(s => s is { Stated: true, Kind: "deep" } && s.Feature == f.Name) is not { } deep)
        {
            return (f.From, f.To);
        }

        var added = Features.TakeWhile(h => h != f).Where(h => !h.Cut && h.View == f.View).ToList();
        bool low = added.Exists(h => Math.Abs(h.From.Nominal - f.From.Nominal) < 1e-6), high = added.Exists(h => Math.Abs(h.To.Nominal - f.To.Nominal) < 1e-6);
        return low == high ? (f.From, f.To)
            : low ? (f.From, new(f.To.Nominal, f.From.Nominal + deep.Limits.Lower, f.From.Nominal + deep.Limits.Upper))
            : (new(f.From.Nominal, f.To.Nominal - deep.Limits.Upper, f.To.Nominal - deep.Limits.Lower), f.To);
    }

    private bool In(FeatureFacts f, Vec p, int sense)
    {
        var (u, v, w) = Seen(f.View, p);
        var (radius, sx, sy) = f.Shape is "tangent" || sense == 0 ? (0, 0, 0) : Place(f);
        var room = sense * radius;
        var (lower, upper) = Ends(f);
        var (from, to) = (lower.Take(-sense), upper.Take(sense));
        foreach (var place in f.Places)
        {
            var (du, dv) = (u - place.X - sx, v - place.Y - sy);
            var (s, c) = Math.SinCos(-place.Turn);
            var (a, b) = ((c * du) - (s * dv), (s * du) + (c * dv));
            a = place.Mirrored ? -a : a;
            if (f is { Through: true, Cut: true } || (w >= from && w <= to))
            {
                var share = (w - from) / Math.Max(to - from, 1e-9);
                if (Plan(f, a, b, sense, room, share))
                {
                    return true;
                }
            }
            else if (f.Point > 0 && Cone(f, a, b, w, sense, room, from, to))
            {
                return true;
            }
        }

        return false;
    }

    // The point of a drilled hole: below it, or beyond it where it is drilled towards plus.
    private static bool Cone(FeatureFacts f, double a, double b, double w, int sense, double room, double from, double to)
    {
        var r = (f.A.Take(sense) / 2) + room;
        var deep = (f.View == "front") != f.Behind ? w - to : from - w;
        return deep > 0 && Math.Sqrt((a * a) + (b * b)) <= r - (deep * Math.Tan(f.Point / 2));
    }

    private bool Plan(FeatureFacts f, double a, double b, int sense, double room, double share)
    {
        var r = Math.Sqrt((a * a) + (b * b));
        var (s, c) = Math.SinCos(-f.Turn);
        var (x, y) = ((c * a) - (s * b), (s * a) + (c * b));
        switch (f.Shape)
        {
            case "round":
                return r <= (f.A.Take(sense) / 2) + room;
            case "ring":
                return r <= (f.A.Take(sense) / 2) + room && r >= (f.B.Take(-sense) / 2) - room;
            case "cone":
                return r <= ((f.A.Take(sense) + ((f.B.Take(sense) - f.A.Take(sense)) * share)) / 2) + room;
            case "block":
                return Math.Abs(x) <= (f.A.Take(sense) / 2) + room && Math.Abs(y) <= (f.B.Take(sense) / 2) + room;
            case "slot":
                var half = (f.A.Take(sense) / 2) + room;
                var straight = Math.Max(0, (f.B.Take(sense) / 2) + room - half);
                var over = Math.Max(0, Math.Abs(x) - straight);
                return (over * over) + (y * y) <= half * half;
            case "polygon":
                return Enumerable.Range(0, f.Sides).All(i =>
                {
                    var (n, m) = Math.SinCos(2 * Math.PI * i / f.Sides);
                    return (x * m) + (y * n) <= (f.A.Take(sense) / 2) + room;
                });
            case "tangent":
                return Hull(f, a, b, sense);
            default:
                return Outline(f, a, b, (sense * Others / 2) + room);
        }
    }

    private bool Hull(FeatureFacts f, double a, double b, int sense)
    {
        var (x1, y1, r1) = Round(f.First, sense);
        var (x2, y2, r2) = Round(f.Second, sense);
        a += f.Places[0].X;
        b += f.Places[0].Y;
        var (dx, dy) = (x2 - x1, y2 - y1);
        var n = Math.Sqrt((dx * dx) + (dy * dy));
        var (u, v) = ((((a - x1) * dx) + ((b - y1) * dy)) / n, Math.Abs(((b - y1) * dx) - ((a - x1) * dy)) / n);
        if ((u * u) + (v * v) <= r1 * r1 || ((u - n) * (u - n)) + (v * v) <= r2 * r2)
        {
            return true;
        }

        // Under the common tangent, whose normal leans by the difference of the radii over the distance.
        var lean = (r1 - r2) / n;
        if (Math.Abs(lean) >= 1)
        {
            return false;
        }

        var level = Math.Sqrt(1 - (lean * lean));
        var along = (u * level) - (v * lean);
        return (u * lean) + (v * level) <= r1 && along >= 0 && along <= n * level;
    }

    private (double X, double Y, double R) Round(string name, int sense)
    {
        var f = Find(name)!;
        var (radius, x, y) = sense == 0 ? (0, 0, 0) : Place(f);
        return (f.Places[0].X + x, f.Places[0].Y + y, (f.A.Take(sense) / 2) + (sense * radius));
    }

    private bool Outline(FeatureFacts f, double a, double b, double room)
    {
        var line = Drawn(f);
        var (inside, nearest) = (false, double.PositiveInfinity);
        for (var i = 0; i < line.Length; i++)
        {
            var (p, q) = (line[i], line[(i + 1) % line.Length]);
            if ((p.Y <= b) != (q.Y <= b) && p.X + ((b - p.Y) * (q.X - p.X) / (q.Y - p.Y)) > a)
            {
                inside = !inside;
            }

            var (dx, dy) = (q.X - p.X, q.Y - p.Y);
            var s = Math.Clamp((((a - p.X) * dx) + ((b - p.Y) * dy)) / Math.Max((dx * dx) + (dy * dy), 1e-18), 0, 1);
            var (ex, ey) = (a - p.X - (s * dx), b - p.Y - (s * dy));
            nearest = Math.Min(nearest, (ex * ex) + (ey * ey));
        }

        nearest = Math.Sqrt(nearest);
        return room >= 0 ? inside || nearest <= room : inside && nearest >= -room;
    }

    // Arcs as chords of a quarter degree, a thousandth of a hundredth of their radius off at most.
    private (double X, double Y)[] Drawn(FeatureFacts f)
    {
        if (lines.TryGetValue((f.Name, 0), out var known))
        {
            return known;
        }

        var all = new List<(double, double)>();
        for (var i = 0; i < f.Corners.Count; i++)
        {
            var (p, q) = (f.Corners[i], f.Corners[(i + 1) % f.Corners.Count]);
            all.Add((p.X, p.Y));
            if (!p.HasArc)
            {
                continue;
            }

            var r = Math.Sqrt(((p.X - p.CentreX) * (p.X - p.CentreX)) + ((p.Y - p.CentreY) * (p.Y - p.CentreY)));
            var (t0, t1) = (Math.Atan2(p.Y - p.CentreY, p.X - p.CentreX), Math.Atan2(q.Y - p.CentreY, q.X - p.CentreX));
            t1 += p.Counterclockwise && t1 <= t0 ? 2 * Math.PI : !p.Counterclockwise && t1 >= t0 ? -2 * Math.PI : 0;
            var n = (int)Math.Ceiling(Math.Abs(t1 - t0) * 720 / Math.PI);
            for (var k = 1; k < n; k++)
            {
                var t = t0 + ((t1 - t0) * k / n);
                all.Add((p.CentreX + (r * Math.Cos(t)), p.CentreY + (r * Math.Sin(t))));
            }
        }

        lock (lines)
        {
            lines[(f.Name, 0)] = [.. all];
        }

        return [.. all];
    }
}
