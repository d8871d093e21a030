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
        var flat = q.Has("flat", "csk", "countersunk", "countersink", "flathead");
        var hex = q.Has("hex", "hexagon", "spanner", "wrench");
        var cap = q.Has("socket", "cap", "shcs", "counterbore", "cbore", "c'bore", "capscrew", "allen");
        q.Has("machine", "head", "heads", "screw", "screws", "bolt", "size", "sizes", "dimensions", "deep", "depth");
        var size = Size(q);
        q.Inch = !size.StartsWith('M');
        var heads = ScrewTable.Of(size);
        if (heads.Count == 0)
        {
            throw new UnansweredException($"no heads are tabulated for {size}");
        }

        var any = false;
        foreach (var head in heads)
        {
            var isFlat = !double.IsNaN(head.AngleDeg);
            var isHex = head.Kind == "hexagon";
            if ((flat && !isFlat) || (hex && !cap && !isHex) || (cap && !flat && (isFlat || isHex)))
            {
                continue;
            }

            Head(r, head);
            any = true;
        }

        if (!any)
        {
            throw new UnansweredException($"no such head is tabulated for {size}");
        }
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

        throw new UnansweredException("the screw's size is missing");
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
        else
        {
            r.Add(k == "hexagon" ? $"{k} {head.Size}: across flats" : $"{k} {head.Size}: head diameter", head.HeadDiameter, "mm", head.Basis)
                .Add($"{k}: head height", head.HeadHeight, "mm", head.Basis);
        }

        if (!double.IsNaN(head.Wrench) && k != "hexagon")
        {
            r.Add($"{k}: key across flats", head.Wrench, "mm", head.Basis);
        }

        if (!double.IsNaN(head.PocketDepth))
        {
            r.Add($"{k}: counterbore diameter", head.Pocket, "mm", head.Basis)
                .Add($"{k}: counterbore depth", head.PocketDepth, "mm", head.Basis, $"head {r.L(head.HeadHeight)} and {N(head.PocketDepth - head.HeadHeight, 3)} mm to sink it");
        }
    }
}
