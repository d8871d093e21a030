using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Loads;

/// <summary>What holds the work, summed up: newtons, and mm of the holding frame.</summary>
/// <param name="Press">What it presses with.</param>
/// <param name="Friction">What its faces hold by friction, all together.</param>
/// <param name="Low">Lowest place borne on.</param>
/// <param name="High">Highest place borne on.</param>
/// <param name="IsClamped">Whether clamps alone hold it.</param>
/// <param name="On">The two lines jaws bear on; null where they bear on faces.</param>
internal sealed record HeldWork(double Press, double Friction, double Low, double High, bool IsClamped, HeldLines? On)
{
    /// <summary>How many times over it holds against one cut, in the way it goes first.</summary>
    /// <param name="load">The cut.</param>
    /// <param name="at">The cutter&#39;s lowest cutting point, holding frame.</param>
    /// <returns>The margin, and the way: <c>slides</c>, <c>rocks</c>, <c>turns</c> or <c>rolls</c>.</returns>
    public (double Margin, string Way) Against(CutLoad load, Point3 at)
    {
        var slide = Friction / Math.Max(1e-9, Math.Sqrt((load.SideN * load.SideN) + (load.AlongN * load.AlongN)));
        var high = at.Z + (load.Depth / 2);
        var rock = IsClamped ? double.PositiveInfinity : Press * Math.Max(High - Low, 0.5) / 2 / Math.Max(1e-9, load.SideN * Math.Max(0, high - ((Low + High) / 2)));
        List<(double Margin, string Way)> ways = [(slide, "slides"), (rock, "rocks")];
        if (On is { } lines)
        {
            // Friction at half the way between the lines, against the cut at its distance from the middle between them.
            var arm = lines.IsUpright ? new Point2(at.X, at.Y).DistanceTo(new(lines.Middle.X, lines.Middle.Y)) : Math.Abs(high - lines.Middle.Z);
            var turn = Friction * lines.Half / Math.Max(1e-9, load.SideN * arm);
            ways = lines.IsUpright ? [.. ways, (turn, "turns")] : [ways[0], (turn, "rolls")];
        }

        return ways.MinBy(w => w.Margin);
    }
}
