namespace Handwheel.Solids.Geometry;

/// <summary>A rigid placement: takes places of one frame to places of another by a turn and a shift. Right-handed, immutable.</summary>
public sealed class Pose : IEquatable<Pose>
{
    private readonly Vector3 rowX;
    private readonly Vector3 rowY;
    private readonly Vector3 rowZ;
    private readonly Vector3 shift;

    private Pose(Vector3 rowX, Vector3 rowY, Vector3 rowZ, Vector3 shift)
    {
        this.rowX = rowX;
        this.rowY = rowY;
        this.rowZ = rowZ;
        this.shift = shift;
    }

    /// <summary>The placement that changes nothing.</summary>
    public static Pose Identity { get; } = new(Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ, default);

    /// <summary>Where the origin goes.</summary>
    public Point3 OriginGoesTo => new(shift.X, shift.Y, shift.Z);

    /// <summary>A shift alone.</summary>
    /// <param name="by">Displacement, mm.</param>
    public static Pose Translation(Vector3 by) => new(Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ, by);

    /// <summary>A turn about a line parallel to Z, counterclockwise seen from above; quarter turns are exact.</summary>
    /// <param name="angle">Angle, radians.</param>
    /// <param name="centre">A place on the axis.</param>
    public static Pose TurnAboutZ(double angle, Point3 centre = default)
    {
        var (s, c) = Turn.SinCos(angle);
        return About(new(c, -s, 0), new(s, c, 0), Vector3.UnitZ, centre);
    }

    /// <summary>A turn about a line parallel to X, counterclockwise seen from +X; quarter turns are exact.</summary>
    /// <param name="angle">Angle, radians.</param>
    /// <param name="centre">A place on the axis.</param>
    public static Pose TurnAboutX(double angle, Point3 centre = default)
    {
        var (s, c) = Turn.SinCos(angle);
        return About(Vector3.UnitX, new(0, c, -s), new(0, s, c), centre);
    }

    /// <summary>A turn about a line parallel to Y, counterclockwise seen from +Y; quarter turns are exact.</summary>
    /// <param name="angle">Angle, radians.</param>
    /// <param name="centre">A place on the axis.</param>
    public static Pose TurnAboutY(double angle, Point3 centre = default)
    {
        var (s, c) = Turn.SinCos(angle);
        return About(new(c, 0, s), Vector3.UnitY, new(-s, 0, c), centre);
    }

    /// <summary>The placed place.</summary>
    /// <param name="p">Place in the first frame.</param>
    public Point3 Apply(Point3 p)
    {
        var v = p.ToVector();
        return new(rowX.Dot(v) + shift.X, rowY.Dot(v) + shift.Y, rowZ.Dot(v) + shift.Z);
    }

    /// <summary>The placed direction: turned, not shifted.</summary>
    /// <param name="v">Direction in the first frame.</param>
    public Vector3 ApplyDirection(Vector3 v) => new(rowX.Dot(v), rowY.Dot(v), rowZ.Dot(v));

    /// <summary>The placement back.</summary>
    public Pose Inverse()
    {
        Vector3 x = new(rowX.X, rowY.X, rowZ.X), y = new(rowX.Y, rowY.Y, rowZ.Y), z = new(rowX.Z, rowY.Z, rowZ.Z);
        return new(x, y, z, new(-x.Dot(shift), -y.Dot(shift), -z.Dot(shift)));
    }

    /// <summary>This placement first, then another.</summary>
    /// <param name="next">The placement done afterwards.</param>
    /// <exception cref="ArgumentNullException"><paramref name="next"/> is null.</exception>
    public Pose Then(Pose next)
    {
        ArgumentNullException.ThrowIfNull(next);
        Vector3 x = ApplyColumns(next.rowX), y = ApplyColumns(next.rowY), z = ApplyColumns(next.rowZ);
        return new(x, y, z, next.Apply(OriginGoesTo).ToVector());
    }

    /// <inheritdoc/>
    public bool Equals(Pose? other) =>
        other is not null && rowX == other.rowX && rowY == other.rowY && rowZ == other.rowZ && shift == other.shift;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Pose);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(rowX, rowY, rowZ, shift);

    // Whether Z stays Z: a turn about a vertical line and a shift.
    internal bool KeepsUp => rowZ == Vector3.UnitZ && rowX.Z == 0 && rowY.Z == 0;

    private static Pose About(Vector3 x, Vector3 y, Vector3 z, Point3 centre)
    {
        var c = centre.ToVector();
        return new(x, y, z, c - new Vector3(x.Dot(c), y.Dot(c), z.Dot(c)));
    }

    private Vector3 ApplyColumns(Vector3 row) => (rowX * row.X) + (rowY * row.Y) + (rowZ * row.Z);
}
