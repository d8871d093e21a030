using Handwheel.Trade.Cutting;
using Handwheel.Trade.Geometry;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Plane geometry asked at the machine.</summary>
internal static class GeometryTopics
{
    private static readonly Basis Plane = Circles.Basis;

    /// <summary>Polygons.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Polygon(Question q, ReplyBuilder r)
    {
        var named = q.Labelled(("sides", ["sides", "sided"]));
        var sides = q.Has("hex", "hexagon", "nut", "spanner") ? 6 : q.Has("square") ? 4 : q.Has("octagon") ? 8 : q.Has("pentagon") ? 5 : q.Has("triangle") ? 3
            : named.TryGetValue("sides", out var s) ? s.Value : Question.Need(q.Plain(), "the number of sides");
        if (sides is not (>= 3 and <= 1000) || sides != Math.Floor(sides))
        {
            throw new UnansweredException($"a polygon of {N(sides)} sides cannot be");
        }

        var n = (int)sides;
        var fromCorners = !SizeFirst(q) && !q.HasIn("inscribed") && q.Has("circle", "corners", "corner", "bar", "round", "rod", "from", "inside", "stock", "points");
        q.Has("across", "flats", "af", "flat", "polygon", "size", "distance", "corners", "round", "from", "bar");
        var size = Question.Need(q.Length(), "the size across flats (or corners)");
        var flats = fromCorners ? Circles.FlatsFromCorners(n, size) : size;
        var (corners, side) = Circles.PolygonFromFlats(n, flats);
        r.Add("across flats (inscribed circle)", flats, "mm", Plane, fromCorners ? $"corners x cos(180/{N(n)})" : "as given")
            .Add("across corners (corner circle)", corners, "mm", Plane, $"flats / cos(180/{N(n)}) = {r.L(corners)}")
            .Add("side", side, "mm", Plane, $"flats x tan(180/{N(n)}) = {r.L(side)}")
            .Add("depth of cut a flat, from the corner circle", (corners - flats) / 2, "mm", Plane, "(corners - flats) / 2");
    }

    // "3/4 hex", "8 mm square": the size is the shape's own, across flats.
    private static bool SizeFirst(Question q)
    {
        for (var i = 1; i < q.Tokens.Count; i++)
        {
            if ((q.Tokens[i].Low is "hex" or "hexagon" or "square" or "octagon" or "nut" or "spanner") && q.Tokens[i - 1] is { IsNumber: true })
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Radii.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Radius(Question q, ReplyBuilder r)
    {
        var named = q.Labelled(("chord", ["chord", "wide", "width"]), ("height", ["height", "high", "sagitta", "rise", "deep"]), ("rolls", ["rolls", "roll", "rollers"]), ("radius", ["radius"]));
        q.Has("arc", "over", "curve");
        double Of(string name, string what) => named.TryGetValue(name, out var t) ? q.Mm(t) : Question.Need(q.Length(), what);
        if (named.ContainsKey("rolls"))
        {
            var roll = Of("rolls", "the rolls' diameter");
            var over = named.TryGetValue("radius", out var misread) ? q.Mm(misread) : Question.Need(q.Length(), "the width over the rolls");
            (over, roll) = (Math.Max(over, roll), Math.Min(over, roll));
            r.Add("radius", Circles.RadiusOverRolls(over, roll), "mm", Plane, $"(L - D)^2 / (8 D) = {r.L(Circles.RadiusOverRolls(over, roll))}");
            return;
        }

        if (named.TryGetValue("radius", out var known) && named.ContainsKey("chord") && !named.ContainsKey("height"))
        {
            var rad = q.Mm(known);
            r.Add("height of the arc", Circles.Sagitta(rad, Of("chord", "the chord")), "mm", Plane, "R - sqrt(R^2 - c^2/4)");
            return;
        }

        var chord = Of("chord", "the chord");
        var height = Of("height", "the height of the arc");
        r.Add("radius", Circles.RadiusFromChord(chord, height), "mm", Plane, $"c^2/(8h) + h/2 = {r.L(chord)}^2 / (8 x {r.L(height)}) + {r.L(height)}/2 = {r.L(Circles.RadiusFromChord(chord, height))}");
    }

    /// <summary>Sine bars.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Sine(Question q, ReplyBuilder r)
    {
        var angle = q.Angle() + BareMinutes(q);
        q.Has("bar", "blocks", "block", "stack", "slips", "for", "height");
        var length = Question.Need(q.Length(), "the sine bar's length");
        if (angle is { } a)
        {
            if (a is not (> 0 and <= 60))
            {
                throw new UnansweredException($"a sine bar is not set to {N(a)} deg; up to 45, at most 60");
            }

            r.Add("blocks", Shapes.SineBar(length, a), "mm", Plane, $"L sin(angle) = {r.L(length)} x sin({N(a, 6)} deg) = {r.L(Shapes.SineBar(length, a))}");
            return;
        }

        var blocks = Question.Need(q.Length(), "the angle (or the height of the blocks)");
        (length, blocks) = (Math.Max(length, blocks), Math.Min(length, blocks));
        r.Add("angle", Shapes.SineBarAngleDeg(length, blocks), "deg", Plane, "asin(blocks / L)");
    }

    // "22 deg 30 on a 5 inch bar": a bare number right after the degrees, with the bar's length said in a unit.
    private static double BareMinutes(Question q)
    {
        var at = q.Tokens.ToList().FindIndex(t => t is { IsNumber: true, Unit: "deg" });
        if (at < 0 || at + 1 >= q.Tokens.Count || q.Tokens[at + 1] is not { IsNumber: true, Used: false, Unit: "", Decimals: 0, IsFraction: false, Value: < 60 } minutes || !q.Tokens.Any(t => t.IsNumber && Units.IsLength(t.Unit)))
        {
            return 0;
        }

        minutes.Used = true;
        return minutes.Value / 60;
    }

    /// <summary>Dovetails.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Dovetail(Question q, ReplyBuilder r)
    {
        var angle = q.Angle() ?? 60;
        var female = q.Has("female", "slot", "internal", "between", "inside");
        q.Has("male", "over", "external", "slide");
        var named = q.Labelled(("pin", ["pin", "pins", "rollers", "roller", "wires"]), ("width", ["width", "wide", "root", "across"]));
        var pin = named.TryGetValue("pin", out var p) ? q.Mm(p) : Question.Need(q.Length(), "the pins' diameter");
        var width = named.TryGetValue("width", out var w) ? q.Mm(w) : Question.Need(q.Length(), "the width at the sharp corners where the pins sit");
        var value = female ? Shapes.DovetailBetween(width, angle, pin) : Shapes.DovetailOver(width, angle, pin);
        r.Add(female ? "between pins" : "over pins", value, "mm", Plane, $"{r.L(width)} {(female ? "-" : "+")} {r.L(pin)} x (1 + cot({N(angle / 2)} deg)) = {r.L(value)}")
            .Note($"{(female ? "Female: width at the wide bottom" : "Male: width at the narrow root")}, {N(angle)} deg.");
    }

    /// <summary>Countersinks.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Countersink(Question q, ReplyBuilder r)
    {
        var angle = q.Angle() ?? AngleLike(q) ?? 90;
        var named = q.Labelled(("tip", ["flat", "tip", "hole", "from"]), ("to", ["to", "diameter", "dia"]), ("wide", ["wide", "width"]));
        if (named.TryGetValue("wide", out var w))
        {
            var wide = q.Mm(w);
            r.Add("depth from where it touches the edge", wide / Math.Tan(angle * Math.PI / 360), "mm", Plane, $"width on the face x cot({N(angle / 2)} deg), angle {N(angle)} deg");
            return;
        }

        q.Has("deep", "depth", "how", "countersink");
        var to = named.TryGetValue("to", out var t) ? q.Mm(t) : Question.Need(q.Length(), "the diameter at the face");
        var tip = named.TryGetValue("tip", out var f) ? q.Mm(f) : q.Length() ?? 0;
        (to, tip) = (Math.Max(to, tip), Math.Min(to, tip));
        r.Add("depth from first touch", Shapes.CountersinkDepth(angle, to, tip), "mm", Plane, $"(D - T)/2 cot({N(angle / 2)} deg) = ({r.L(to)} - {r.L(tip)})/2 x {N(1 / Math.Tan(angle * Math.PI / 360), 5)} = {r.L(Shapes.CountersinkDepth(angle, to, tip))}")
            .Note(tip > 0 ? $"It first touches at a diameter of {r.L(tip)} (the hole's edge or the cutter's flat)." : "A sharp point was taken; a hole or a flat: say 'from 5'.").Note($"Angle {N(angle)} deg.");
    }

    /// <summary>Drill points.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Point(Question q, ReplyBuilder r)
    {
        var angle = q.Angle() ?? AngleLike(q) ?? 118;
        q.Has("drill", "length", "tip", "point", "allowance");
        var diameter = Question.Need(q.Length(), "the drill's diameter");
        r.Add("length of the point", Shapes.DrillPoint(angle, diameter), "mm", Plane, $"D/2 cot({N(angle / 2)} deg) = {r.L(Shapes.DrillPoint(angle, diameter))}").Note($"Point {N(angle)} deg; add it to the depth of the full diameter.");
    }

    /// <summary>Outer tangents.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Tangent(Question q, ReplyBuilder r)
    {
        var across = q.Has("diameter", "diameters", "dia", "round");
        var named = q.Labelled(("centres", ["centres", "centers", "apart", "distance"]));
        q.Has("radius", "radii", "bosses", "and");
        var distance = named.TryGetValue("centres", out var c) ? q.Mm(c) : double.NaN;
        var first = Question.Need(q.Length(), "the first radius") / (across ? 2 : 1);
        var second = Question.Need(q.Length(), "the second radius") / (across ? 2 : 1);
        distance = double.IsNaN(distance) ? Question.Need(q.Length(), "the distance of the centres") : distance;
        var t = Circles.OuterTangent(first, second, distance);
        r.Add("slope of the tangent", t.SlopeDeg, "deg", Plane, "-asin((R1 - R2) / C)").Add("angle of the tangent point", t.AngleDeg, "deg", Plane, "acos((R1 - R2) / C), from the line of centres")
            .Add("first X", t.First.X, "mm", Plane, "R1 (R1 - R2) / C").Add("first Y", t.First.Y, "mm", Plane).Add("second X", t.Second.X, "mm", Plane).Add("second Y", t.Second.Y, "mm", Plane)
            .Add("length of the straight", t.Length, "mm", Plane, "sqrt(C^2 - (R1 - R2)^2)");
    }

    /// <summary>Fillets.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Fillet(Question q, ReplyBuilder r)
    {
        var named = q.Labelled(("arm", ["arm", "width", "wide"]), ("boss", ["boss", "radius"]), ("fillet", ["fillet", "corner", "blend"]));
        q.Has("boss", "radius", "into", "arm", "fillet");
        double Of(string name, string what) => named.TryGetValue(name, out var t) ? q.Mm(t) : Question.Need(q.Length(), what);
        var a = Circles.ArmIntoBoss(Of("boss", "the boss's radius"), Of("arm", "the arm's width"), Of("fillet", "the fillet's radius"));
        r.Add("sharp corner X", a.Sharp, "mm", Plane, "sqrt(R^2 - (w/2)^2)").Add("fillet centre X", a.Centre.X, "mm", Plane, "sqrt((R + r)^2 - (w/2 + r)^2)").Add("fillet centre Y", a.Centre.Y, "mm", Plane)
            .Add("tangent on boss X", a.OnBoss.X, "mm", Plane).Add("tangent on boss Y", a.OnBoss.Y, "mm", Plane).Add("tangent on edge X", a.OnEdge.X, "mm", Plane).Add("tangent on edge Y", a.OnEdge.Y, "mm", Plane);
    }

    /// <summary>V-blocks.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Vee(Question q, ReplyBuilder r)
    {
        var angle = q.Angle() ?? AngleLike(q) ?? 90;
        q.Has("round", "bar", "block", "in", "dia", "diameter", "cylinder");
        var v = Shapes.Vee(Question.Need(q.Length(), "the round's diameter"), angle);
        r.Add("centre above the sharp bottom", v.Centre, "mm", Plane, $"r / sin({N(angle / 2)} deg)").Add("top above the sharp bottom", v.Top, "mm", Plane).Add("width between contacts", v.Contact, "mm", Plane, $"d cos({N(angle / 2)} deg)");
    }

    /// <summary>Cusps and ridges.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Cusp(Question q, ReplyBuilder r)
    {
        var step = q.Angle();
        var across = q.Has("diameter", "dia") || (q.HasIn("ballnose", "ballend") && !q.HasIn("radius"));
        var named = q.Labelled(("step", ["step", "stepover", "step-over", "over"]), ("radius", ["radius", "ball", "ballnose", "ballend"]));
        q.Has("ball", "ballnose", "ballend", "ridge", "every", "rough", "nose", "end", "mill", "cutter");
        double Of(string name, string what) => named.TryGetValue(name, out var t) ? q.Mm(t) : Question.Need(q.Length(), what);
        var radius = Of("radius", "the radius") / (across ? 2 : 1);
        if (step is { } s)
        {
            r.Add("ridge", Shapes.Ridge(radius, s), "mm", Plane, $"R (1/cos({N(s / 2)} deg) - 1)");
            return;
        }

        r.Add("cusp", Shapes.Cusp(radius, Of("step", "the step-over")), "mm", Plane, $"R - sqrt(R^2 - (s/2)^2), R = {r.L(radius)}");
    }

    /// <summary>Chip thinning.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Chip(Question q, ReplyBuilder r)
    {
        var named = q.Labelled(("wide", ["wide", "width", "ae", "deep"]), ("tooth", ["tooth", "feed", "fz"]), ("cutter", ["cutter", "dia", "diameter"]));
        var perTooth = q.InUnit("mm/tooth");
        double Of(string name, string what) => named.TryGetValue(name, out var t) ? q.Mm(t) : Question.Need(q.Length(), what);
        var (cutter, wide) = (Of("cutter", "the cutter's diameter"), Of("wide", "the width of cut"));
        var feed = perTooth ?? (named.TryGetValue("tooth", out var f) ? q.Mm(f) : q.Length() ?? Speeds.StartingFeedPerTooth(cutter));
        r.Add("greatest chip", Speeds.ThinnedChip(feed, wide, cutter), "mm", Plane, $"fz 2 sqrt(r - r^2), r = ae/D = {N(wide / cutter)}, fz = {N(feed)} mm")
            .Add("feed a tooth for a chip as thick as that feed", Speeds.FeedForChip(feed, wide, cutter), "mm/tooth", Plane, "fz / (2 sqrt(r - r^2)), none of it from half the diameter on");
    }

    /// <summary>Conversions.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Convert(Question q, ReplyBuilder r)
    {
        if (Conversions.Add(q, r))
        {
            return;
        }

        q.Has("decimal", "fraction", "metric", "inch", "inches", "mm", "thou");
        var mm = Question.Need(q.Length(), "the length");
        var basis = new Basis("1 in = 25.4 mm exactly", Evidence.StandardFormula);
        r.Add("length", mm, "mm", basis, $"{N(mm / 25.4, 6)} in x 25.4 = {N(mm, 6)} mm");
        var near = Math.Round(mm / 25.4 * 64);
        if (near < 1)
        {
            return;
        }

        r.Say("nearest sixty-fourth", Drills.DrillTable.All.FirstOrDefault(d => d.Family == Drills.DrillFamily.Fraction && Math.Abs(d.DiameterMm - (near * 25.4 / 64)) < 1e-9)?.Name is { } name ? name + " in" : N(near) + "/64 in", basis, $"off by {N((near / 64) - (mm / 25.4), 5)} in");
    }

    // A bare 82, 90, 100, 118 or 135 among two or more numbers is an angle.
    private static double? AngleLike(Question q)
    {
        var numbers = q.Tokens.Where(t => t is { IsNumber: true, Used: false }).ToArray();
        var token = numbers.Length < 2 ? null : numbers.FirstOrDefault(t => t.Unit.Length == 0 && (t.Value is 60 or 82 or 90 or 100 or 118 or 120 or 135 or 140));
        if (token is null)
        {
            return null;
        }

        token.Used = true;
        return token.Value;
    }
}
