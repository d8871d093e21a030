using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Measuring;

/// <summary>The sides of a feature at one of its places, as aimed (the middle of every limit). Plan of the feature&#39;s view, millimetres.</summary>
/// <param name="Planes">Straight sides, in the order of its outline.</param>
/// <param name="Rounds">Round sides: an outer outline&#39;s first, then a ring&#39;s bore.</param>
internal sealed record FeatureFaces(IReadOnlyList<PlaneFace> Planes, IReadOnlyList<RoundFace> Rounds)
{
    /// <summary>The sides of a feature.</summary>
    /// <param name="drawn">The feature as aimed.</param>
    /// <param name="index">Which of its places.</param>
    /// <returns>Its sides.</returns>
    public static FeatureFaces Of(DrawnFeature drawn, int index)
    {
        var planes = new List<PlaneFace>();
        var rounds = new List<RoundFace>();
        Add(drawn.Outlines[index], bore: false, planes, rounds);
        if (drawn.Bores.Count > index)
        {
            Add(drawn.Bores[index], bore: true, planes, rounds);
        }

        return new FeatureFaces(planes, rounds);
    }

    private static void Add(Outline outline, bool bore, List<PlaneFace> planes, List<RoundFace> rounds)
    {
        var counter = outline.Area >= 0 ? 1 : -1;
        foreach (var piece in outline.Pieces)
        {
            if (piece.IsArc)
            {
                var inner = piece.Sweep * counter < 0;
                rounds.Add(new RoundFace(piece.Centre, piece.Radius, inner != bore));
                continue;
            }

            var run = piece.To - piece.From;
            var length = run.Length;
            if (length > 0)
            {
                var sign = bore ? -counter : counter;
                planes.Add(new PlaneFace((piece.From + piece.To) * 0.5, new Point2(run.Y, -run.X) * (sign / length), length / 2));
            }
        }
    }
}
