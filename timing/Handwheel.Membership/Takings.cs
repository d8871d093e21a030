namespace Handwheel.Membership;

/// <summary>Something that takes metal away.</summary>
/// <param name="Owner">The number of the event that did it.</param>
/// <param name="Takes">Whether it takes a place, made larger or smaller by a little.</param>
public sealed record Taking(int Owner, Func<Vec, double, bool> Takes);

/// <summary>The bare stock: a bar, a round or a hexagon, as it lies in the part frame.</summary>
/// <param name="Form"><c>bar</c>, <c>round</c> or <c>hex</c>.</param>
/// <param name="Least">Lowest corner of its box.</param>
/// <param name="Size">Sizes of its box.</param>
/// <param name="Along">The axis it runs along.</param>
/// <param name="FlatsUp">A hexagon on its flats.</param>
/// <param name="Bore">Bore of a tube.</param>
public sealed record StockFacts(string Form, Vec Least, Vec Size, char Along, bool FlatsUp, double Bore)
{
    public bool Holds(Vec p, double room)
    {
        var q = p - Least;
        if (Out(q.X, Size.X, room) || Out(q.Y, Size.Y, room) || Out(q.Z, Size.Z, room))
        {
            return false;
        }

        if (Form == "bar")
        {
            return true;
        }

        // Seen along its axis: across it, and up it.
        var c = q - (Size * 0.5);
        var (u, v, high, wide) = Along switch
        {
            'x' => (c.Y, c.Z, Size.Z, Size.Y),
            'y' => (c.X, c.Z, Size.Z, Size.X),
            _ => (c.X, c.Y, Size.Y, Size.X),
        };
        var r = Math.Sqrt((u * u) + (v * v));
        if (Bore > 0 && r < (Bore / 2) - room)
        {
            return false;
        }

        if (Form == "round")
        {
            return r <= (wide / 2) + room;
        }

        var flats = (FlatsUp ? high : wide) / 2;
        var (a, b) = FlatsUp ? (v, u) : (u, v);
        var slope = (0.5 * Math.Abs(a)) + (Math.Sqrt(3) / 2 * Math.Abs(b));
        return Math.Abs(a) <= flats + room && slope <= flats + room;
    }

    private static bool Out(double at, double size, double room) => at < -room || at > size + room;
}
