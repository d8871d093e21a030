using System.Globalization;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;

namespace Handwheel.Slips;

/// <summary>Slips drawn by a seed: so many of each kind, spread over all the places where the kind can happen.</summary>
internal sealed class Generator(Course course, Shop shop, int seed)
{
    private readonly Random random = new(seed);
    private readonly List<Cranked> cranked = Cranks(course, shop);
    private readonly List<CourseEvent> events = [.. course.Stages.SelectMany(s => s.Steps).SelectMany(p => p.Events)];

    // One line of the sheet: an axis cranked to a reading, with the cutter in.
    private sealed record Cranked(int Number, string Step, Axis Axis, double To, bool Cutting, Cutter Cutter, AxisFacts Facts);

    // Every slip of every kind whose words hold one of the texts, whether drawn by the seed or not.
    internal IEnumerable<Slip> Only(string[] texts)
    {
        foreach (var (kind, all) in Kinds())
        {
            foreach (var one in all)
            {
                var (what, damaged) = one();
                if (texts.Any(t => what.Contains(t, StringComparison.Ordinal)))
                {
                    yield return new(kind, what, damaged);
                }
            }
        }
    }

    internal IEnumerable<Slip> Make(int wanted)
    {
        var kinds = Kinds();
        var each = (int)Math.Ceiling(wanted / (double)kinds.Count(k => k.All.Count > 0));
        foreach (var (kind, all) in kinds)
        {
            foreach (var one in all.OrderBy(_ => random.NextDouble()).Take(each + Math.Max(0, Short(kinds, each))).ToList())
            {
                var (what, damaged) = one();
                yield return new(kind, what, damaged);
            }
        }
    }

    private (string Kind, List<Func<(string What, Course Course)>> All)[] Kinds() =>
        [
            ("half a cutter forgotten", Readings(c => c.Axis is Axis.X or Axis.Y && c.Cutting, c => c.To - (Math.Sign(c.To) * c.Cutter.TrueAcross / 2))),
            ("half a cutter doubled", Readings(c => c.Axis is Axis.X or Axis.Y && c.Cutting, c => c.To + (Math.Sign(c.To) * c.Cutter.TrueAcross / 2))),
            ("sign turned", Readings(c => c.Axis != Axis.T && c.To != 0, c => -c.To)),
            ("x and y exchanged", [.. Readings(c => c.Axis == Axis.X, c => c.To, Axis.Y), .. Readings(c => c.Axis == Axis.Y, c => c.To, Axis.X)]),
            ("times ten", Readings(c => c.Axis != Axis.T && c.To != 0, c => c.To * 10)),
            ("times 25.4", Readings(c => c.Axis != Axis.T && c.To != 0, c => c.To * 25.4)),
            ("wrong zero", Zeros()),
            ("rotary the wrong way", Turns()),
            ("wrong cutter taken", Cutters()),
            ("depth off by a cutter", [.. Readings(c => c.Axis == Axis.Z && c.Cutting, c => c.To - c.Cutter.TrueAcross), .. Readings(c => c.Axis == Axis.Z, c => c.To + c.Cutter.TrueAcross)]),
            ("depth off by a paper", [.. Readings(c => c.Axis == Axis.Z, c => c.To - 0.05), .. Readings(c => c.Axis == Axis.Z, c => c.To + 0.05)]),
            ("boring head set wrong", Heads()),
            ("two steps exchanged", Exchanges()),
            ("a step left out", LeftOut()),
            ("a jaw left too high", Jaws()),
            ("backlash from the wrong side", [.. Readings(c => !c.Facts.Readout && c.Facts.Backlash > 0, c => c.To - c.Facts.Backlash), .. Ways()]),
        ];

    // What kinds with few places cannot give is shared by the others.
    private static int Short((string Kind, List<Func<(string What, Course Course)>> All)[] kinds, int each)
    {
        var missing = kinds.Where(k => k.All.Count > 0).Sum(k => Math.Max(0, each - k.All.Count));
        var rich = kinds.Count(k => k.All.Count > each);
        return rich == 0 ? 0 : (int)Math.Ceiling(missing / (double)rich);
    }

    private static string Text(double v) => v.ToString("0.###", CultureInfo.InvariantCulture);

    private static List<Cranked> Cranks(Course course, Shop shop)
    {
        var found = new List<Cranked>();
        foreach (var stage in course.Stages.Where(s => s.Setup is not null))
        {
            Reading? before = null;
            Cutter? cutter = null;
            foreach (var step in stage.Steps)
            {
                foreach (var one in step.Events)
                {
                    cutter = one is CutterIn put ? shop.Cutters.GetValueOrDefault(put.Cutter) : cutter;
                    if (one is not Move move)
                    {
                        continue;
                    }

                    var axes = stage.Setup!.Axes;
                    foreach (var (axis, facts) in new[] { (Axis.X, axes.X), (Axis.Y, axes.Y), (Axis.Z, axes.Z), (Axis.T, axes.T) })
                    {
                        if (before is { } was && cutter is not null && Damage.Get(was, axis) != Damage.Get(move.To, axis))
                        {
                            found.Add(new(move.Number, step.Id, axis, Damage.Get(move.To, axis), move.Cutting, cutter, facts));
                        }
                    }

                    before = move.To;
                }
            }
        }

        return [.. found.DistinctBy(c => (c.Number, c.Axis))];
    }

    private List<Func<(string, Course)>> Readings(Func<Cranked, bool> which, Func<Cranked, double> wrong, Axis? onto = null) =>
        [.. cranked.Where(which).Where(c => onto is not null || Math.Abs(wrong(c) - c.To) > 1e-9).Select(c => (Func<(string, Course)>)(() =>
        {
            var by = wrong(c) - c.To;
            var times = c.To == 0 ? 1 : wrong(c) / c.To;
            var scaled = Math.Abs(times - 10) < 1e-9 || Math.Abs(times - 25.4) < 1e-9 || Math.Abs(times + 1) < 1e-9;
            return (
                $"{c.Step} move {c.Number}: {c.Axis} {Text(c.To)} cranked as {onto ?? c.Axis} {Text(wrong(c))}",
                Damage.Misread(course, c.Number, c.Axis, onto ?? c.Axis, v => onto is not null ? v : scaled ? v * times : v + by));
        }))];

    private List<Func<(string, Course)>> Zeros()
    {
        var all = new List<Func<(string, Course)>>();
        for (var i = 0; i < events.Count; i++)
        {
            if (events[i] is not TouchOff touch || touch.Axis == Axis.T)
            {
                continue;
            }

            var at = i;
            var half = touch.Half > 0 ? touch.Half : 5;
            foreach (var by in new[] { -touch.Paper, touch.Paper, 0.5, -0.5, half, -half, 1, -1 }.Where(b => b != 0))
            {
                all.Add(() => (
                    $"touch-off {at} of {touch.Axis} on {touch.Surface}: set {Text(touch.SetTo + by)} for {Text(touch.SetTo)}",
                    Damage.Event(course, at, e => ((TouchOff)e) with { SetTo = touch.SetTo + by })));
            }
        }

        return all;
    }

    // A dial set with its slack taken up on the other side.
    private List<Func<(string, Course)>> Ways() =>
        [.. Enumerable.Range(0, events.Count).Where(i => events[i] is TouchOff { Way: not 0 }).Select(i => (Func<(string, Course)>)(() =>
            ($"touch-off {i} of {((TouchOff)events[i]).Axis}: come to from the other side", Damage.Event(course, i, e => ((TouchOff)e) with { Way = -((TouchOff)e).Way }))))];

    // The head opened by twice as much (its dial read on the radius), by half as much, or by a tenth of a millimetre or a half too far.
    private List<Func<(string, Course)>> Heads()
    {
        var all = new List<Func<(string, Course)>>();
        var stands = 0.0;
        for (var i = 0; i < events.Count; i++)
        {
            stands = events[i] is CutterIn put ? put.Across : stands;
            if (events[i] is HeadOpened head)
            {
                var (at, opens) = (i, head.Across - stands);
                foreach (var by in new[] { opens, -opens / 2, 0.1, 0.5 }.Where(b => Math.Abs(b) > 1e-9))
                {
                    all.Add(() => ($"head {at}: set to {Text(head.Across + by)} for {Text(head.Across)}", Damage.Event(course, at, e => ((HeadOpened)e) with { Across = head.Across + by })));
                }

                stands = head.Across;
            }
        }

        return all;
    }

    private List<Func<(string, Course)>> Turns() =>
        [.. cranked.Where(c => c.Axis == Axis.T && c.Cutting).Select(c => (Func<(string, Course)>)(() =>
            ($"{c.Step} move {c.Number}: turned the other way round to {Text(c.To)} deg", Damage.OtherWayRound(course, c.Number))))];

    private List<Func<(string, Course)>> Cutters()
    {
        var all = new List<Func<(string, Course)>>();
        var others = shop.Cutters.Values.Where(c => c.Kind != CutterKind.Broach).Select(c => c.Name).ToArray();
        for (var i = 0; i < events.Count; i++)
        {
            if (events[i] is CutterIn put)
            {
                var at = i;
                foreach (var other in others.Where(o => o != put.Cutter))
                {
                    all.Add(() => ($"cutter {at}: {other} put in for {put.Cutter}", Damage.Event(course, at, e => ((CutterIn)e) with { Cutter = other })));
                }
            }
        }

        return all;
    }

    private List<Func<(string, Course)>> Exchanges()
    {
        var all = new List<Func<(string, Course)>>();
        for (var s = 0; s < course.Stages.Count; s++)
        {
            for (var p = 0; p + 1 < course.Stages[s].Steps.Count; p++)
            {
                var (stage, first) = (s, p);
                var steps = course.Stages[s].Steps;
                all.Add(() => ($"{steps[first].Id} and {steps[first + 1].Id} exchanged", Damage.Exchanged(course, stage, first)));
            }
        }

        return all;
    }

    private List<Func<(string, Course)>> LeftOut() =>
        [.. course.Stages.SelectMany(s => s.Steps).Where(p => p.Events.Count > 0).Select(p => (Func<(string, Course)>)(() => ($"{p.Id} left out", Damage.LeftOut(course, p.Id))))];

    private List<Func<(string, Course)>> Jaws()
    {
        var all = new List<Func<(string, Course)>>();
        for (var s = 0; s < course.Stages.Count; s++)
        {
            var stage = s;
            for (var by = 1.0; course.Stages[s].Setup is not null && by <= 12; by++)
            {
                var up = by;
                all.Add(() => ($"jaws of {course.Stages[stage].Name} left {up} higher", Damage.JawsRaised(course, stage, up)));
            }
        }

        return all;
    }
}
