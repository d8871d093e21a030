using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Loads;

/// <summary>
/// Where what presses on the work bears on it: each face of a jaw or clamp, as far as the work reaches, on a net of places and from the nearest of them on to
/// the nearest metal, so that a line or an edge between two places of the net is met too; within a chuck&#39;s jaws all round.
/// </summary>
internal static class Bearings
{
    private const int Net = 20;

    /// <summary>Looks.</summary>
    /// <param name="facts">What presses.</param>
    /// <param name="stage">The holding.</param>
    /// <param name="metal">The metal as it begins, part frame.</param>
    /// <returns>Where it bears.</returns>
    public static Bearing Of(FixtureFacts facts, FollowedStage stage, Metal metal)
    {
        var toPart = stage.Frame!.WorkToPart;
        if (facts.Bore > 0)
        {
            List<Point3> round = [.. Inside(facts).Where(p => metal.Contains(toPart.Apply(p)))];
            return new(facts, round, round.Count == 0 ? ContactKind.None : ContactKind.Face, null, false, 0);
        }

        var work = metal.Bounds.Placed(stage.Frame.PartToWork);
        List<Point3> places = [];
        Bearing? best = null;
        foreach (var (face, top) in Faces(facts, work, stage.Frame.Lies && facts.Least.Z < stage.Facts.Setup!.Rotary!.Z, metal, toPart))
        {
            var (borne, kind, nearest, at, overhung) = face.Look();
            places.AddRange(borne);
            best = kind != ContactKind.None && best is not { Kind: ContactKind.Face } ? new(facts, places, kind, nearest, overhung, top - at) : best;
        }

        return best ?? new(facts, places, ContactKind.None, null, false, 0);
    }

    // The faces of a block, each cut down to where the work can be, and how high it goes.
    private static IEnumerable<(JawFace Face, double High)> Faces(FixtureFacts f, Box3 work, bool isBelow, Metal metal, Pose toPart)
    {
        var box = new Box3(new(f.Least.X, f.Least.Y, f.Least.Z), new(f.Most.X, f.Most.Y, f.Most.Z));
        var both = box.Intersection(work);
        (double X, double Y, double Z) size = (both.Max.X - both.Min.X, both.Max.Y - both.Min.Y, both.Max.Z - both.Min.Z);
        if (size is { X: > 0, Z: > 0 } && f.Least.Y - JawFace.Off <= work.Max.Y && f.Most.Y + JawFace.Off >= work.Min.Y)
        {
            yield return (new(both.Min with { Y = box.Min.Y }, Vector3.UnitX, Vector3.UnitZ, -Vector3.UnitY, (size.X, size.Z), metal, toPart), size.Z);
            yield return (new(both.Min with { Y = box.Max.Y }, Vector3.UnitX, Vector3.UnitZ, Vector3.UnitY, (size.X, size.Z), metal, toPart), size.Z);
        }

        if (size is { Y: > 0, Z: > 0 } && f.Least.X - JawFace.Off <= work.Max.X && f.Most.X + JawFace.Off >= work.Min.X)
        {
            yield return (new(both.Min with { X = box.Min.X }, Vector3.UnitY, Vector3.UnitZ, -Vector3.UnitX, (size.Y, size.Z), metal, toPart), size.Z);
            yield return (new(both.Min with { X = box.Max.X }, Vector3.UnitY, Vector3.UnitZ, Vector3.UnitX, (size.Y, size.Z), metal, toPart), size.Z);
        }

        if (size is { X: > 0, Y: > 0 })
        {
            var (z, outward) = isBelow ? (box.Max.Z, Vector3.UnitZ) : (box.Min.Z, -Vector3.UnitZ);
            yield return (new(both.Min with { Z = z }, Vector3.UnitX, Vector3.UnitY, outward, (size.X, size.Y), metal, toPart), 0);
        }
    }

    // Places just within the bore of what stands all round the work.
    private static IEnumerable<Point3> Inside(FixtureFacts f)
    {
        for (var i = 0; i < Net; i++)
        {
            var (s, c) = Math.SinCos(2 * Math.PI * i / Net);
            for (var j = 0; j < Net; j++)
            {
                var r = (f.Bore / 2) - JawFace.Off;
                yield return new Point3(f.Least.X + (r * c), f.Least.Y + (r * s), f.Least.Z + ((j + 0.5) / Net * (f.Most.Z - f.Least.Z)));
            }
        }
    }
}
