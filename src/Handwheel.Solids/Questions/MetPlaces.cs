using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

// The places met from one point, nearest first: a dozen, no more than four of one face, one a plane.
internal sealed class MetPlaces
{
    private const int Kept = 12;
    private const int OfOneFace = 4;
    private readonly List<MetPlace> all = [];
    private Point3 from;

    internal IReadOnlyList<MetPlace> All => all;

    // How many planes were given a name.
    internal int Names { get; private set; }

    internal void Start(Point3 point)
    {
        all.Clear();
        from = point;
        Names = 0;
    }

    // Whether a place is near enough to be kept.
    internal bool Takes(Point3 place) => all.Count < Kept || from.DistanceTo(place) < all[^1].Distance;

    internal void Add(Point3 place, Vector3 normal, SurfaceId surface)
    {
        var away = from.DistanceTo(place);
        var name = Names;
        int alike = 0, farthest = -1;
        for (var i = 0; i < all.Count; i++)
        {
            if ((all[i].Normal - normal).Length < 1e-9 && Math.Abs((place - all[i].Place).Dot(normal)) < 1e-9)
            {
                // The same plane again: the nearer place is kept, under the same name.
                if (all[i].Distance <= away)
                {
                    return;
                }

                name = all[i].Name;
                all.RemoveAt(i--);
                continue;
            }

            (alike, farthest) = all[i].Surface == surface ? (alike + 1, i) : (alike, farthest);
        }

        if (alike >= OfOneFace && away >= all[farthest].Distance)
        {
            return;
        }

        if (alike >= OfOneFace)
        {
            all.RemoveAt(farthest);
        }
        else if (all.Count == Kept)
        {
            all.RemoveAt(Kept - 1);
        }

        Names += name == Names ? 1 : 0;
        var at = all.FindIndex(h => h.Distance > away);
        all.Insert(at < 0 ? all.Count : at, new(place, normal, away, surface, name));
    }
}
