using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Reading;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Tests.Readers;

public sealed class CrankTests
{
    private static readonly Read<Job> Read = JobReader.Read("examples/crank.handwheel", Examples.Text("crank.handwheel"), Examples.Open);

    private static Job Job => Read.Value!;

    [Fact]
    public void Reads_without_a_finding() =>
        Assert.Equal(string.Empty, string.Concat(Read.Findings.Select(f => FindingPrinter.Print(f, (_, line) => Read.Sources[0].LineAt(line)))));

    [Fact]
    public void Drawing_has_its_features_and_limits()
    {
        Assert.Equal(["hub", "eye", "arm", "pilot", "socket", "pin"], Job.Drawing.Features.Select(f => f.Name));
        var hub = Job.Drawing.Features[0];
        var across = Assert.IsType<RoundShape>(hub.Shape).Across;
        Assert.Equal((10, 9.95, 10), (across.Nominal, across.Lower, across.Upper));
        Assert.Equal(9.975, across.Middle, 12);
        var arm = Job.Drawing.Features[2];
        Assert.Equal((-12.05, -11.95), (Math.Round(arm.From.Lower, 9), Math.Round(arm.From.Upper, 9)));
        Assert.Equal((-8.1, -7.9), (arm.To.Lower, arm.To.Upper));
        Assert.Equal(new TangentShape("hub", "eye"), arm.Shape);
        var socket = Assert.IsType<PolygonShape>(Job.Drawing.Features[4].Shape);
        Assert.Equal((4, 0d), (socket.Sides, socket.Turn));
        Assert.Equal(4.03, socket.AcrossFlats.Middle, 12);
        // ISO 286-1:2010 Table 1: IT8 to 3 mm is 14 um.
        var pin = Assert.IsType<RoundShape>(Job.Drawing.Features[5].Shape);
        Assert.Equal((3, 3.014), (pin.Across.Lower, pin.Across.Upper));
        Assert.Equal((28d, 0d), (Job.Drawing.Features[5].Centre.X, Job.Drawing.Features[5].Centre.Y));
        Assert.True(Job.Drawing.Features[5].Through);
    }

    [Fact]
    public void Every_dimension_has_a_size()
    {
        Assert.Equal(
            ["hub across", "hub to pin along x", "arm high", "socket across flats", "pin across", "hub high", "eye across", "eye high", "pilot across", "socket deep"],
            Job.Drawing.Sizes.Select(s => s.Name));
        Assert.Equal(5, Job.Drawing.Sizes.Count(s => s.Stated));
    }

    [Fact]
    public void Stock_lies_as_measured()
    {
        Assert.Equal((48, 14, 30), (Job.Stock.Nominal.X, Job.Stock.Nominal.Y, Job.Stock.Nominal.Z));
        Assert.Equal((48, 13.96, 30), (Job.Stock.Used.X, Job.Stock.Used.Y, Job.Stock.Used.Z));
        Assert.Equal((-9, -6.98, -29.5), (Job.Stock.Least.X, Job.Stock.Least.Y, Job.Stock.Least.Z));
    }

    [Fact]
    public void Stages_have_their_steps_and_ids()
    {
        Assert.Equal(["A", "by hand", "B", "by hand"], Job.Stages.Select(s => s.Name));
        var ids = Job.Stages.SelectMany(s => s.Steps).Select(s => s.Id).ToList();
        Assert.Equal(["A1", "A2", "A3", "A4", "A5", "A6", "A7", "A8", "A9", "A10", "A11", "A12", "h1", "h2", "B1", "B2", "B3", "B4", "h3", "h4", "h5"], ids);
        var a = Assert.IsType<Holding>(Job.Stages[0]);
        Assert.Equal(("small", true, 6d, -19d), (a.Holder, a.OnRotary, a.Parallels!.Value, a.JawsAt!.Value));
        Assert.True(Assert.IsType<Holding>(Job.Stages[2]).Slid);
        var spot = Assert.IsType<HoleStep>(a.Steps[3]);
        Assert.Equal(("sd6", "hub,pin"), (spot.Cutter, string.Join(',', spot.Features)));
        var face = Assert.IsType<FaceStep>(a.Steps[7]);
        Assert.Equal(("arm", -8d, 1d, "end"), (face.Feature, face.To.Value, face.PerPass!.Value, face.From));
        Assert.Equal(("hub", 0.3), (face.Clear[0].Feature, face.Clear[0].By.Value));
        var side = Assert.IsType<SideStep>(a.Steps[11]);
        Assert.Equal(["near flank", "far flank"], side.Edges);
        Assert.Equal("-13.4", side.To.Text);
        var run = Assert.IsType<HandStep>(Job.Stages[1].Steps[1]);
        Assert.Equal((HandWork.Run, "pilot", "d4"), (run.Work, run.Feature, run.Cutter));
        var zero = Assert.IsType<ZeroStep>(Job.Stages[2].Steps[0]);
        Assert.Equal((ZeroOn.RotaryCentre, "pin", true, "xy"), (zero.On, zero.Feature, zero.OnRotaryCentre, zero.Axes));
        var saw = Assert.IsType<SawStep>(Job.Stages[2].Steps[3]);
        Assert.Equal(("arm", "near", 0.3, "far flank", 0.1), (saw.Under, saw.From, saw.Web!.Value, saw.WebAlong, saw.Allow!.Value));
        var broken = Assert.IsType<HandStep>(Job.Stages[3].Steps[0]);
        Assert.Equal((HandWork.BreakWeb, true), (broken.Work, broken.FileToLine));
        var rub = Assert.IsType<HandStep>(Job.Stages[3].Steps[1]);
        Assert.Equal((HandWork.Rub, "underside", "arm high"), (rub.Work, rub.Face, rub.Size));
    }

    [Fact]
    public void Shop_has_true_sizes()
    {
        var shop = Read.Shop!;
        Assert.Equal(4.03, shop.Cutters["sq4"].TrueAcross, 12);
        Assert.Equal((CutterKind.Saw, 63d, 1d, 16d, 4d), (shop.Cutters["saw1"].Kind, shop.Cutters["saw1"].Across, shop.Cutters["saw1"].Thick, shop.Cutters["saw1"].Arbor, shop.Cutters["saw1"].ScrewBelow));
        Assert.Equal((72d, -1), (shop.Rotary!.Worm, shop.Rotary.Sense));
        Assert.Equal(Math.PI / 180 / 60, shop.Rotary.DialStep, 15);
        Assert.Equal((40d, 30d, 16.5), (shop.Holders["small"].JawsWide, shop.Holders["small"].Open, shop.Holders["small"].JawsDeep));
        Assert.Equal((400d, 150d, 100d, 500d), (shop.Mill!.X.Travel, shop.Mill.Y.Travel, shop.Mill.Z.Travel, shop.Mill.QuillPush));
        Assert.Equal(0.005, shop.Mill.X.Step);
        Assert.Equal([80, 140, 260, 480, 900, 1600, 2200], shop.Mill.Speeds);
        Assert.Equal(10_000, shop.PressPush);
    }
}
