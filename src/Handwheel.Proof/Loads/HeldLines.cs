using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Loads;

/// <summary>The two lines a pair of jaws bears on. Holding frame, mm.</summary>
/// <param name="Middle">The middle between them.</param>
/// <param name="Half">Half the way from one jaw to the other.</param>
/// <param name="Beside">How far the lines stand beside each other along the jaws; of lines that lie, how much one is higher.</param>
/// <param name="IsUpright">Whether they stand up.</param>
internal sealed record HeldLines(Point3 Middle, double Half, double Beside, bool IsUpright)
{
    /// <summary>Whether jaws drawn up turn the work instead of holding it: the press on lines so far beside each other turns it more than friction along them holds.</summary>
    public bool IsTurnedByPress => Beside > 2 * Half * GripStrength.LineFriction;

    /// <summary>The lines of two jaws.</summary>
    /// <param name="a">The one.</param>
    /// <param name="b">The other.</param>
    /// <returns>Them; null where a jaw has no hard line of its own.</returns>
    public static HeldLines? Between(Bearing a, Bearing b)
    {
        if (!a.IsNarrow || !b.IsNarrow || a.Nearest is not { } one || b.Nearest is not { } other)
        {
            return null;
        }

        var isUpright = a.Kind != ContactKind.LyingLine || b.Kind != ContactKind.LyingLine;
        var isAcross = a.Facts.Least.Y >= b.Facts.Most.Y || b.Facts.Least.Y >= a.Facts.Most.Y;
        var (apart, along) = isAcross ? (one.Y - other.Y, one.X - other.X) : (one.X - other.X, one.Y - other.Y);
        return new(
            new((one.X + other.X) / 2, (one.Y + other.Y) / 2, (one.Z + other.Z) / 2), Math.Abs(apart) / 2, Math.Abs(isUpright ? along : one.Z - other.Z), isUpright);
    }
}
