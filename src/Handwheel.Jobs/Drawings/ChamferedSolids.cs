using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Drawings;

/// <summary>Prisms with 45-degree chamfers round their ends, exact: planes along straight edges, cones round arcs. The outline is convex, its arcs tangent to their neighbours.</summary>
internal static class ChamferedSolids
{
    // From a prism's outline, ends and legs (above, below; 0 none), millimetres.
    internal static ISolid Of(Outline outline, double low, double high, double above, double below)
    {
        var pieces = outline.Pieces;
        var centres = pieces.Where(p => p.IsArc).Select(p => p.Centre).ToList();
        if (centres.Count == 0)
        {
            return Flanked(new Prism(outline, low, high), pieces, low, high, above, below);
        }

        var rounds = pieces.Where(p => p.IsArc).Select(p => Round(p.Centre, p.Radius, low, high, above, below)).ToList();
        var straight = pieces.Where(p => !p.IsArc).ToList();
        if (straight.Count == 0)
        {
            return rounds[0];
        }

        // What lies between the tangent points has the flanks' planes; the rounds have their cones.
        var middle = Outline.Polyline([.. straight.SelectMany(p => new[] { p.From, p.To })]);
        return new Union([.. rounds, Flanked(new Prism(middle, low, high), straight, low, high, above, below)]);
    }

    private static ISolid Round(Point2 centre, double radius, double low, double high, double above, double below)
    {
        var tall = high - low;
        List<ISolid> parts = [new Prism(Outline.Circle(centre, radius), low, high)];
        if (above > 0)
        {
            var top = Math.Max(0, radius - above);
            parts.Add(new Frustum(centre, top + tall, top, low, high));
        }

        if (below > 0)
        {
            var bottom = Math.Max(0, radius - below);
            parts.Add(new Frustum(centre, bottom, bottom + tall, low, high));
        }

        return parts.Count == 1 ? parts[0] : new Intersection(parts);
    }

    private static Intersection Flanked(Prism prism, IEnumerable<OutlinePiece> edges, double low, double high, double above, double below)
    {
        List<ISolid> parts = [prism];
        foreach (var edge in edges)
        {
            var run = edge.To - edge.From;
            Vector3 outward = new(run.Y / run.Length, -run.X / run.Length, 0);
            if (above > 0)
            {
                parts.Add(new HalfSpace(edge.From.At(high - above), outward + Vector3.UnitZ));
            }

            if (below > 0)
            {
                parts.Add(new HalfSpace(edge.From.At(low + below), outward - Vector3.UnitZ));
            }
        }

        return new(parts);
    }
}
