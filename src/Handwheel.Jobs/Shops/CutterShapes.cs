using Handwheel.Solids.Cuts;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Shops;

/// <summary>
/// A shop&#39;s cutters as solids of revolution: edges, neck, shank or arbor, the screw below a saw, then the holder and the spindle&#39;s nose above the
/// length it stands out. Millimetres; Z 0 at the lowest cutting point. What the shop does not say is filled in as each method states.
/// </summary>
public static class CutterShapes
{
    /// <summary>Included angle of a drill&#39;s point where the shop says none: 118 degrees, the usual point of HSS twist drills (common practice, no source).</summary>
    public const double UsualPoint = 118 * Math.PI / 180;

    /// <summary>How far the solid of the spindle&#39;s nose goes up, mm: past anything that stands on a table.</summary>
    public const double NoseLong = 150;

    private const double RightAngle = Math.PI / 2;

    /// <summary>Whether a cutter is a solid of revolution; a broach is not.</summary>
    /// <param name="cutter">The cutter.</param>
    /// <returns>False for a broach.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cutter"/> is null.</exception>
    public static bool Turns(Cutter cutter)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        return cutter.Kind != CutterKind.Broach;
    }

    /// <summary>The whole cutter with what holds it.</summary>
    /// <param name="cutter">The cutter; its true diameter is used.</param>
    /// <param name="mill">The mill whose nose stands above it; null: no nose.</param>
    /// <returns>The solid of revolution.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cutter"/> is null.</exception>
    /// <exception cref="ArgumentException">The cutter is a broach.</exception>
    public static CutterShape Of(Cutter cutter, Mill? mill)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        var shape = Alone(cutter);
        if (cutter.HolderAcross > 0 && cutter.HolderLong > 0)
        {
            shape = shape.WithHolder(cutter.HolderAcross, cutter.HolderLong);
        }

        return mill is { NoseAcross: > 0 } ? shape.WithHolder(mill.NoseAcross, NoseLong, CutterPart.Nose) : shape;
    }

    /// <summary>A boring bar in its head, set to a diameter: the bar stays as thick as it is, its tooth takes no more than the bar&#39;s own size from the wall inwards.</summary>
    /// <param name="cutter">The cutter as the shop has it.</param>
    /// <param name="across">The diameter set, mm; 0 or less: left as it is.</param>
    /// <returns>The cutter as it then turns; any other kind unchanged.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cutter"/> is null.</exception>
    public static Cutter SetTo(Cutter cutter, double across)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        return cutter.Kind == CutterKind.BoringBar && across > 0
            ? cutter with
            {
                TrueAcross = across,
                Arbor = cutter.Arbor > 0 ? cutter.Arbor : Math.Min(0.7 * cutter.Across, across),
                Tip = Math.Max(0, across - cutter.Across),
            }
            : cutter;
    }

    /// <summary>The outline a broach or punch pushes along its axis, at its turn.</summary>
    /// <param name="cutter">A broach.</param>
    /// <param name="at">Its axis in plan.</param>
    /// <param name="turn">Direction of one side&#39;s normal from plan X, radians.</param>
    /// <returns>A regular polygon of its across flats, or a rectangle where it has another side.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cutter"/> is null.</exception>
    /// <exception cref="ArgumentException">The cutter is no broach.</exception>
    public static Outline BroachOutline(Cutter cutter, Point2 at, double turn)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        if (cutter.Kind != CutterKind.Broach)
        {
            throw new ArgumentException($"{cutter.Name} is no broach.", nameof(cutter));
        }

        return cutter.OtherSide > 0
            ? Outline.Rectangle(at, cutter.TrueAcross, cutter.OtherSide, turn)
            : Outline.RegularPolygon(at, cutter.TrueAcross, cutter.Sides >= 3 ? cutter.Sides : 4, turn);
    }

    /// <summary>The metal a broach takes as the quill pushes it down.</summary>
    /// <param name="cutter">A broach.</param>
    /// <param name="from">Where it stands before, its end; the frame&#39;s Z along the spindle.</param>
    /// <param name="to">The height it is pushed to, mm; above <paramref name="from"/> it takes nothing.</param>
    /// <param name="turn">Direction of one side&#39;s normal from that frame&#39;s X, radians.</param>
    /// <returns>The prism; null where it is not pushed down.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cutter"/> is null.</exception>
    /// <exception cref="ArgumentException">The cutter is no broach.</exception>
    public static ISolid? Push(Cutter cutter, Point3 from, double to, double turn) => from.Z - to < 1e-9
        ? null
        : new BroachCut(BroachOutline(cutter, default, 0), to, from.Z, turn, Pose.Translation(new(from.X, from.Y, 0)));

    private static CutterShape Alone(Cutter c)
    {
        var (d, shank) = (c.TrueAcross, ShankOf(c));
        var flute = FluteOf(c);
        var outLong = Math.Max(c.Out, flute);
        return c.Kind switch
        {
            CutterKind.EndMill => CutterShape.EndMill(d, flute, NeckOr(c, shank), outLong, c.CutsToCentre),
            CutterKind.Ball => CutterShape.BallNose(d, Math.Max(flute, d / 2), NeckOr(c, shank), outLong),
            CutterKind.BullNose => CutterShape.BullNose(
                d, Math.Clamp(c.CornerRadius, 1e-6, d / 2), Math.Max(flute, c.CornerRadius), NeckOr(c, shank), outLong, c.CutsToCentre),
            CutterKind.Drill => CutterShape.Drill(d, PointOr(c, UsualPoint), flute, shank, outLong),
            CutterKind.SpottingDrill => CutterShape.Drill(d, PointOr(c, RightAngle), flute, shank, outLong),
            CutterKind.CentreDrill => CentreDrill(c, outLong),
            CutterKind.Reamer => CutterShape.Reamer(d, Math.Min(c.Lead, flute / 2), LeadLess(c), flute, shank, outLong),
            CutterKind.Tap => Tap(c, outLong),
            _ => Other(c, d, shank, flute, outLong),
        };
    }

    private static CutterShape Other(Cutter c, double d, double shank, double flute, double outLong)
    {
        var thick = c.Thick > 0 ? c.Thick : Math.Min(1, flute);
        var neck = c.Arbor > 0 ? c.Arbor : Math.Min(shank, d);
        return c.Kind switch
        {
            CutterKind.Counterbore => CutterShape.Counterbore(d, c.Tip, c.Tip > 0 ? (c.Lead > 0 ? c.Lead : c.Tip) : 0, flute, shank, outLong),
            CutterKind.Countersink or CutterKind.Chamfer => CutterShape.Countersink(d, PointOr(c, RightAngle), c.Tip, shank, outLong, flute),
            CutterKind.Dovetail => Dovetail(c, outLong),
            CutterKind.Saw => CutterShape.Saw(d, thick, neck, Math.Max(c.Out - thick, 1), c.ScrewBelow, c.ScrewAcross > 0 ? c.ScrewAcross : neck),
            CutterKind.TSlot or CutterKind.Woodruff => CutterShape.TSlot(d, thick, neck, Math.Max(outLong - thick, 1), shank, outLong),
            CutterKind.BoringBar => CutterShape.BoringBar(d, Math.Min(c.Arbor > 0 ? c.Arbor : 0.7 * d, d), thick, outLong, Math.Clamp(c.Tip, 0, 0.9 * d)),
            CutterKind.FlyCutter => CutterShape.FlyCutter(d, Math.Clamp(c.Tip, 0, 0.9 * d), thick, Math.Min(c.Arbor > 0 ? c.Arbor : 0.8 * d, d), Math.Max(outLong - thick, 1)),
            _ => throw new ArgumentException($"{c.Name} is no solid of revolution.", nameof(c)),
        };
    }

    // A flank of 60 degrees where the shop gives none; never higher than leaves a tenth of the diameter at its top.
    private static CutterShape Dovetail(Cutter c, double outLong)
    {
        var (d, angle) = (c.TrueAcross, PointOr(c, Math.PI / 3));
        var most = angle < RightAngle ? 0.45 * d * Math.Tan(angle) : outLong;
        var high = Math.Min(c.Thick > 0 ? c.Thick : FluteOf(c), most);
        var top = angle < RightAngle ? d - (2 * high / Math.Tan(angle)) : d;
        return CutterShape.Dovetail(d, angle, high, c.Arbor > 0 ? c.Arbor : Math.Min(ShankOf(c), top), outLong);
    }

    // Pilot 1.2 times its diameter long where the shop says nothing, cone of 60 degrees (ISO 866, form A, from memory).
    private static CutterShape CentreDrill(Cutter c, double outLong)
    {
        var pilot = c.Tip > 0 ? c.Tip : 0.4 * c.TrueAcross;
        var pilotLong = Math.Max(c.Lead > 0 ? c.Lead : 1.2 * pilot, pilot / 2 / Math.Tan(UsualPoint / 2) * 1.01);
        return CutterShape.CentreDrill(pilot, pilotLong, UsualPoint, PointOr(c, Math.PI / 3), c.TrueAcross, outLong);
    }

    // A tap removes nothing: it stands for its core, D - 1.0825 P (ISO 724).
    private static CutterShape Tap(Cutter c, double outLong)
    {
        var core = Math.Max(c.TrueAcross - (1.0825 * c.Pitch), 0.1 * c.TrueAcross);
        return CutterShape.Of([ProfilePiece.Straight(0, core / 2, outLong, core / 2, CutterPart.Neck, cuts: false)], cutsToCentre: false);
    }

    // A lead of 45 degrees, never more than 0.15 of the diameter a side (common practice, no source).
    private static double LeadLess(Cutter c) => Math.Min(Math.Min(c.Lead, FluteOf(c) / 2), 0.15 * c.TrueAcross);

    private static double ShankOf(Cutter c) => c.Shank > 0 ? c.Shank : c.TrueAcross;

    private static double NeckOr(Cutter c, double shank) => c.Arbor > 0 ? c.Arbor : shank;

    private static double PointOr(Cutter c, double usual) => c.PointAngle is > 0 and < Math.PI ? c.PointAngle : usual;

    // Where the shop gives no flute: the whole length that stands out; where it gives neither, three diameters.
    private static double FluteOf(Cutter c)
    {
        var most = c.Out > 0 ? c.Out : 3 * c.TrueAcross;
        return c.Flute > 0 ? Math.Min(c.Flute, most) : most;
    }
}
