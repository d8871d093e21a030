using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Reading;

// A cut of the drawing must cut metal that is drawn before it: what misses it altogether is a slip of a sign or a place.
internal sealed class CutChecks(FindingBag bag)
{
    // Lines each way through where a cut and the metal may meet.
    private const int Lines = 32;

    // Whether every cut has metal to cut from; nothing may be drawn before that.
    public bool Follow(Drawing drawing)
    {
        if (drawing.Features.Count == 0 || !drawing.Features[0].IsCut)
        {
            return true;
        }

        var first = drawing.Features[0];
        bag.Add(FindingCatalogue.NotThere(first.Where, $"'{first.Name}' is cut before any metal is drawn.", "Draw what it is cut from above it: cuts are done in the order typed."));
        return false;
    }

    public void Meet(Drawing drawing)
    {
        var part = DrawnPart.Of(drawing, PartVariant.Nominal);
        List<ISolid> added = [];
        foreach (var drawn in part.Features)
        {
            if (!drawn.Feature.IsCut)
            {
                added.Add(drawn.Solid);
                continue;
            }

            var metal = new Union(added);
            var missed = Enumerable.Range(0, drawn.Outlines.Count).Where(i => !Meets(drawn, drawn.Outlines[i], metal)).ToList();
            if (missed.Count > 0)
            {
                Tell(drawn, missed);
            }
        }
    }

    // All of it is a halt; some places of a repeat may well hang over.
    private void Tell(DrawnFeature drawn, List<int> missed)
    {
        var all = missed.Count == drawn.Outlines.Count;
        var which = all ? $"'{drawn.Feature.Name}'" : FormattableString.Invariant($"'{drawn.Feature.Name}' at place {missed[0] + 1} of {drawn.Outlines.Count}");
        var finding = FindingCatalogue.NotThere(drawn.Feature.Where, $"{which} cuts nothing: no metal is drawn where it lies.", "Look at its place, its ends and their signs: 'deep' goes away from the side it is seen from (top, front, right, below, back or left).");
        bag.Add(all ? finding : finding with { Grade = Grade.Caution });
    }

    private static bool Meets(DrawnFeature cut, Outline outline, Union metal)
    {
        var own = FeatureView.Over(cut.Feature.View, outline.Min, outline.Max, (cut.From, cut.To)).Intersection(metal.Bounds);
        if (own.IsEmpty || Math.Min(own.Size.X, Math.Min(own.Size.Y, own.Size.Z)) <= 1e-6)
        {
            return false;
        }

        for (var i = 0; i < Lines * Lines; i++)
        {
            double a = (i / Lines) + 0.513, b = (i % Lines) + 0.487;
            Point3 at = new(own.Min.X + (own.Size.X * a / Lines), own.Min.Y + (own.Size.Y * a / Lines), own.Min.Z + (own.Size.Z * b / Lines));
            var beside = own.Min.Y + (own.Size.Y * b / Lines);
            if (Common(Line3.AlongX(at.Y, at.Z), own.Min.X, own.Max.X) || Common(Line3.AlongY(at.X, at.Z), own.Min.Y, own.Max.Y) || Common(Line3.AlongZ(at.X, beside), own.Min.Z, own.Max.Z))
            {
                return true;
            }
        }

        return false;

        bool Common(Line3 line, double from, double to) =>
            cut.Solid.Sound(line).Intersection(metal.Sound(line)).Any(s => Math.Min(s.To, to) - Math.Max(s.From, from) > 1e-6);
    }
}
