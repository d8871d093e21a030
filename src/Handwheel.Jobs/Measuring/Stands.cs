using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Measuring;

/// <summary>Every axis and face of a feature that a distance along a direction may run to.</summary>
internal static class Stands
{
    private const double Parallel = 1e-9;

    /// <summary>All of them.</summary>
    /// <param name="feature">The feature.</param>
    /// <param name="probe">Its probe.</param>
    /// <param name="along">Unit direction, part frame.</param>
    /// <returns>The axis first, then faces.</returns>
    public static IReadOnlyList<Stand> Of(Feature feature, FeatureProbe probe, Vector3 along)
    {
        var inView = FeatureView.InView(feature.View, new Point3(along.X, along.Y, along.Z));
        var plan = new Point2(inView.X, inView.Y);
        var stands = new List<Stand>();
        if (Math.Abs(inView.Z) > 1 - Parallel)
        {
            stands.Add(Level(probe, probe.Top, feature.IsCut ? null : true) with { Facing = 1 });
            stands.Add(Level(probe, probe.Bottom, feature.IsCut ? true : false) with { Facing = -1 });
            return stands;
        }

        if (Axis(probe, plan) is { } axis)
        {
            stands.Add(axis);
        }

        foreach (var plane in probe.Faces.Planes)
        {
            var facing = (plane.Normal.X * plan.X) + (plane.Normal.Y * plan.Y);
            if (Math.Abs(facing) > 1 - 1e-6)
            {
                var tally = new Tally();
                probe.Plane(plane, tally);
                stands.Add(Placed((plane.Middle.X * plan.X) + (plane.Middle.Y * plan.Y), Math.Sign(facing), tally));
            }
        }

        stands.AddRange(Outermost(probe, plan));
        return stands;
    }

    // The outermost places of round sides, where no straight side looks that way.
    private static IEnumerable<Stand> Outermost(FeatureProbe probe, Point2 plan)
    {
        foreach (var facing in new[] { 1, -1 })
        {
            var way = plan * facing;
            if (probe.Faces.Planes.Any(p => p.Normal.Dot(way) > 1 - 1e-6))
            {
                continue;
            }

            foreach (var round in probe.Faces.Rounds.Where(r => !r.Inner).OrderByDescending(r => r.Centre.Dot(way) + r.Radius))
            {
                var tally = new Tally();
                probe.Outermost(round, way, tally);
                if (tally.Any || tally.Gone)
                {
                    yield return Placed(facing * (round.Centre.Dot(way) + round.Radius), facing, tally);
                    break;
                }
            }
        }
    }

    /// <summary>Where a feature&#39;s axis stands along a direction in its plan.</summary>
    /// <param name="probe">The feature&#39;s probe.</param>
    /// <param name="plan">The direction.</param>
    /// <returns>The axis; null where it has none that can be found.</returns>
    public static Stand? Axis(FeatureProbe probe, Point2 plan)
    {
        double Along(Point2 p) => (p.X * plan.X) + (p.Y * plan.Y);
        var tally = new Tally();
        if (probe.Faces.Planes.Count == 0 && probe.Faces.Rounds.Count > 0)
        {
            foreach (var circle in probe.Circles(probe.Faces.Rounds[0], tally))
            {
                tally.Add(Along(circle.Centre));
            }

            return tally.Any || tally.Gone ? new Stand(Along(probe.Faces.Rounds[0].Centre), tally, IsAxis: true, 0) : null;
        }

        return Middle(probe, plan, tally) ?? RoundEnds(probe, Along);
    }

    // The middle between the two sides that face along the direction.
    private static Stand? Middle(FeatureProbe probe, Point2 plan, Tally tally)
    {
        var facing = probe.Faces.Planes.Where(p => Math.Abs(Math.Abs((p.Normal.X * plan.X) + (p.Normal.Y * plan.Y)) - 1) < 1e-6).ToList();
        var ahead = facing.Where(p => (p.Normal.X * plan.X) + (p.Normal.Y * plan.Y) > 0).ToList();
        var behind = facing.Except(ahead).ToList();
        if (ahead.Count == 0 || behind.Count == 0)
        {
            return null;
        }

        Tally far = new(), near = new();
        probe.Plane(ahead[0], far);
        probe.Plane(behind[0], near);
        tally.Rests(far);
        tally.Rests(near);
        double At(PlaneFace p) => (p.Middle.X * plan.X) + (p.Middle.Y * plan.Y);
        var aimed = (At(ahead[0]) + At(behind[0])) / 2;
        if (far.Any && near.Any)
        {
            tally.Add(aimed + ((far.Least - near.Greatest) / 2));
            tally.Add(aimed + ((far.Greatest - near.Least) / 2));
        }

        return new Stand(aimed, tally, IsAxis: true, 0);
    }

    // A slot along its length: the middle of the circles at its ends.
    private static Stand? RoundEnds(FeatureProbe probe, Func<Point2, double> along)
    {
        if (probe.Faces.Rounds.Count < 2)
        {
            return null;
        }

        var tally = new Tally();
        var first = probe.Circles(probe.Faces.Rounds[0], tally);
        var second = probe.Circles(probe.Faces.Rounds[1], tally);
        for (var i = 0; i < Math.Min(first.Count, second.Count); i++)
        {
            tally.Add((along(first[i].Centre) + along(second[i].Centre)) / 2);
        }

        return new Stand((along(probe.Faces.Rounds[0].Centre) + along(probe.Faces.Rounds[1].Centre)) / 2, tally, IsAxis: true, 0);
    }

    private static Stand Level(FeatureProbe probe, double depth, bool? metalBelow)
    {
        var tally = new Tally();
        probe.Level(depth, metalBelow ?? true, tally);
        if (!tally.Any && !tally.Gone)
        {
            tally = new Tally();
            probe.Level(depth, !(metalBelow ?? true), tally);
        }

        return new Stand(depth, tally, IsAxis: false, 0);
    }

    private static Stand Placed(double aimed, int sign, Tally offsets)
    {
        var tally = new Tally();
        tally.Rests(offsets);
        if (offsets.Any)
        {
            tally.Add(aimed + (sign * offsets.Least));
            tally.Add(aimed + (sign * offsets.Greatest));
        }

        return new Stand(aimed, tally, IsAxis: false, sign);
    }
}
