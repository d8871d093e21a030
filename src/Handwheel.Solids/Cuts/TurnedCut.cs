using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Cuts;

/// <summary>
/// The solid a cutter removes while an indexer turns the work about a level axis under it. The frame is fixed to the work: where the indexer turns the
/// work, the cutter goes about the axis the other way. Immutable.
/// </summary>
/// <remarks>
/// Exact, for every line, where the cutter is made of cylinders, rings and balls (a flat-ended or ball-nosed mill, a saw, a fly cutter): solved in planes across the
/// axis. A cone or a rounded corner is cut as a stack of cylinders, and a feed along the axis while it turns in steps; <see cref="ChordBound"/> says how far
/// the answers may then be off, measured along the surface's normal. Faces as of a <see cref="SweptCut"/>.
/// </remarks>
public sealed class TurnedCut : Solid
{
    // More layers in all than this make no better answer, only a slower one: the bound grows instead.
    private const int MostLayers = 32_768;
    private readonly Step[] steps;
    private readonly SweptCut? standing;
    private readonly Pose toPart;
    private readonly Pose toCut;

    private TurnedCut(Setting setting)
    {
        var (cutter, at, axis, turn, feed) = (setting.Cutter, setting.At, setting.Axis, setting.Turn, setting.Feed);
        Demand.Finite(at);
        Demand.Finite(axis);
        Demand.Finite(turn);
        Demand.Finite(feed);
        Demand.Positive(setting.Chord);
        Cutter = cutter;
        Turned = turn;
        Feed = feed;
        IsWhole = setting.Whole;

        // The frame of the cut: X the axis of the turn, the cutter's own axis through X 0.
        toPart = Pose.Translation(new(at.X, axis.Y, axis.Z)).Then(setting.ToPart);
        toCut = toPart.Inverse();
        var place = new Point3(0, at.Y - axis.Y, at.Z - axis.Z);
        if (turn == 0)
        {
            standing = new SweptCut(cutter, CutterPath.Straight(place, place with { X = feed }), toPart, IsWhole);
            steps = [];
            Bounds = standing.Bounds;
            return;
        }

        var layers = new List<Slab>();
        foreach (var (step, off) in (IsWhole ? cutter.Whole : cutter.Cutting).SelectMany(s => s.InSteps(setting.Chord)))
        {
            layers.Add(step);
            ChordBound = Math.Max(ChordBound, off);
        }

        var n = feed == 0 ? 1 : (int)Math.Clamp(Math.Ceiling(Math.Abs(feed) / (2 * setting.Chord)), 1, Math.Max(1, MostLayers / Math.Max(1, layers.Count)));
        ChordBound += Math.Abs(feed) / (2 * n);
        steps = [.. Enumerable.Range(0, n).Select(i => Step.Of(layers, place, Math.Min(turn * i / n, turn * (i + 1) / n), Math.Abs(turn) / n, feed * (i + 0.5) / n))];
        Bounds = steps.Aggregate(Box3.Empty, (b, s) => b.Union(s.Bounds)).Placed(toPart).Grown(1e-9);
    }

    /// <summary>The cutter.</summary>
    public CutterShape Cutter { get; }

    /// <summary>Angle the cutter goes about the axis, seen from the work, radians; positive turns Y to Z about X, or Z to X about Y.</summary>
    public double Turned { get; }

    /// <summary>How far the cutter goes along the axis while it turns, mm.</summary>
    public double Feed { get; }

    /// <summary>Whether the pieces that do not cut are in it too.</summary>
    public bool IsWhole { get; }

    /// <summary>How far the answers may be off, mm: 0 when exact, else the bound of the steps used.</summary>
    public double ChordBound { get; }

    /// <inheritdoc/>
    public override Box3 Bounds { get; }

    /// <inheritdoc/>
    public override int SurfaceCount => 4 * Cutter.Pieces.Count;

    /// <summary>A cutter that goes about an axis parallel to X.</summary>
    /// <param name="cutter">The cutter; its own axis is along Z when the turn begins.</param>
    /// <param name="at">Its lowest cutting point when the turn begins.</param>
    /// <param name="axis">A place on the axis of the turn; its X does not matter.</param>
    /// <param name="turn">Angle, radians, right-handed about +X, of the cutter about the work; a full turn or more closes the ring.</param>
    /// <param name="feed">How far the cutter goes along +X meanwhile, mm.</param>
    /// <param name="toPart">From this frame to the part's; the identity when null.</param>
    /// <param name="whole">False: only the pieces that cut. True: all of them, as for strikes.</param>
    /// <param name="chord">How far steps may be off where no exact form is held, mm.</param>
    /// <exception cref="ArgumentNullException"><paramref name="cutter"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite or absurdly large, or the chord not above 0.</exception>
    public static TurnedCut AboutX(
        CutterShape cutter, Point3 at, Point3 axis, double turn, double feed = 0, Pose? toPart = null, bool whole = false, double chord = 0.002)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        return new(new(cutter, at, axis with { X = at.X }, turn, feed, toPart ?? Pose.Identity, whole, chord));
    }

    /// <summary>A cutter that goes about an axis parallel to Y.</summary>
    /// <param name="cutter">The cutter; its own axis is along Z when the turn begins.</param>
    /// <param name="at">Its lowest cutting point when the turn begins.</param>
    /// <param name="axis">A place on the axis of the turn; its Y does not matter.</param>
    /// <param name="turn">Angle, radians, right-handed about +Y, of the cutter about the work; a full turn or more closes the ring.</param>
    /// <param name="feed">How far the cutter goes along +Y meanwhile, mm.</param>
    /// <param name="toPart">From this frame to the part's; the identity when null.</param>
    /// <param name="whole">False: only the pieces that cut. True: all of them, as for strikes.</param>
    /// <param name="chord">How far steps may be off where no exact form is held, mm.</param>
    /// <exception cref="ArgumentNullException"><paramref name="cutter"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite or absurdly large, or the chord not above 0.</exception>
    public static TurnedCut AboutY(
        CutterShape cutter, Point3 at, Point3 axis, double turn, double feed = 0, Pose? toPart = null, bool whole = false, double chord = 0.002)
    {
        // X of the turned frame is Y of this one.
        var quarter = Pose.TurnAboutZ(Math.PI / 2);
        var back = quarter.Inverse();
        return AboutX(cutter, back.Apply(at), back.Apply(axis), turn, feed, quarter.Then(toPart ?? Pose.Identity), whole, chord);
    }

    /// <summary>What a face of the answers is part of: edge, shank, arbor and so on.</summary>
    /// <param name="surface">A surface that a sounding of this solid named.</param>
    public CutterPart PartAt(SurfaceId surface) => Cutter.Pieces[Math.Clamp(surface.Face / 4, 0, Cutter.Pieces.Count - 1)].Part;

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point)
    {
        if (standing is not null)
        {
            return standing.NormalAt(surface, point);
        }

        var q = toCut.Apply(point);
        var best = (Normal: Vector3.UnitX, Miss: double.PositiveInfinity);
        foreach (var step in steps)
        {
            foreach (var layer in step.Bounds.Grown(1e-6).Contains(q) ? step.Layers : [])
            {
                var at = q.ToVector() - new Vector3(step.Aside, 0, 0);
                if (layer.Piece == surface.Face / 4 && layer.Bounds.Grown(1e-6).Contains(new(at.X, at.Y, at.Z)) && layer.NormalAt(at) is var found && found.Miss < best.Miss)
                {
                    best = found;
                }
            }
        }

        return toPart.ApplyDirection(best.Normal);
    }

    internal override double Distance(Point3 point)
    {
        if (standing is not null)
        {
            return standing.Distance(point);
        }

        var q = toCut.Apply(point);
        var least = double.PositiveInfinity;
        foreach (var step in steps)
        {
            foreach (var layer in step.Layers)
            {
                var at = new Point3(q.X - step.Aside, q.Y, q.Z);
                if (BoxDistance(layer.Bounds, at) < least)
                {
                    least = Math.Min(least, layer.Least(at.ToVector(), Math.Max(1e-4, 0.02 * least)));
                }
            }
        }

        return least > 0 ? Math.Max(0, least - ChordBound) : Math.Min(0, least + ChordBound);
    }

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        if (standing is not null)
        {
            standing.Sound(line, closed, into);
            return;
        }

        var inCut = line.Placed(toCut);
        var start = into.Count;
        foreach (var step in steps)
        {
            if (!Meets(step.Bounds, inCut))
            {
                continue;
            }

            var beside = inCut with { Origin = inCut.Origin - new Vector3(step.Aside, 0, 0) };
            foreach (var layer in step.Layers)
            {
                if (Meets(layer.Bounds, beside))
                {
                    layer.Sound(beside, closed, into);
                }
            }
        }

        into.Normalise(start);
    }

    private static bool Meets(Box3 box, in Line3 line)
    {
        double lo = double.NegativeInfinity, hi = double.PositiveInfinity;
        return box.Clip(line, ref lo, ref hi);
    }

    private sealed record Setting(CutterShape Cutter, Point3 At, Point3 Axis, double Turn, double Feed, Pose ToPart, bool Whole, double Chord);

    // One turn without feed, the cutter a distance along the axis.
    private readonly record struct Step(double Aside, TurnedLayer[] Layers, Box3 Bounds)
    {
        internal static Step Of(List<Slab> slabs, Point3 at, double first, double span, double aside)
        {
            TurnedLayer[] layers = [.. slabs.Select(s => new TurnedLayer(s, at, first, span))];
            var box = layers.Aggregate(Box3.Empty, (b, l) => b.Union(l.Bounds));
            var shift = new Vector3(aside, 0, 0);
            return new(aside, layers, new(box.Min + shift, box.Max + shift));
        }
    }
}
