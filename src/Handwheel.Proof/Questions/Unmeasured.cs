using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Measuring;

namespace Handwheel.Proof.Questions;

/// <summary>Unmeasured: is a size first measured when its faces have had their last cut, so that it can no longer be corrected?</summary>
internal static class Unmeasured
{
    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Cautions <c>unmeasured</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var measurer = new SizeMeasurer(subject.Aimed, subject.Trace.Last);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var measure in subject.Trace.Measures)
        {
            var size = subject.Drawing.Sizes.FirstOrDefault(s => string.Equals(s.Name, measure.Measured.Size, StringComparison.Ordinal));
            if (size is null || !seen.Add(size.Name))
            {
                continue;
            }

            var tally = measurer.Measure(size);
            var last = tally.Surfaces.Select(s => subject.Trace.Last.StrokeOf(s)).OfType<int>().DefaultIfEmpty(-1).Max();
            if (tally.Any && last >= 0 && last < measure.Strokes)
            {
                yield return FindingCatalogue.Unmeasured(
                    new FindingPlace(measure.Step.Id, measure.Step.Where), size.Name, "it is measured only after its faces have had their last cut");
            }
        }
    }
}
