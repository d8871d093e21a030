using System.Globalization;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Measuring;
using Handwheel.Quantities;

namespace Handwheel.Proof.Questions;

/// <summary>Size: each size of the drawing, two-point at stated lines: least and greatest value, both within limits.</summary>
internal static class Sizes
{
    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="follows">Whether other findings already explain metal that is gone or was not cut: then what is found here follows from them and is a caution.</param>
    /// <returns>Every size, and findings <c>size</c>.</returns>
    public static (IReadOnlyList<SizeResult> Results, IReadOnlyList<Finding> Findings) Ask(Subject subject, bool follows)
    {
        var measurer = new SizeMeasurer(subject.Aimed, subject.Trace.Last);
        var results = new List<SizeResult>();
        var findings = new List<Finding>();
        var unasked = new List<Size>();
        foreach (var size in subject.Drawing.Sizes)
        {
            var tally = measurer.Measure(size);
            if (!size.Stated && tally is { Any: false, Gone: false })
            {
                // The drawing has no two faces for it (a slot that runs out at both ends has no length): said, not passed over.
                unasked.Add(size);
                continue;
            }

            var byHand = tally.Surfaces.Any(s => ByHand(subject, s));
            var within = tally is { Any: true, Gone: false } && size.Limits.Contains(tally.Least) && size.Limits.Contains(tally.Greatest);
            results.Add(new SizeResult(
                size.Name, tally.Any ? tally.Least : null, tally.Any ? tally.Greatest : null, size.Limits.Lower, size.Limits.Upper, within, byHand));
            if (!within && Finding(subject, size, tally) is { } finding)
            {
                findings.Add(follows && finding.Grade == Grade.Halt ? finding with { Grade = Grade.Caution, Message = finding.Message + " It follows from what is found above." } : finding);
            }
        }

        // Sizes nobody asked for are told together, at the end.
        if (unasked.Count == 1)
        {
            findings.Add(FindingCatalogue.SizeNotMeasured(new FindingPlace(Where: unasked[0].Where), unasked[0].Name, "for the drawing has no two faces for it on any line", Grade.Note));
        }
        else if (unasked.Count > 1)
        {
            findings.Add(FindingCatalogue.SizesNotMeasured(new FindingPlace(), string.Join(", ", unasked.Select(s => s.Name))));
        }

        return (results, findings);
    }

    private static bool ByHand(Subject subject, Solids.Soundings.SurfaceId surface) =>
        !surface.IsStock && subject.Trace.Last.StrokeOf(surface) is { } stroke && subject.Trace.Strokes[stroke].Hand is { Work: "file" or "rub" or "saw" or "break web" };

    private static Finding? Finding(Subject subject, Size size, Tally tally)
    {
        var place = new FindingPlace(Where: size.Where);
        if (tally.Gone)
        {
            return FindingCatalogue.SizeNotMeasured(place, size.Name, "for a face of it is not there", Grade.Halt);
        }

        if (!tally.Any)
        {
            return size.Stated
                ? FindingCatalogue.SizeNotMeasured(place, size.Name, "for the drawing has no two faces for it on any line", Grade.Caution)
                : null;
        }

        var angle = size.Kind == SizeKind.Angle;
        string Told(double value) => angle
            ? string.Create(CultureInfo.InvariantCulture, $"{value * 180 / Math.PI:F3} deg")
            : subject.Unit.Told(value);
        var found = tally.Greatest - tally.Least < 5e-4 ? Told((tally.Least + tally.Greatest) / 2) : $"{Told(tally.Least)} to {Told(tally.Greatest)}";
        var outside = Math.Max(size.Limits.Lower - tally.Least, tally.Greatest - size.Limits.Upper);
        return FindingCatalogue.SizeOutside(Step(subject, tally, place), size.Name, found, $"{Told(size.Limits.Lower)} to {Told(size.Limits.Upper)}", outside, angle);
    }

    // The last step that made one of its faces.
    private static FindingPlace Step(Subject subject, Tally tally, FindingPlace place)
    {
        var strokes = tally.Surfaces.Select(s => subject.Trace.Last.StrokeOf(s)).OfType<int>().ToList();
        return strokes.Count == 0 ? place : place with { Step = subject.Trace.Strokes[strokes.Max()].Step.Id, Move = subject.Trace.Strokes[strokes.Max()].Move?.Number };
    }
}
