using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Reading;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Tests.Drawings;

/// <summary>The example jobs' parts as drawn, against formulas written here that share no code with the solids: what lies where, as a person would reckon it.</summary>
public sealed class ExampleShapesTests
{
    private const double Inch = 25.4;

    [Fact]
    public void The_knob_is_where_its_formula_says() => Agree("clamp-knob.handwheel", new(-20, -20, -24), new(20, 20, 2), Knob);

    [Fact]
    public void The_clamp_is_where_its_formula_says() => Agree("tslot-clamp.handwheel", new(-2, -12, -16), new(52, 12, 1), Clamp);

    [Fact]
    public void The_quadrant_is_where_its_formula_says() => Agree("friction-quadrant.handwheel", new(-12, -12, -9), new(25, 12, 1), Quadrant);

    [Fact]
    public void The_end_plate_is_where_its_formula_says() => Agree("plain-dial.handwheel", new(-31, -21, -9), new(31, 21, 1), EndPlate);

    // The quadrant has no plane of symmetry: its image in each plane through its middle differs from it (a fact of the drawing the job rests on).
    [Theory]
    [InlineData(-1, 1, 1)]
    [InlineData(1, -1, 1)]
    [InlineData(1, 1, -1)]
    public void The_quadrant_is_not_its_own_image(int x, int y, int z)
    {
        var random = new Random(7);
        var differs = 0;
        for (var i = 0; i < 20_000; i++)
        {
            var p = new Point3((random.NextDouble() * 37) - 12.5, (random.NextDouble() * 23) - 11.5, -random.NextDouble() * 8);
            var image = new Point3(x < 0 ? 13 - p.X : p.X, y * p.Y, z < 0 ? -8 - p.Z : p.Z);
            differs += Quadrant(p) == Quadrant(image) ? 0 : 1;
        }

        Assert.InRange(differs, 200, 20_000);
    }

    // Six grips of 1/2 in on a circle of 1 3/4: each bites 1/8 in into the 1 1/2 head.
    // Chord: c = 2 R sin(180/n); with n 6 the chord is the radius (Machinery's Handbook, regular polygons, from memory).
    [Fact]
    public void The_grips_stand_a_radius_apart_and_bite_an_eighth()
    {
        var grips = Read("clamp-knob.handwheel").Features.First(f => f.Name == "grips");
        Assert.Equal(6, grips.Places.Count);
        for (var i = 0; i < 6; i++)
        {
            var (a, b) = (grips.Places[i].Centre, grips.Places[(i + 1) % 6].Centre);
            Assert.Equal(0.875 * Inch, Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y))), 1e-9);
            Assert.Equal(0.125 * Inch, (0.75 * Inch) - (Math.Sqrt((a.X * a.X) + (a.Y * a.Y)) - (0.25 * Inch)), 1e-9);
        }
    }

    private static Drawing Read(string name)
    {
        var read = JobReader.Read(name, Examples.Text(name), Examples.Open);
        return read.Value!.Drawing;
    }

    private static void Agree(string name, Point3 least, Point3 most, Func<Point3, bool> inside)
    {
        var solid = DrawnPart.Of(Read(name), PartVariant.Nominal).Solid;
        var random = new Random(20);
        var within = 0;
        for (var i = 0; i < 40_000; i++)
        {
            var p = new Point3(
                least.X + (random.NextDouble() * (most.X - least.X)),
                least.Y + (random.NextDouble() * (most.Y - least.Y)),
                least.Z + (random.NextDouble() * (most.Z - least.Z)));
            var expected = inside(p);
            within += expected ? 1 : 0;
            Assert.True(expected == solid.Contains(p), FormattableString.Invariant($"{name} at {p.X:R}, {p.Y:R}, {p.Z:R}: metal {expected} expected"));
        }

        Assert.InRange(within, 4_000, 36_000);
    }

    private static double From(Point3 p, double x, double y) => Math.Sqrt(((p.X - x) * (p.X - x)) + ((p.Y - y) * (p.Y - y)));

    private static bool Knob(Point3 mm)
    {
        var p = new Point3(mm.X / Inch, mm.Y / Inch, mm.Z / Inch);
        var r = From(p, 0, 0);
        if (r < 0.1005 || p.Z > 0 || p.Z < -0.875)
        {
            return false;
        }

        if (p.Z > -0.375)
        {
            return r < 0.375;
        }

        for (var k = 0; k < 6; k++)
        {
            var angle = 60 * k * Math.PI / 180;
            if (From(p, 0.875 * Math.Cos(angle), 0.875 * Math.Sin(angle)) < 0.25)
            {
                return false;
            }
        }

        return r < 0.75 && !(p.Z < -0.75 && r < 0.3125);
    }

    private static bool Clamp(Point3 p)
    {
        var metal = p.X > 0 && p.X < 50 && p.Z < 0 && ((Math.Abs(p.Y) < 10 && p.Z > -12) || (Math.Abs(p.Y) < 4 && p.Z > -15));
        var nose = p.X > 40 && p.Z > -(p.X - 40) * Math.Tan(Math.PI / 6);
        var hole = From(p, 25, 0) < 3.3 || From(p, 8, 0) < 2.5 || (From(p, 25, 0) < 5.5 && p.Z > -6.5);
        return metal && !nose && !hole;
    }

    private static bool Quadrant(Point3 p)
    {
        if (p.Z > 0 || p.Z < -8 || From(p, 0, 0) < 2.5 || From(p, 20, 0) < 1.5 || From(p, 7.5 * Math.Cos(Math.PI / 3), -7.5 * Math.Sin(Math.PI / 3)) < 1.45)
        {
            return false;
        }

        var angle = Math.Atan2(p.Y, p.X) * 180 / Math.PI;
        angle = angle < 0 ? angle + 360 : angle;
        var nearest = Math.Clamp(angle, 100, 200) * Math.PI / 180;
        if (p.Z < -4 && From(p, 7.5 * Math.Cos(nearest), 7.5 * Math.Sin(nearest)) < 1.5)
        {
            return false;
        }

        return From(p, 0, 0) < 4.5 || (p.Z < -4 && Plate(p));
    }

    // The hull of two circles is every circle between them, centre and radius growing in step; how far a place is outside one of them is convex in the step.
    private static bool Plate(Point3 p)
    {
        var (a, b) = (0d, 1d);
        for (var i = 0; i < 100; i++)
        {
            var (c, d) = (a + ((b - a) / 3), b - ((b - a) / 3));
            (a, b) = From(p, 20 * c, 0) - 11 + (7 * c) < From(p, 20 * d, 0) - 11 + (7 * d) ? (a, d) : (c, b);
        }

        return From(p, 20 * a, 0) < 11 - (7 * a);
    }

    private static bool EndPlate(Point3 p)
    {
        if (Math.Abs(p.X) > 30 || Math.Abs(p.Y) > 20 || p.Z > 0 || p.Z < -8)
        {
            return false;
        }

        var screw = new Point3(Math.Abs(p.X), Math.Abs(p.Y), p.Z);
        var strap = From(p, Math.Clamp(p.X, -8, 8), 12) < 3;
        return !(strap || From(screw, 16, 0) < 6 || From(screw, 24, 14) < 2.75 || (From(screw, 24, 14) < 5 && p.Z > -5));
    }
}
