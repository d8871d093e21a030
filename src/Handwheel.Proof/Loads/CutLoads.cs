using System.Globalization;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Proof.Questions;
using Handwheel.Quantities;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Questions;
using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;
using CutMetal = Handwheel.Trade.Metals.Metal;
using Station = Handwheel.Proof.Questions.Station;

namespace Handwheel.Proof.Loads;

/// <summary>
/// The forces of every cutting stroke, from the metal that really stands before its cutter. Each stroke is looked at coarsely; <see cref="Closely"/> has the
/// engine measure one again. Kienzle&#39;s specific force with the metal&#39;s constants: within a third for a sharp cutter, half as much again for a dull one.
/// </summary>
internal sealed class CutLoads
{
    // What is thinner than this before a cutter is what rounding leaves, millimetres.
    private const double Little = 0.01;

    // A right-hand helix of 30 degrees lifts with about half of the side force (common practice; tan 30 deg = 0.58 of the tangential force).
    private const double Lift = 0.5;

    // Helix of an end mill where the shop does not say, degrees (common practice, no source).
    private const double Helix = 30;

    private const int Angles = 12;

    private readonly Dictionary<Move, double> speeds = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<int, CutLoad> byStroke = [];

    private CutLoads(Subject subject, CutMetal metal, bool known)
    {
        (Metal, Known) = (metal, known);
        Speeds(subject.Course);
        foreach (var stroke in subject.Trace.Strokes.Where(s => s is { Cutting: true, Move: not null, Shape: not null, Cutter: not null }))
        {
            if (Coarse(stroke) is { } load)
            {
                byStroke.Add(stroke.Index, load);
            }
        }
    }

    /// <summary>The metal.</summary>
    public CutMetal Metal { get; }

    /// <summary>Whether the job&#39;s metal is one of the reference; else mild steel stands for it.</summary>
    public bool Known { get; }

    /// <summary>Every stroke that cuts, in order.</summary>
    public IEnumerable<CutLoad> All => byStroke.Values.OrderBy(l => l.Stroke.Index);

    /// <summary>The loads of a subject; null where its stock names no metal.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>The loads.</returns>
    public static CutLoads? Of(Subject subject)
    {
        if (subject.Stock.Metal.Length == 0)
        {
            return null;
        }

        var known = MetalTable.FindSaid(subject.Stock.Metal);
        return new CutLoads(subject, known ?? MetalTable.Find("mild steel")!, known is not null);
    }

    /// <summary>The load of a stroke as first looked at; null where it cuts nothing.</summary>
    /// <param name="stroke">The stroke.</param>
    /// <returns>The load.</returns>
    public CutLoad? Find(Stroke stroke) => byStroke.GetValueOrDefault(stroke.Index);

    /// <summary>A load with the engagement measured by the engine.</summary>
    /// <param name="load">The load as first looked at.</param>
    /// <returns>The load; a plunge as it was.</returns>
    public CutLoad Closely(CutLoad load)
    {
        if (load.Plunges)
        {
            return load;
        }

        CutLoad? worst = null;
        foreach (var leg in load.Stroke.Legs.Where(l => !l.IsAlongZ).OrderByDescending(l => l.Path.Length).Take(3))
        {
            var cut = new SweptCut(load.Stroke.Shape!, leg.Path, leg.ToPart);
            foreach (var s in Engagement.Along(load.Stroke.Before, cut, 3).Stations.Where(s => s is { Depth: > Little, Width: > Little }))
            {
                var closer = Milled(load.Stroke, leg.ToPart.Apply(s.Place), s.Depth, s.Width);
                worst = worst is null || (closer?.SideN ?? 0) > worst.SideN ? closer : worst;
            }
        }

        return worst is null ? load : worst;
    }

    /// <summary>The heaviest load of a stroke as it comes out of the metal, where less than a section is still uncut before it.</summary>
    /// <param name="stroke">The stroke.</param>
    /// <param name="section">That section, mm2: what then holds more than the uncut metal does.</param>
    /// <returns>The load; null where its last piece cuts nothing.</returns>
    public CutLoad? LastBite(Stroke stroke, double section)
    {
        const int stations = 64;
        if (stroke.Legs.LastOrDefault(l => !l.IsAlongZ) is not { } leg || !byStroke.ContainsKey(stroke.Index))
        {
            return null;
        }

        CutLoad? worst = null;
        var uncut = 0.0;
        for (var i = stations - 1; i >= 0 && uncut <= section; i--)
        {
            var share = (i + 0.5) / stations;
            if (AtStation(stroke, new Station(leg, leg.Path.At(share), leg.Path.DirectionAt(share))) is { } load)
            {
                worst = worst is null || load.SideN > worst.SideN ? load : worst;
                uncut += load.Width * leg.Path.Length / stations;
            }
        }

        return worst;
    }

    /// <summary>The same cut as if it were no wider: what of its force falls on metal that near beside it.</summary>
    /// <param name="load">The load.</param>
    /// <param name="width">The width, mm.</param>
    /// <returns>The load.</returns>
    public CutLoad Narrowed(CutLoad load, double width) => Milled(load.Stroke, load.At, load.Depth, Math.Min(load.Width, width)) ?? load;

    /// <summary>The metal in words, and that it was taken for another where it is not known.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>The words.</returns>
    public string Told(Subject subject) => Known ? Metal.Name : $"{Metal.Name}, in place of '{subject.Stock.Metal}', which the reference does not have";

    /// <summary>A force in whole newtons; in an inch job in pounds with the newtons beside.</summary>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="force">N.</param>
    /// <returns>The text.</returns>
    public static string Newtons(LengthUnit unit, double force)
    {
        var told = string.Create(CultureInfo.InvariantCulture, $"{(force < 20 ? Math.Round(force, 1) : Math.Round(force)):0.#} N");
        return unit == LengthUnit.Inch ? $"{ThreeFigures.Of(ForceText.Pounds(force))} lbf ({told})" : told;
    }

    private void Speeds(Course course)
    {
        foreach (var stage in course.Stages)
        {
            var rpm = 0.0;
            foreach (var e in stage.Steps.SelectMany(s => s.Events))
            {
                rpm = e switch { CutterIn put => put.Rpm, HeadOpened head => head.Rpm, _ => rpm };
                if (e is Move move)
                {
                    speeds[move] = rpm;
                }
            }
        }
    }

    private (double Rpm, double Feed) Paced(Stroke stroke) => (speeds.GetValueOrDefault(stroke.Move!), stroke.Move!.Feed);

    private CutLoad? Coarse(Stroke stroke)
    {
        var (rpm, feed) = Paced(stroke);
        if (!(rpm > 0) || !(feed > 0))
        {
            return null;
        }

        CutLoad? worst = null;
        foreach (var leg in stroke.Legs)
        {
            var load = leg.IsAlongZ ? Plunged(stroke, leg) : Along(stroke, leg);
            worst = load is not null && (worst is null || load.SideN + load.AlongN > worst.SideN + worst.AlongN) ? load : worst;
        }

        return worst;
    }

    // The rim before the cutter, at a few places of the leg.
    private CutLoad? Along(Stroke stroke, Leg leg)
    {
        CutLoad? worst = null;
        foreach (var station in Station.Along([leg], 4 * stroke.Shape!.GreatestRadius, 4))
        {
            var load = AtStation(stroke, station);
            worst = load is not null && (worst is null || load.SideN > worst.SideN) ? load : worst;
        }

        return worst;
    }

    private CutLoad? AtStation(Stroke stroke, Station station)
    {
        var r = stroke.Shape!.GreatestRadius;
        double depth = 0, left = double.NegativeInfinity, right = double.PositiveInfinity, low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (var piece in stroke.Shape.Pieces.Where(p => p.Cuts && Math.Max(p.Radius0, p.Radius1) > 0.9 * r))
        {
            (low, high) = (Math.Min(low, piece.Z0), Math.Max(high, piece.Z1));
        }

        for (var i = 0; i < 2 * Angles; i++)
        {
            var side = ((((i + 0.5) / (2 * Angles)) - 0.5) * Math.PI) + 1e-4;
            var height = Within(stroke, station.Upright(r * 0.9999 * Math.Cos(side), r * 0.9999 * Math.Sin(side)), low, high);
            if (height > Little)
            {
                depth = Math.Max(depth, height);
                left = Math.Max(left, Math.Sin(side + (Math.PI / 4 / Angles)));
                right = Math.Min(right, Math.Sin(side - (Math.PI / 4 / Angles)));
            }
        }

        return depth > 0 ? Milled(stroke, station.Leg.ToPart.Apply(station.At), depth, Math.Min(2 * r, r * (left - right))) : null;
    }

    private static double Within(Stroke stroke, Line3 line, double low, double high)
    {
        var length = 0.0;
        foreach (var span in stroke.Before.Sound(line))
        {
            length += Math.Max(0, Math.Min(span.To, high) - Math.Max(span.From, low));
        }

        return length;
    }

    private CutLoad? Milled(Stroke stroke, Point3 at, double depth, double width)
    {
        var (rpm, feed) = Paced(stroke);
        var teeth = Teeth(stroke.Cutter!);
        var across = 2 * stroke.Shape!.GreatestRadius;
        if (width < Little || depth < Little)
        {
            return null;
        }

        var chip = feed / rpm / teeth;
        var force = Kienzle.Milling(Metal.Kc11, Metal.Mc, across, depth, Math.Min(width, across), chip, teeth, rpm);

        // Straight teeth meet the whole depth at once; a helix only a part of it, and never less than the mean.
        var helix = stroke.Cutter!.Kind is CutterKind.EndMill or CutterKind.BullNose or CutterKind.Ball ? Helix : 0;
        var side = Math.Max(force.SideForceN * HelixCut.Share(across, depth, force.EngagementDeg, helix), force.MeanForceN * HelixCut.Ripple);
        return new CutLoad
        {
            Stroke = stroke,
            At = at,
            Depth = depth,
            Width = Math.Min(width, across),
            Chip = chip,
            SideN = side,
            AlongN = stroke.Cutter!.Kind is CutterKind.EndMill or CutterKind.Ball or CutterKind.BullNose ? Lift * side : 0,
            TorqueNm = force.PowerKw * 60_000 / (2 * Math.PI * rpm),
            PowerKw = force.PowerKw,
        };
    }

    // Going down: the part of each edge that meets metal, seen along the axis.
    private CutLoad? Plunged(Stroke stroke, Leg leg)
    {
        if (leg.Path.To.Z >= leg.Path.From.Z)
        {
            return null;
        }

        const int rings = 8, around = 8;
        var (shape, cutter) = (stroke.Shape!, stroke.Cutter!);
        double r = shape.GreatestRadius, width = 0, moment = 0, centre = 0;
        for (var i = 0; i < rings; i++)
        {
            var radius = r * (i + 0.5) / rings;
            var share = 0.0;
            for (var j = 0; j < around; j++)
            {
                var (s, c) = Math.SinCos(((j + 0.3) * 2 * Math.PI / around) + i);
                share += Meets(stroke, leg, radius * c, radius * s, Underside(shape, radius)) / (double)around;
            }

            width += share * r / rings;
            moment += share * radius * r / rings;
            centre = i == 0 ? share : centre;
        }

        if (cutter.Kind == CutterKind.Tap)
        {
            return Tapped(stroke, leg);
        }

        return width < Little ? null : Drilled(stroke, leg, width, moment, centre > 0.5);
    }

    private CutLoad Drilled(Stroke stroke, Leg leg, double width, double moment, bool fromSolid)
    {
        var (rpm, feed) = Paced(stroke);
        var cutter = stroke.Cutter!;
        double turn = feed / rpm, teeth = cutter.Kind is CutterKind.Drill or CutterKind.SpottingDrill or CutterKind.CentreDrill ? 2 : Teeth(cutter);
        var point = cutter.Kind is CutterKind.Drill or CutterKind.SpottingDrill or CutterKind.CentreDrill or CutterKind.Countersink
            ? cutter.PointAngle > 0 ? cutter.PointAngle : CutterShapes.UsualPoint
            : Math.PI;
        var sine = Math.Sin(point / 2);
        var specific = Kienzle.Specific(Metal.Kc11, Metal.Mc, turn / teeth * sine);
        var edge = specific * turn * width * sine;
        var torque = specific * turn * moment / 1000;
        return new CutLoad
        {
            Stroke = stroke,
            At = leg.ToPart.Apply(leg.Path.To),
            Plunges = true,
            Depth = width,
            Chip = turn,

            // Half at the lips, and as much again at the chisel edge where that cuts.
            AlongN = fromSolid ? edge : edge / 2,
            TorqueNm = torque,
            PowerKw = torque * rpm * 2 * Math.PI / 60_000,
        };
    }

    private CutLoad Tapped(Stroke stroke, Leg leg)
    {
        var cutter = stroke.Cutter!;
        return new CutLoad
        {
            Stroke = stroke,
            At = leg.ToPart.Apply(leg.Path.To),
            Plunges = true,
            Chip = cutter.Pitch,
            TorqueNm = cutter.Pitch > 0 ? Kienzle.TapTorqueNm(Metal.Kc11, Metal.Mc, cutter.Across, cutter.Pitch) : 0,
        };
    }

    private static int Meets(Stroke stroke, Leg leg, double x, double y, double under)
    {
        if (!double.IsFinite(under))
        {
            return 0;
        }

        var line = new Line3(new Point3(leg.Path.To.X + x, leg.Path.To.Y + y, 0), Vector3.UnitZ).Placed(leg.ToPart);
        var (low, high) = (leg.Path.To.Z + under, leg.Path.From.Z + under);
        foreach (var span in stroke.Before.Sound(line))
        {
            if (Math.Min(span.To, high) - Math.Max(span.From, low) > Little)
            {
                return 1;
            }
        }

        return 0;
    }

    // The lowest height at which the cutter's edge reaches a distance from its axis.
    private static double Underside(Solids.Cutters.CutterShape shape, double radius)
    {
        var least = double.PositiveInfinity;
        foreach (var piece in shape.Pieces.Where(p => p.Cuts && Math.Max(p.Radius0, p.Radius1) >= radius && Math.Min(p.Inner0, p.Inner1) <= radius))
        {
            var share = piece.Radius0 >= radius || piece.Radius1 <= piece.Radius0 ? 0 : (radius - piece.Radius0) / (piece.Radius1 - piece.Radius0);
            least = Math.Min(least, piece.Z0 + (share * (piece.Z1 - piece.Z0)));
        }

        return least;
    }

    private static int Teeth(Cutter cutter) => cutter.Kind switch
    {
        CutterKind.Saw when cutter.Teeth <= 2 => 40,
        CutterKind.BoringBar or CutterKind.FlyCutter => 1,
        _ => Math.Max(1, cutter.Teeth),
    };
}
