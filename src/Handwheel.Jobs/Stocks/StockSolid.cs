using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Stocks;

/// <summary>The bare stock as a solid.</summary>
public static class StockSolid
{
    // A tube's bore stands out past its ends by this much.
    private const double Past = 1;

    /// <summary>The stock where it lies in the part frame.</summary>
    /// <param name="stock">The stock, sizes above 0; the sizes used (measured where they were) count.</param>
    /// <returns>A block; a cylinder or tube or a hexagon prism along its axis.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stock"/> is null.</exception>
    public static ISolid Of(Stock stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        var (a, u) = (stock.Least, stock.Used);
        if (stock.Form == StockForm.Bar)
        {
            return new Block(a, new(a.X + u.X, a.Y + u.Y, a.Z + u.Z));
        }

        // Along Z in a frame of its own, whose plan is the part's other two axes in turn: Y, Z for X; Z, X for Y; X, Y for Z.
        var (least, size, pose) = stock.Along switch
        {
            "y" => (new Point3(a.Z, a.X, a.Y), new Point3(u.Z, u.X, u.Y), Cycle().Then(Cycle())),
            "z" => (a, u, Pose.Identity),
            _ => (new Point3(a.Y, a.Z, a.X), new Point3(u.Y, u.Z, u.X), Cycle()),
        };
        var centre = new Point2(least.X + (size.X / 2), least.Y + (size.Y / 2));
        var (low, high) = (least.Z, least.Z + size.Z);
        ISolid solid = new Prism(stock.Form == StockForm.Hex ? Hex(stock, centre, size) : Outline.Circle(centre, size.X / 2), low, high);
        if (stock.Bore > 0)
        {
            solid = new Difference(solid, new Prism(Outline.Circle(centre, stock.Bore / 2), low - Past, high + Past));
        }

        return stock.Along == "z" ? solid : new Placed(solid, pose);
    }

    // (x, y, z) -> (z, x, y): from the frame with the bar along Z to the one with it along X.
    private static Pose Cycle() => Pose.TurnAboutY(Math.PI / 2).Then(Pose.TurnAboutX(Math.PI / 2));

    // Flats up and down: across flats is the box's size along part Z (along part Y for a bar along Z); else across the other way.
    private static Outline Hex(Stock stock, Point2 centre, Point3 size)
    {
        var upIsX = stock.Along == "y";
        var up = upIsX ? 0 : Math.PI / 2;
        var (high, wide) = upIsX ? (size.X, size.Y) : (size.Y, size.X);
        return Outline.RegularPolygon(centre, stock.FlatsUp ? high : wide, 6, stock.FlatsUp ? up : up + (Math.PI / 2));
    }
}
