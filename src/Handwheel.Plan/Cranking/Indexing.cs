using Handwheel.Jobs.Shops;
using Handwheel.Plan.Workings;
using Handwheel.Trade.Indexing;

namespace Handwheel.Plan.Cranking;

// How an indexer is turned by an angle: turns of its crank and holes of a circle of its plates.
internal static class Indexing
{
    // Further off than this the plate does not make the angle, degrees.
    private const double Off = 0.002;

    internal static string Said(Indexer? indexer, double degrees)
    {
        if (indexer is null || indexer.Circles.Count == 0 || indexer.Worm < 1 || Math.Abs(indexer.Worm - Math.Round(indexer.Worm)) > 1e-9)
        {
            return string.Empty;
        }

        var best = Divider.Angular((int)Math.Round(indexer.Worm), Math.Abs(degrees), indexer.Circles)[0];
        var turns = best.Turns == 0 ? string.Empty : best.Turns == 1 ? "1 turn" : $"{Figures.Bare(best.Turns)} turns";
        var holes = best.Spaces == 0 ? string.Empty : $"{Figures.Bare(best.Spaces)} holes of the {Figures.Bare(best.Circle)} circle";
        var both = (turns, holes) switch { ("", "") => "it stays", ("", _) => holes, (_, "") => turns, _ => $"{turns} and {holes}" };
        return Math.Abs(best.ErrorDeg) < Off
            ? $"index crank {both}"
            : $"index crank {both}; no circle makes it whole, {Figures.Deg(Math.Abs(best.ErrorDeg))} deg {(best.ErrorDeg > 0 ? "over" : "short")}";
    }
}
