using CsCheck;
using Handwheel.Draws;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Cases.Tests.Variations;

/// <summary>What no cut may do, whatever the cutter and its path.</summary>
public sealed class CutProperties
{
    private static readonly Gen<double> Place = Gen.Double[-14, 14];

    private static readonly Gen<CutterShape> Cutter = Gen.Select(Gen.Int[0, 4], Gen.Double[1, 9], Gen.Double[0.3, 3]).Select((kind, across, other) => kind switch
    {
        0 => CutterShape.EndMill(across, 20, across, 30),
        1 => CutterShape.BallNose(across, 20, across, 30),
        2 => CutterShape.Drill(across, 118 * Math.PI / 180, 20, across, 30),
        3 => CutterShape.BullNose(across, Math.Min(other, across / 2.5), 20, across, 30),
        _ => CutterShape.Saw(20 + across, other, 8, 20, 2, 8),
    });

    private static readonly Gen<CutterPath> Path = Gen.Select(Gen.Int[0, 3], Place, Place, Gen.Double[-9, 2], Place, Gen.Double[-7, 7]).Select((kind, x, y, z, to, turn) => kind switch
    {
        0 => CutterPath.Straight(new(x, y, z), new(to, y, z)),
        1 => CutterPath.Straight(new(x, y, 10), new(x, y, z)),
        2 => CutterPath.Straight(new(x, y, z), new(y, to, z)),
        _ => CutterPath.Arc(default, new(x, y, z), turn),
    });

    private static readonly Gen<SweptCut> Cut = Gen.Select(Cutter, Path).Select((c, p) => new SweptCut(c, p));

    private static readonly Gen<Line3> Line = Gen.Select(Gen.Int[0, 2], Place, Gen.Double[-9, 0]).Select((axis, a, b) => axis switch
    {
        0 => Line3.AlongX(a, b),
        1 => Line3.AlongY(a, b),
        _ => Line3.AlongZ(a, (b * 3) + 13),
    });

    private static Workpiece Bare => new(new Block(new(-12, -12, -10), new(12, 12, 0)));

    [Fact]
    public void A_cut_never_adds_metal() =>
        Gen.Select(Cut.Array[1, 6], Line).Hold(
            (cuts, line) =>
            {
                var piece = Bare;
                var before = piece.Sound(line);
                foreach (var cut in cuts)
                {
                    piece = piece.After(cut);
                    var after = piece.Sound(line);
                    Assert.True(after.Difference(before).Cleaned(1e-9).Count == 0, $"{after.Length} of {before.Length}");
                    before = after;
                }
            },
            times: 20_000);

    [Fact]
    public void Exchanging_two_cuts_leaves_the_same_stock() =>
        Gen.Select(Cut, Cut, Line).Hold(
            (one, two, line) =>
            {
                var a = Bare.After(one).After(two).Sound(line);
                var b = Bare.After(two).After(one).Sound(line);
                Assert.Equal(a.Count, b.Count);
                for (var i = 0; i < a.Count; i++)
                {
                    Assert.Equal(a[i].From, b[i].From);
                    Assert.Equal(a[i].To, b[i].To);
                }
            },
            times: 20_000);
}
