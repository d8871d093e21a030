using Handwheel.Trade.Cutting;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Pushing a broach.</summary>
internal static class PushTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var gives = q.Force();
        var metal = q.TakeMetal() ?? throw new UnansweredException("the metal is missing");
        var sides = q.Has("hex", "hexagon", "six") ? 6 : 4;
        q.Has("square", "broach", "push", "pushing", "corners", "hole", "pilot", "quill", "press", "flats", "across");
        var named = q.Labelled(("pilot", ["pilot", "drilled", "hole", "bored"]));
        var pilot = named.TryGetValue("pilot", out var p) ? q.Mm(p) : double.NaN;
        var flats = Question.Need(q.Length(), "the size across flats");
        pilot = double.IsNaN(pilot) ? flats : pilot;
        var side = flats * Math.Tan(Math.PI / sides);
        var polygon = sides * side * flats / 4;
        var area = Math.Max(0, polygon - (Math.PI * pilot * pilot / 4));
        var thick = ((flats / Math.Cos(Math.PI / sides)) - pilot) / 2;
        if (area <= 0 || thick <= 0 || pilot < flats * 0.7)
        {
            throw new UnansweredException("the pilot does not suit: it must be about the size across flats");
        }

        var push = Kienzle.PushN(metal.Kc11, metal.Mc, area, thick);
        r.Add("area taken off", area, "mm^2", Geometry.Circles.Basis, $"{N(sides)}-gon {N(polygon, 3)} - pilot {N(Math.PI * pilot * pilot / 4, 3)} mm^2")
            .Add("thickness at a corner", thick, "mm", Geometry.Circles.Basis, "(corners - pilot) / 2")
            .Add("push before friction, all at once", push, "N", Kienzle.Basis, "factor of two", [$"area x kc = {N(area, 3)} x {N(push / area, 0)} N/mm^2"])
            .Add("push with friction, at a guess", push * 1.3, "N", new Basis("common practice: a third more", Evidence.CommonPractice), "factor of two", []);
        if (gives is { } g)
        {
            r.Say("does what is on hand push it", g >= push * 1.3 ? "yes" : "no: use a press, or a broach that takes less at a push", Kienzle.Basis, $"{N(g, 0)} N against {N(push * 1.3, 0)} N");
        }

        r.Caution("A quill gives some hundred newtons: beyond that use an arbor press, square and guarded; a broach that cocks snaps and flies.");
    }
}
