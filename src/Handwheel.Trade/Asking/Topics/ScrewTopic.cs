using Handwheel.Trade.Geometry;
using Handwheel.Trade.Screws;
using Handwheel.Trade.Threads;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Screw heads and pockets.</summary>
internal static class ScrewTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var kinds = Kinds(q);
        q.Has("machine", "head", "heads", "screw", "screws", "bolt", "size", "sizes", "dimensions", "deep", "depth", "key", "keys", "fits", "hex", "hexagon", "socket", "across", "thick", "thickness", "high", "height", "tall");
        var size = Size(q);
        q.Inch = !size.StartsWith('M');
        var heads = ScrewTable.Of(size);
        if (heads.Count == 0)
        {
            throw new UnansweredException($"no heads are tabulated for {size}");
        }

        var wanted = heads.Where(h => kinds.Length == 0 || kinds.Any(k => h.Kind.Contains(k, StringComparison.Ordinal))).ToArray();
        if (wanted.Length == 0)
        {
            throw new UnansweredException($"no such head is tabulated for {size}");
        }

        foreach (var head in wanted)
        {
            Head(r, head);
        }
    }

    // Words that say which head; a hexagon only where no socket is meant.
    private static string[] Kinds(Question q)
    {
        var flat = q.Has("flat", "csk", "countersunk", "countersink", "flathead", "fhcs");
        if (q.Has("grub", "setscrew", "headless") || (q.HasIn("set") && q.HasIn("screw", "screws")))
        {
            q.Has("set");
            return ["set screw"];
        }

        if (q.Has("button", "bhcs"))
        {
            return ["button"];
        }

        if (q.Has("pan"))
        {
            return ["pan"];
        }

        var cap = q.Has("socket", "cap", "shcs", "counterbore", "cbore", "c'bore", "capscrew", "allen");
        return flat ? cap ? ["flat socket"] : ["flat"] : cap ? ["socket head cap"] : q.Has("nut", "nuts") ? ["hexagon nut"] : q.Has("hex", "hexagon", "spanner", "wrench", "flats") ? ["hexagon"] : [];
    }

    private static string Size(Question q)
    {
        if (ThreadFinder.Take(q) is { } thread)
        {
            ThreadFinder.TakeClass(q, thread);
            return thread.Size;
        }

        foreach (var token in q.Tokens.Where(t => !t.Used && (t.IsFraction || t.Unit == "in" || t.Raw.StartsWith('#'))))
        {
            token.Used = true;
            var major = UnifiedTable.MajorOf(token.Raw.Replace("in", string.Empty, StringComparison.OrdinalIgnoreCase).Trim());
            var known = ScrewTable.All.FirstOrDefault(h => !h.Size.StartsWith('M') && Math.Abs(UnifiedTable.MajorOf(h.Size) - major) < 1e-6);
            return known?.Size ?? token.Raw;
        }

        throw new UnansweredException("the screw's size is missing, such as M6, #10, 1/4 or 1 in");
    }

    private static void Head(ReplyBuilder r, ScrewHead head)
    {
        var k = head.Kind;
        if (!double.IsNaN(head.AngleDeg))
        {
            r.Add($"{k} {head.Size}: head, sharp edge", head.HeadDiameter, "mm", head.Basis).Add($"{k}: countersink angle", head.AngleDeg, "deg", head.Basis);
            var depth = Shapes.CountersinkDepth(head.AngleDeg, head.HeadDiameter, 0);
            r.Add($"{k}: countersink depth from a sharp point", depth, "mm", head.Basis, $"D/2 cot(angle/2) = {r.L(depth)}; head flush at its sharp edge, sink a little more");
        }
        else if (!double.IsNaN(head.HeadDiameter))
        {
            r.Add(k.StartsWith("hexagon", StringComparison.Ordinal) ? $"{k} {head.Size}: across flats" : $"{k} {head.Size}: head diameter", head.HeadDiameter, "mm", head.Basis)
                .Add(k == "hexagon nut" ? $"{k}: thickness" : $"{k}: head height", head.HeadHeight, "mm", head.Basis);
        }

        if (!double.IsNaN(head.Wrench) && !k.StartsWith("hexagon", StringComparison.Ordinal))
        {
            r.Add(k == "set screw" ? $"{k} {head.Size}: key across flats" : $"{k}: key across flats", head.Wrench, "mm", head.Basis);
        }

        if (!double.IsNaN(head.PocketDepth))
        {
            var basis = head.PocketBasis ?? head.Basis;
            r.Add($"{k}: counterbore diameter", head.Pocket, "mm", basis)
                .Add($"{k}: counterbore depth", head.PocketDepth, "mm", basis, $"head {r.L(head.HeadHeight)} and {N(head.PocketDepth - head.HeadHeight, 3)} mm to sink it");
        }
    }
}
