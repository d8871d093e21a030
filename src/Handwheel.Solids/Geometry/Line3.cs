namespace Handwheel.Solids.Geometry;

/// <summary>A line along which a sounding is taken; distances along it are from the origin, in mm when the direction is of unit length.</summary>
/// <param name="Origin">Where distance 0 lies.</param>
/// <param name="Direction">Which way distances grow; unit length.</param>
public readonly record struct Line3(Point3 Origin, Vector3 Direction)
{
    /// <summary>The line from one place towards another.</summary>
    /// <param name="from">Where distance 0 lies.</param>
    /// <param name="to">A place on the positive side.</param>
    public static Line3 Through(Point3 from, Point3 to) => new(from, (to - from).ToUnit());

    /// <summary>A line along +X.</summary>
    /// <param name="y">Y, mm.</param>
    /// <param name="z">Z, mm.</param>
    public static Line3 AlongX(double y, double z) => new(new(0, y, z), Vector3.UnitX);

    /// <summary>A line along +Y.</summary>
    /// <param name="x">X, mm.</param>
    /// <param name="z">Z, mm.</param>
    public static Line3 AlongY(double x, double z) => new(new(x, 0, z), Vector3.UnitY);

    /// <summary>A line along +Z.</summary>
    /// <param name="x">X, mm.</param>
    /// <param name="y">Y, mm.</param>
    public static Line3 AlongZ(double x, double y) => new(new(x, y, 0), Vector3.UnitZ);

    /// <summary>The place at a distance along the line.</summary>
    /// <param name="t">Distance, mm.</param>
    public Point3 At(double t) => Origin + (Direction * t);

    /// <summary>The same line in another frame; distances along it stay the same.</summary>
    /// <param name="pose">From this frame to the other.</param>
    /// <exception cref="ArgumentNullException"><paramref name="pose"/> is null.</exception>
    public Line3 Placed(Pose pose)
    {
        ArgumentNullException.ThrowIfNull(pose);
        return new(pose.Apply(Origin), pose.ApplyDirection(Direction));
    }
}
