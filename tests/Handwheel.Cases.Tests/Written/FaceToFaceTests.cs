namespace Handwheel.Cases.Tests.Written;

/// <summary>A hole drawn from one face of a post to the other, in fractions of an inch that meet only to the last digit: nothing is left standing in its mouth.</summary>
public sealed class FaceToFaceTests
{
    private const string Job = """
        job   Stop
        unit  in
        metal aluminium 6061
        shop  bench.handwheel
        drawing
          foot   block 2 by 3/4 at 0, 3/8           from 0 to 3/8
          post   block 5/8 by 3/4 at -11/16, 3/8    from 3/8 to 1 1/4
          pin    hole .201 at 3/8, 15/16            from -1 to -3/8, seen from right
          others +/-.010
        stock bar 3/4 wide, 1 1/4 high, 2 long
          x middle 0
          y from 0
          z top 1 1/4
        holding A in tool vise on table, bar along jaws on parallels 5/8
          zero x on left end of stock by finder .200
          zero y on fixed jaw by indicator
          zero z on bar top by paper .002
          side post, right end, to 3/8 with em500, .08 a pass
        by hand
          break all edges .010
        holding B in tool vise on table, right end up, on parallels 1/4
          zero x on middle of stock by finder .200
          zero y on fixed jaw by indicator
          zero z on post right by paper .002
          drill pin through with no7
        """;

    // 5/8 from face to face, as the post is long.
    [Fact]
    public void Its_depth_is_the_posts_length()
    {
        var job = new Whole(Job);
        Assert.DoesNotContain(job.All, f => f.Code == "size");
        Assert.Equal(0.625 * 25.4, job.Proof!.Sizes.Single(s => s.Name == "pin deep").Greatest!.Value, 1e-3);
    }

    // The foot's end stands higher, but the post's face was named: the cutter is touched off there, at -3/8 and the paper.
    [Fact]
    public void Z_is_found_on_the_face_that_was_named()
    {
        var touch = new Whole(Job).Plan!.Course.Stages.SelectMany(s => s.Steps).Single(s => s.Id == "B3").Events.OfType<Handwheel.Jobs.Moves.TouchOff>().Last();
        Assert.Equal((-0.375 + 0.002) * 25.4, touch.SetTo, 9);
    }

    [Fact]
    public void A_face_that_does_not_look_up_is_refused() =>
        Assert.Contains(new Whole(Job.Replace("post right by", "post left by", StringComparison.Ordinal)).All, f => f.Code == "cannot-plan" && f.Message == "The left side of 'post' does not look up in this holding.");

    // Held as drawn the keyway's floor, not cut yet, is no face to touch off on.
    [Fact]
    public void A_face_not_cut_yet_is_told() =>
        Assert.Contains(new Whole(Job.Replace("zero z on bar top", "zero z on foot top", StringComparison.Ordinal)).All, f => f is { Code: "zero", Step: "A3" } && f.Message.StartsWith("The foot's face that looks up is not cut yet", StringComparison.Ordinal));
}
