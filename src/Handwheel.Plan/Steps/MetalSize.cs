using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Measuring;

namespace Handwheel.Plan.Steps;

// What a size measures on the metal as it has been cut so far.
internal static class MetalSize
{
    // Millimetres (an angle: radians), where it is measured nearest to what is wanted: on what has been cut. Null where a face of it is not there yet.
    internal static double? Of(Bench bench, Size size)
    {
        var tally = new SizeMeasurer(bench.Drawing.Part, bench.Metal.Piece).Measure(size);
        if (!tally.Any || tally.Gone)
        {
            return null;
        }

        var middle = size.Limits.Middle;
        var nearest = Math.Abs(tally.Least - middle) <= Math.Abs(tally.Greatest - middle) ? tally.Least : tally.Greatest;
        return Math.Round(nearest, 9);
    }
}
