using System.Text.Json;

namespace Handwheel.Membership;

/// <summary>
/// A moves file done over, from the bare stock: what each event takes away, and where the cutters went. A touch-off is felt for, point by point, on the
/// metal as it then is.
/// </summary>
public sealed class Replay
{
    private const double QuillUp = 400;
    private readonly StockFacts stock;
    private readonly IReadOnlyDictionary<string, CutterFacts> cutters;
    private readonly Func<Vec, string?, bool>? most;
    private readonly List<Taking> takings = [];
    private readonly Dials dials = new();
    private Setting? setting;
    private CutterFacts? cutter;
    private IReadOnlyList<Layer> layers = [];
    private Func<Vec, double, bool>? waste;
    private bool zeroed;
    private int events;

    private Replay(StockFacts stock, IReadOnlyDictionary<string, CutterFacts> cutters, Func<Vec, string?, bool>? most)
    {
        this.stock = stock;
        this.cutters = cutters;
        this.most = most;
    }

    /// <summary>Gets what took metal away, in order.</summary>
    public IReadOnlyList<Taking> Takings => takings;

    /// <summary>Gets where the cutters went, in order, with the setting and the turn of the work.</summary>
    public List<(Sweep Sweep, Setting Setting, double Theta0, double Theta1, bool Cutting, string Step, int Stage)> Went { get; } = [];

    /// <summary>Gets what each touch-off met: the axis stood there, the readout was set so.</summary>
    public List<(string Step, char Axis, double Found, double SetTo)> Felt { get; } = [];

    /// <summary>Gets how many events there were.</summary>
    public int Events => events;

    /// <summary>Gets the number of the first event of each stage, with its setting.</summary>
    public List<(int First, Setting? Setting)> Stages { get; } = [];

    /// <summary>Gets readings beyond travel and the like, in words.</summary>
    public List<string> Troubles { get; } = [];

    /// <summary>Does a moves file over.</summary>
    /// <param name="json">The file.</param>
    /// <param name="stock">The stock.</param>
    /// <param name="cutters">The cutters on hand.</param>
    /// <param name="most">Most metal of the drawing, or of one feature of it; null: filing takes nothing.</param>
    /// <returns>What came of it.</returns>
    public static Replay Of(string json, StockFacts stock, IReadOnlyDictionary<string, CutterFacts> cutters, Func<Vec, string?, bool>? most = null)
    {
        var replay = new Replay(stock, cutters, most);
        foreach (var (setting, steps) in Course.Read(json).Stages)
        {
            replay.Enter(setting);
            foreach (var (id, all) in steps)
            {
                foreach (var one in all)
                {
                    replay.Happen(id, one);
                    replay.events++;
                }
            }
        }

        return replay;
    }

    /// <summary>Whether metal is at a place after so many events; made larger or smaller by a little.</summary>
    /// <param name="p">The place, part frame.</param>
    /// <param name="room">How much larger the metal is taken.</param>
    /// <param name="before">Only events before this one count.</param>
    /// <returns>True for metal.</returns>
    public bool Metal(Vec p, double room = 0, int before = int.MaxValue)
    {
        if (!stock.Holds(p, room))
        {
            return false;
        }

        foreach (var t in takings)
        {
            if (t.Owner >= before)
            {
                break;
            }

            if (t.Takes(p, -room))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The number of the event that first takes a place; events&#39; count where none does; -1 outside the stock.</summary>
    /// <param name="p">The place, part frame.</param>
    /// <returns>The event.</returns>
    public int TakenAt(Vec p)
    {
        if (!stock.Holds(p, 0))
        {
            return -1;
        }

        foreach (var t in takings)
        {
            if (t.Takes(p, 0))
            {
                return t.Owner;
            }
        }

        return int.MaxValue;
    }

    /// <summary>Lowest and highest place of the stock's box in a holding, a little beyond.</summary>
    /// <param name="fromPart">From the part frame to the holding.</param>
    /// <returns>The two heights.</returns>
    internal (double Low, double High) Heights(Frame fromPart)
    {
        var corners = Enumerable.Range(0, 8).Select(i => fromPart.Of(stock.Least + new Vec((i & 1) * stock.Size.X, (i >> 1 & 1) * stock.Size.Y, (i >> 2) * stock.Size.Z)).Z).ToArray();
        return (corners.Min() - 1, corners.Max() + 1);
    }

    private void Enter(Setting? next)
    {
        Stages.Add((events, next));
        if (next is null)
        {
            setting = null;
            return;
        }

        setting = next;
        if (waste is not null)
        {
            takings.Add(new(events - 1, waste));
            waste = null;
        }

        dials.Anew(next);
        if (!next.Carried.Contains("z"))
        {
            zeroed = false;
            cutter = null;
            layers = [];
        }
    }

    private void Happen(string step, JsonElement one)
    {
        if (one.TryGetProperty("to", out var to))
        {
            Go(step, [Course.Number(to, "x"), Course.Number(to, "y"), Course.Number(to, "z"), Course.Number(to, "t")], Course.Flag(one, "cutting"));
        }
        else if (one.TryGetProperty("rpm", out _) && one.TryGetProperty("cutter", out _))
        {
            Put(one);
        }
        else if (one.TryGetProperty("rpm", out _) && one.TryGetProperty("across", out _))
        {
            Open(one);
        }
        else if (one.TryGetProperty("setTo", out _))
        {
            Touch(step, one);
        }
        else if (one.TryGetProperty("work", out _))
        {
            ByHand(one);
        }
    }

    // Without a new touch-off a longer cutter reaches deeper at the same reading.
    private void Put(JsonElement one)
    {
        var next = cutters.GetValueOrDefault(Course.Word(one, "cutter"));
        if (next is null)
        {
            Troubles.Add($"no cutter {Course.Word(one, "cutter")}");
        }

        if (next is not null && Course.Number(one, "across") > 0)
        {
            next = next with { Across = Course.Number(one, "across") };
        }

        if (cutter is not null && next is not null)
        {
            dials.Shift(2, cutter.Out - next.Out);
        }

        zeroed = false;
        cutter = next;
        layers = next is null ? [] : Layers.Of(next);
        dials.Forget(2);
    }

    // The head opened with its bar in it: Z stays as it was felt. Any other cutter stays as it is.
    private void Open(JsonElement one)
    {
        if (cutter is { Kind: "boringbar" })
        {
            cutter = cutter with { Across = Course.Number(one, "across") };
            layers = Layers.Of(cutter);
        }
    }

    private void Go(string step, double[] to, bool cutting)
    {
        if (setting is null)
        {
            return;
        }

        var from = dials.Truth;
        var (quillUp, known, known2) = (!dials.Placed(2), dials.Placed(0) && dials.Placed(1), zeroed || setting.Carried.Contains("z"));
        for (var a = 0; a < (setting.Turns ? 4 : 3); a++)
        {
            // With no zero for Z nobody goes down by it, save to cut.
            if (a != 2 || known2 || cutting)
            {
                dials.Crank(setting.Axes, a, to[a], Troubles);
            }
        }

        var now = dials.Truth;
        if (!known)
        {
            from = (double[])now.Clone();
        }

        if (!dials.Placed(2))
        {
            now[2] = QuillUp;
        }

        if (quillUp || !known)
        {
            from[2] = Math.Max(now[2], QuillUp);
        }

        if (cutting && !quillUp && known)
        {
            Leg(step, from, now, true);
            return;
        }

        // A free move: up, turned, across, down.
        var high = Math.Max(from[2], now[2]);
        double[] up = [from[0], from[1], high, from[3]];
        double[] turned = [from[0], from[1], high, now[3]];
        double[] over = [now[0], now[1], high, now[3]];
        Leg(step, from, up, cutting);
        Leg(step, up, turned, cutting);
        Leg(step, turned, over, cutting);
        Leg(step, over, now, cutting);
    }

    // Straight where nothing turns, round where only the work turns, both in small steps otherwise.
    private void Leg(string step, double[] from, double[] to, bool cutting)
    {
        var moves = from[0] != to[0] || from[1] != to[1] || from[2] != to[2];
        var turns = setting!.Turns && from[3] != to[3];
        if (turns && (moves || setting.Lies))
        {
            var n = (int)Math.Clamp(Math.Ceiling(Math.Abs(to[3] - from[3])), 1, 3600);
            var at = from;
            for (var i = 1; i <= n; i++)
            {
                double[] next = [.. from.Select((f, a) => i == n ? to[a] : f + ((to[a] - f) * i / n))];
                double[] turned = [at[0], at[1], at[2], next[3]];
                if (setting.Lies)
                {
                    Straight(step, turned, turned, cutting);
                }
                else
                {
                    Round(step, at, turned, cutting);
                }

                if (moves)
                {
                    Straight(step, turned, next, cutting);
                }

                at = next;
            }
        }
        else if (turns)
        {
            Round(step, from, to, cutting);
        }
        else if (moves)
        {
            Straight(step, from, to, cutting);
        }
    }

    private void Straight(string step, double[] from, double[] to, bool cutting) =>
        Add(step, new Sweep(events, setting!.FromPart.Then(setting.Turned(to[3])), layers, new(from[0], from[1], from[2]), new(to[0], to[1], to[2])), to[3], to[3], cutting);

    // Seen from the work the cutter goes round the other way.
    private void Round(string step, double[] from, double[] to, bool cutting)
    {
        var back = Frame.Turn('Z', -from[3], setting!.Centre);
        var start = back.Of(new(from[0], from[1], from[2]));
        var end = Frame.Turn('Z', -to[3], setting.Centre).Of(new(to[0], to[1], to[2]));
        Add(step, new Sweep(events, setting.FromPart, layers, start, end, setting.Centre, from[3] - to[3]), from[3], to[3], cutting);
    }

    private void Add(string step, Sweep sweep, double theta0, double theta1, bool cutting)
    {
        Went.Add((sweep, setting!, theta0, theta1, cutting, step, Stages.Count - 1));
        if (layers.Any(l => l.Cuts))
        {
            takings.Add(new(events, sweep.Takes));
        }
    }

    private void Touch(string step, JsonElement one)
    {
        if (setting is null)
        {
            return;
        }

        var a = Math.Max(0, "xyzt".IndexOf(Course.Word(one, "axis"), StringComparison.Ordinal));
        var towards = Course.Number(one, "towards", -1) >= 0 ? 1 : -1;
        var setTo = Course.Number(one, "setTo");
        var on = Course.Word(one, "on");
        var found = Feeling.Find(this, one, setting, a, towards, dials.Truth, dials.Offset, layers);
        if (found is { } tip && a == 2 && on != "metal" && Course.Word(one, "face") == "upper" && cutter is { Thick: > 0 })
        {
            found = tip - cutter.Thick;
        }

        var stands = found ?? setTo;
        Felt.Add((step, "xyzt"[a], found ?? double.NaN, setTo));
        var way = Math.Sign(Course.Number(one, "way"));
        dials.Set(a, setTo, stands, way != 0 ? way : on is "rotary centre" or "axis" || a == 3 ? 0 : towards);
        zeroed |= a == 2;
        if (a < 2 && on is not ("rotary centre" or "axis"))
        {
            dials.Lift();
        }
    }

    private void ByHand(JsonElement one)
    {
        var at = Course.Place(one, "at");
        var way = Course.Place(one, "direction");
        way = way.Length > 0 ? way * (1 / way.Length) : way;
        var depth = Course.Number(one, "depth");
        var used = cutters.GetValueOrDefault(Course.Word(one, "cutter"));
        if (Course.Word(one, "work") == "break web" && LastSaw() is null)
        {
            Troubles.Add("no web to break: no saw has cut");
        }

        var taking = Course.Word(one, "work") switch
        {
            "press" when used is not null => Handwork.Press(used, at, way, depth, Course.Number(one, "turn")),
            "run" when used is not null => Handwork.Run(used, at, way, depth),
            "break web" => Handwork.Web(LastSaw()),
            "saw" => Handwork.Slab(at, way, 0, depth),
            "rub" when most is not null => Handwork.Rub(at, way, depth > 0 ? depth : 0.5, p => most(p, Course.Word(one, "feature"))),
            "file" when most is not null => Handwork.File(at, way, depth > 0 ? depth : 0.5, p => most(p, null)),
            _ => null,
        };
        if (taking is not null)
        {
            takings.Add(new(events, taking));
        }

        if (Course.Word(one, "work") == "break web" && most is not null && LastSaw() is { } saw)
        {
            waste = Handwork.Beyond(saw, p => most(p, null));
        }
    }

    private Sweep? LastSaw() => Went.FindLast(w => w.Cutting && w.Sweep.All.Any(l => l is { Cuts: true, R0: > 15 } && l.Z1 - l.Z0 < 4)).Sweep;
}
