using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Reading;
using Handwheel.Jobs.Steps;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Tests.Readers;

public sealed class OtherJobsTests
{
    private const string Shop = """
        shop Bench
        unit in
        mill travels x 12, y 5, quill 3 1/2; quill pushes 450 N
          handwheel x 1/16 a turn, 62 divisions, backlash .006, clockwise grows, counts the other way
          handwheel y .0625 a turn, 62 divisions, backlash .006
          handwheel z 1/16 a turn, 62 divisions, backlash 0, clockwise shrinks
          speeds 100, 250, 500, 1000 rpm
        rotary worm 90, dial by 1 deg, reads counterclockwise, table 3
        chuck three 3 across, open 2 3/4, deep 3/4
        vise tool jaws 2 wide, open 2, deep 1, soft jaws
        parallels 1/4, 3/8
        em375 end mill 3/8, true .3745, 2 flutes HSS, flute 3/4, out 1, cuts to centre
        em500 end mill 1/2, true .4990, 4 flutes HSS, flute 1, out 1 1/4
        #7    drill 0.201, HSS
        cd2   centre drill 3/16, tip 5/64
        cb38  counterbore 3/8, pilot 0.2
        bb    boring bar 1/4, out 2
        tapq  tap 1/4-20 UNC
        saw2  saw 2 1/2 by 1/32, arbor 1/2, screw stands 1/8 below
        """;

    private const string Knob = """
        job   Clamp knob, six lobes
        unit  in
        metal aluminium, 6061
        shop  bench.handwheel
        make  2

        drawing
          Body    round 1 1/2 at 0, 0          from -5/8 to 0
          neck    round 3/4 +0 -.005 at Body   from -7/8 to (body bottom)
          grips   cut round 1/2 at 0, 0        from -5/8 to 0, 6 on circle 1 3/4, first at 30 deg
          screw   hole .201 at 0, 0            through, thread 1/4-20 UNC
          seat    hole 3/8 H8 at screw         1/8 deep from 0
          size    body across                  1.490 to 1.510
          size    grips position               .010
          size    seat deep                    .125 +.005 -0
          others  +/-.010

        stock round 1 5/8, 2 long, along z
          z top .030
        holding A in three chuck on rotary
          zero x, y on rotary centre
          zero z on bar top by paper .002
          face to 0 with em500, .030 a pass
          spot screw with cd2
          drill screw through with #7, peck 1/8
          bore seat to 3/8 across with bb
          round Body to -5/8 with em375, .050 a pass
          bites grips to -.625 with em375, .050 a pass
          saw at (-7/8 - 1/32) with saw2, from left end
        by hand
          tap screw with tapq
        holding B in three chuck on rotary, turned over
          zero x, y at screw on rotary centre
          zero z on neck by paper .002
        """;

    private static string? Open(string name) => name == "bench.handwheel" ? Shop : null;

    [Fact]
    public void A_knob_in_inches_reads()
    {
        var read = JobReader.Read("knob.handwheel", Knob, Open);
        Assert.Equal(string.Empty, Reads.Said(read));
        var job = read.Value!;
        Assert.Equal((LengthUnit.Inch, 2), (job.Unit, job.ToMake));
        var grips = job.Drawing.Features[2];
        Assert.Equal(6, grips.Places.Count);
        Assert.Equal(Math.PI / 6, grips.Places[0].Turn, 12);
        Assert.Equal(1.75 / 2 * 25.4 * Math.Cos(Math.PI / 6), grips.Centre.X, 9);
        Assert.Equal(("1/4-20 UNC", FaceUp.Underside), (job.Drawing.Features[3].Thread, Assert.IsType<Holding>(job.Stages[2]).Up));
        Assert.Equal(-(7.0 / 8 + 1.0 / 32) * 25.4, Assert.IsType<SawStep>(job.Stages[0].Steps[8]).At!.Value, 12);
        Assert.Equal(SizeKind.Position, job.Drawing.Sizes[1].Kind);
        Assert.Equal((0, 0.254), (job.Drawing.Sizes[1].Limits.Lower, Math.Round(job.Drawing.Sizes[1].Limits.Upper, 9)));
    }

    [Fact]
    public void Plain_dials_have_the_step_of_a_division()
    {
        var shop = ShopReader.Read("bench.handwheel", Shop).Value!;
        Assert.Null(shop.Mill!.X.ReadoutStep);
        Assert.Equal(25.4 / 16 / 62, shop.Mill.X.Step, 12);
        Assert.True(shop.Mill.X.CountsOtherWay);
        Assert.False(shop.Mill.Z.ClockwiseGrows);
        Assert.Equal(1, shop.Rotary!.Sense);
        // ASME B1.1: 1/4-20 has a pitch of 0.05 in.
        Assert.Equal(1.27, shop.Cutters["tapq"].Pitch, 12);
    }

    [Theory]
    [InlineData("reads clockwise", -90)]
    [InlineData("reads counterclockwise", 90)]
    public void A_typed_turn_is_a_reading_of_the_rotary(string reads, double theta)
    {
        var text = Knob + "\n  turn rotary clockwise to 90 deg at x 1, y 0, z 0 with em375\n";
        var step = JobReader.Read("knob", text, _ => Shop.Replace("reads counterclockwise", reads, StringComparison.Ordinal)).Value!.Stages[2].Steps[2];
        Assert.Equal(theta * Math.PI / 180, Assert.IsType<MoveStep>(step).T!.Value, 12);
    }

    [Theory]
    [InlineData("size    body top to neck underside  7/8", "z")]
    [InlineData("size    body right to screw         3/4", "x")]
    [InlineData("size    screw to body far           3/4", "y")]
    [InlineData("size    body to screw               0", null)]
    public void A_distance_from_a_face_is_along_its_normal(string line, string? along)
    {
        var text = Knob.Replace("  others  +/-.010", $"  {line}\n  others  +/-.010", StringComparison.Ordinal);
        var sizes = JobReader.Read("knob.handwheel", text, Open).Value!.Drawing.Sizes;
        Assert.Equal(along, sizes.Single(s => s.Kind == SizeKind.Distance).Along);
    }

    [Fact]
    public void A_round_bar_too_thin_is_told()
    {
        var read = JobReader.Read("knob", Knob.Replace("round 1 5/8, 2 long", "round 1 7/16, 2 long", StringComparison.Ordinal), Open);
        Assert.All(read.Findings, f => Assert.Equal("stock-short", f.Code));
        Assert.Contains(read.Findings, f => f.Message.Contains("round bar sideways", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_clamps_from_one_bar_with_a_tilted_vise_read()
    {
        const string text = """
            job   T-slot clamps
            unit  mm
            metal steel, free-cutting
            shop  home.handwheel
            make  2

            drawing
              body   block 50 by 16 at 25, 0       from -12 to 0
              step   cut block (body long/2) by 20 at 12.5, 0  from -12 to -8
              nose   cut outline 44, 0; 60, 0; 60, -12; 50, -12; 50, -6  from -10 to 10, seen from front
              hole   hole 6.6 at 30, 0             through
              sink   counterbore 11 at hole        6.5 +0.2 -0 deep from 0
              jack   hole 5 at 8, 0                through, thread M6
              size   body long                     50 +/-0.2
              size   hole to jack along x          22 +/-0.1
              size   body top to step top          8 +/-0.05
              others +/-0.1

            stock bar 20 wide, 16 high, 130 long
              x from -4
              z top 1
            holding A in large vise, on parallels 20
              zero x on left end of stock by finder
              zero y on fixed jaw by finder 10
              zero z on bar top by paper 0.05
              face to 0 with fly50
              drill hole, jack through with d5
              counterbore sink with cb11, at 260 rpm
              side body, near side and far side, to -12.5 with em16, 2 a pass
            holding B in large vise, underside up, on parallels 10
              zero x, y at hole by pin 6.6
              zero z on body underside
              slot step with em16
            holding C in large vise, tilted 30 deg about y, jaws along x
              zero x on right end of stock
              face nose to -6 with em16
            """;
        var job = Reads.Sound(text);
        Assert.Equal(["near", "far"], Assert.IsType<SideStep>(job.Stages[0].Steps[6]).Edges);
        Assert.Equal(Math.PI / 6, Assert.IsType<Holding>(job.Stages[2]).TiltY, 12);
        Assert.Equal((-12, -8.05, -7.95), (job.Drawing.Features[1].From.Nominal, Math.Round(job.Drawing.Features[1].To.Lower, 9), Math.Round(job.Drawing.Features[1].To.Upper, 9)));
    }
}
