using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;

namespace Handwheel.Proof.Questions;

/// <summary>Spindle: is a cutter pushed into metal while the course says that the spindle is stopped? One a step. (Hands near one that turns are found while the course is followed.)</summary>
internal static class Spindle
{
    // Less than this is what rounding leaves, millimetres.
    private const double Rubs = 0.02;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Halts <c>spindle</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var stroke in subject.Trace.Strokes.Where(s => s is { Turning: false, Move: not null, Shape: not null, Cutter.Kind: not CutterKind.Tap }))
        {
            var deep = told.Contains(stroke.Step.Id) ? 0 : Taken(stroke);
            if (deep > Rubs && told.Add(stroke.Step.Id))
            {
                yield return FindingCatalogue.SpindleStopped(stroke.Place, stroke.CutterName, subject.Unit, deep);
            }
        }
    }

    // The greatest height of metal that the move took away, on upright lines under the cutter.
    private static double Taken(Stroke stroke)
    {
        var most = 0.0;
        var radius = stroke.Shape!.Pieces.Where(p => p.Cuts).Select(p => Math.Max(p.Radius0, p.Radius1)).DefaultIfEmpty(0).Max() - Rubs;
        foreach (var station in Station.Along(stroke.Legs, 1.5, 24))
        {
            for (var i = 0; i < 32 && radius > 0; i++)
            {
                var (s, c) = Math.SinCos(i * Math.PI / 16);
                var r = radius * (i % 2 == 0 ? 1 : 0.6);
                var line = station.Upright(r * c, r * s);
                most = Math.Max(most, stroke.Before.Sound(line).Sum(t => t.Length) - stroke.After.Sound(line).Sum(t => t.Length));
            }
        }

        return most;
    }
}
