using Handwheel.Jobs.Shops;
using Handwheel.Trade.Geometry;

namespace Handwheel.Plan.Cranking;

// What a cutter cuts as a solid of revolution, 0 at its lowest cutting point: straight pieces of profile. For planning only: a ball is taken in chords.
internal sealed class CutterProfile
{
    private readonly List<(double H0, double R0, double H1, double R1)> pieces = [];

    private CutterProfile()
    {
    }

    internal double Most { get; private set; }

    internal double Top { get; private set; }

    internal static CutterProfile Of(Cutter cutter)
    {
        var p = new CutterProfile();
        var r = cutter.TrueAcross / 2;
        var long_ = Math.Max(cutter.Flute > 0 ? cutter.Flute : cutter.Out, 1);
        switch (cutter.Kind)
        {
            case CutterKind.Drill or CutterKind.SpottingDrill or CutterKind.Countersink or CutterKind.Chamfer or CutterKind.CentreDrill:
                p.Pointed(cutter, r, long_);
                break;
            case CutterKind.Ball:
                p.Nose(r, r, long_);
                break;
            case CutterKind.BullNose:
                p.Nose(r, Math.Min(cutter.CornerRadius, r), long_);
                break;
            case CutterKind.Saw or CutterKind.TSlot or CutterKind.Woodruff:
                p.Add(0, r, Math.Max(cutter.Thick, 1e-3), r);
                break;
            case CutterKind.Dovetail:
                p.Add(0, r, long_, Math.Max(0, r - (long_ * Math.Tan(Math.PI / 2 - Math.Min(cutter.PointAngle, 1.5)))));
                break;
            default:
                p.Add(0, r, long_, r);
                break;
        }

        return p;
    }

    // Greatest radius between two heights above the lowest cutting point; negative where nothing cuts there.
    internal double Greatest(double low, double high)
    {
        var best = -1.0;
        foreach (var (h0, r0, h1, r1) in pieces)
        {
            double a = Math.Max(low, h0), b = Math.Min(high, h1);
            if (a <= b)
            {
                best = Math.Max(best, Math.Max(At(h0, r0, h1, r1, a), At(h0, r0, h1, r1, b)));
            }
        }

        return best;
    }

    private static double At(double h0, double r0, double h1, double r1, double h) => h1 - h0 < 1e-12 ? Math.Max(r0, r1) : r0 + ((r1 - r0) * (h - h0) / (h1 - h0));

    private void Pointed(Cutter cutter, double r, double length)
    {
        var angle = cutter.PointAngle > 0 ? cutter.PointAngle : 118 * Math.PI / 180;
        var tip = Math.Min(cutter.Tip / 2, r);
        var h = 0.0;
        if (cutter.Kind == CutterKind.CentreDrill && tip > 0)
        {
            h = 2 * tip;
            Add(0, tip, h, tip);
        }

        var rise = Point.Depth(2 * r, angle, 2 * tip);
        Add(h, tip, h + rise, r);
        Add(h + rise, r, Math.Max(h + rise, length), r);
    }

    private void Nose(double r, double corner, double length)
    {
        const int Chords = 24;
        for (var i = 0; i < Chords; i++)
        {
            double a = i * Math.PI / 2 / Chords, b = (i + 1) * Math.PI / 2 / Chords;
            Add(corner * (1 - Math.Cos(a)), r - corner + (corner * Math.Sin(a)), corner * (1 - Math.Cos(b)), r - corner + (corner * Math.Sin(b)));
        }

        Add(corner, r, Math.Max(corner, length), r);
    }

    private void Add(double h0, double r0, double h1, double r1)
    {
        pieces.Add((h0, r0, h1, r1));
        Most = Math.Max(Most, Math.Max(r0, r1));
        Top = Math.Max(Top, h1);
    }
}
