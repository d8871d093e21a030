using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

// Brings an outline into order: arcs that meet their ends, counterclockwise.
internal sealed class OutlineCheck(FindingBag bag, LengthUnit unit)
{
    private const double Meets = 1e-3;

    // Null, with a finding made, where it is none.
    public OutlineShape? Sound(FeatureDraft draft, List<OutlineCorner> corners)
    {
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            var typed = draft.Corners[(i + 1) % corners.Count];
            if (a.At == b.At)
            {
                bag.Add(FindingCatalogue.Contradiction(typed.X.Where, "This corner stands where the one before it stands.", "Leave one of them out; an outline closes by itself."));
                return null;
            }

            if (a.ArcCentre is { } centre && Math.Abs(Apart(a.At, centre) - Apart(b.At, centre)) > Meets)
            {
                bag.Add(FindingCatalogue.Contradiction(
                    typed.X.Where,
                    $"This arc starts {unit.Said(Apart(a.At, centre))} from its centre and ends {unit.Said(Apart(b.At, centre))} from it.",
                    "Write the centre as far from both ends."));
                return null;
            }
        }

        var area = Area(corners);
        if (Math.Abs(area) < 1e-6)
        {
            bag.Add(FindingCatalogue.AbsurdNumber(draft.Where, draft.Name, "its outline encloses nothing", "Give its corners in order round it."));
            return null;
        }

        return new OutlineShape(area > 0 ? corners : Reversed(corners));
    }

    private static double Apart(Point2 a, Point2 b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    // Twice the signed area: the shoelace sum, and for each arc the segment between it and its chord.
    private static double Area(List<OutlineCorner> corners)
    {
        var sum = 0d;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count].At);
            sum += (a.At.X * b.Y) - (b.X * a.At.Y);
            if (a.ArcCentre is { } c)
            {
                var turn = Math.Atan2(b.Y - c.Y, b.X - c.X) - Math.Atan2(a.At.Y - c.Y, a.At.X - c.X);
                turn = a.ArcCounterclockwise ? (turn <= 0 ? turn + (2 * Math.PI) : turn) : (turn >= 0 ? turn - (2 * Math.PI) : turn);
                var r = Apart(a.At, c);
                sum += r * r * (turn - Math.Sin(turn));
            }
        }

        return sum;
    }

    // The other way round: each corner now leaves by what it was reached by.
    private static List<OutlineCorner> Reversed(List<OutlineCorner> corners)
    {
        var turned = new List<OutlineCorner>();
        for (var i = corners.Count - 1; i >= 0; i--)
        {
            var before = corners[(i + corners.Count - 1) % corners.Count];
            turned.Add(corners[i] with { ArcCentre = before.ArcCentre, ArcCounterclockwise = !before.ArcCounterclockwise });
        }

        return turned;
    }
}
