using System.Globalization;
using Handwheel.Jobs.Moves;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Cranking;

// The slack in one holding. An axis without a readout is come to the way it went when its dial was set: free moves go past and come back; a cut that must end going
// the other way has the slack reckoned in.
internal sealed class Dials(SetupFacts setup, Figures figures)
{
    // How far past a place the rotary is turned back: more than any worm's slack (common practice, no source).
    private const double PastDegrees = 5;

    // A place clear of the metal may be so much off.
    private const double Harmless = 0.8;

    private readonly Dictionary<Axis, int> ways = new() { [Axis.X] = 1, [Axis.Y] = 1, [Axis.Z] = -1, [Axis.T] = setup.Rotary is { Lies: true } ? 1 : -1 };
    private readonly Dictionary<Axis, double> over = new() { [Axis.X] = 0, [Axis.Y] = 0, [Axis.Z] = 0, [Axis.T] = 0 };
    private readonly Dictionary<(Axis Axis, string Place), (double By, bool Cutting)> came = [];

    // What an axis now reads beyond the place it is meant to stand at.
    internal double Over(Axis axis) => over[axis];

    // What it read beyond a place when it last came there in this step, by a cut before a free move.
    internal double Over(Axis axis, double place) => came.GetValueOrDefault((axis, Key(place))).By;

    // Another step begins: where the axes came from before says nothing of it.
    internal void Forget() => came.Clear();

    // What the axes read where they are meant to stand.
    internal Reading Says(Reading at) => new(at.X + over[Axis.X], at.Y + over[Axis.Y], at.Z + over[Axis.Z], at.T + over[Axis.T]);

    // Slack that a move must take up; 0 on a readout.
    internal double Slack(Axis axis) => Facts(axis) is { Readout: false } facts ? facts.Backlash : 0;

    // A zero is found, the axis going this way last.
    internal void Set(Axis axis, int way)
    {
        over[axis] = 0;
        ways[axis] = way != 0 ? way : ways[axis];
    }

    internal int Way(Axis axis) => ways[axis];

    // The side a zero is to be come to from, as the rows say it; empty where it does not matter, or where the row says it of its own (a turn).
    internal string Arrive(TouchOff touch) => touch.Axis == Axis.T || Slack(touch.Axis) <= 0 ? string.Empty : ways[touch.Axis] > 0 ? "from -" : "from +";

    // The move before a free one that would end going the wrong way: past its place. Down among the metal there is no room for it, and the slack is reckoned in.
    internal Crank? Past(Crank crank, double at, bool isDown)
    {
        if (crank.Axis == Axis.T)
        {
            return Back(crank, at);
        }

        var slack = Slack(crank.Axis);
        var way = ways[crank.Axis];
        if (isDown || crank.Axis == Axis.Z || crank.Cutting || slack <= 0 || (crank.To.Result - at) * way >= -1e-9)
        {
            return null;
        }

        var facts = Facts(crank.Axis);
        var by = Math.Ceiling(2 * slack / facts.Step) * facts.Step;
        return crank with
        {
            To = By(crank.To, "past it, to take up the slack", way > 0 ? "- twice the slack" : "+ twice the slack", -way * by, figures.L(crank.To.Result), figures.L(by)),
            ReadBack = false,
            IsPast = true,
            Remark = $"past it, then back towards {(way > 0 ? "plus" : "minus")}: the slack is taken up",
        };
    }

    // The move as its dial must be cranked to; what it then reads beyond the place is kept.
    internal Crank Reckon(Crank crank, double at, bool isDown)
    {
        var by = Math.Abs(crank.From(at) - at) < 1e-9 ? over[crank.Axis] : Reckons(crank, at, isDown) ? Whole(crank.Axis) : 0;
        over[crank.Axis] = by;
        var place = (crank.Axis, Key(crank.From(at)));
        if (crank.Cutting || !came.GetValueOrDefault(place).Cutting)
        {
            came[place] = (by, crank.Cutting);
        }

        if (by == 0)
        {
            return crank;
        }

        var slack = Slack(crank.Axis);
        var told = crank.Axis == Axis.T ? Figures.Bare(slack, 4) : figures.L(slack);
        return crank with
        {
            To = crank.To with
            {
                Formula = $"{crank.To.Formula} {(by < 0 ? "-" : "+")} slack",
                PutIn = $"{crank.To.PutIn} {(by < 0 ? "-" : "+")} {told}",
                Exact = crank.To.Exact + (Math.Sign(by) * slack),
                Result = crank.To.Result + by,
                Note = string.Join(' ', new[] { crank.To.Note, $"The slack of {crank.Axis} is reckoned in: its dial was set coming {(ways[crank.Axis] > 0 ? "from minus" : "from plus")}, and this is come to from the other side." }.Where(n => n.Length > 0)),
                Inputs = [.. crank.To.Inputs, new($"slack of {crank.Axis}", slack, told, InputKind.Shop, $"shop: backlash {told}", null, null)],
            },
            Remark = string.Join("; ", new[] { crank.Remark, "slack reckoned in" }.Where(r => r.Length > 0)),
        };
    }

    // Whether a move ends going the other way than the zero did, at a place that must be met.
    internal bool Reckons(Crank crank, double at, bool isDown)
    {
        var slack = Slack(crank.Axis);
        var free = !crank.Cutting && !isDown && crank.Axis is Axis.X or Axis.Y;
        return slack > 0 && !crank.AsTyped && (crank.From(at) - at) * ways[crank.Axis] < -1e-9 && !crank.IsPast && !crank.WholeTurn && !free && !(crank.To.IsClear && slack < Harmless);
    }

    // Whole steps of the dial, so that what is lost leaves the cutter short of its place.
    private double Whole(Axis axis) => -ways[axis] * Math.Floor((Slack(axis) / Facts(axis).Step) + 1e-6) * Facts(axis).Step;

    // A free turn of more than half a round the way the work is brought: back past the place, then to it.
    private static Crank? Back(Crank crank, double at)
    {
        if (crank.Cutting || crank.WholeTurn || crank.Counterclockwise || crank.Told || at - crank.From(at) <= 180)
        {
            return null;
        }

        return crank with
        {
            To = By(crank.To, "back past it, to take up the slack", $"+ {Figures.Bare(PastDegrees)} deg", PastDegrees, Figures.Bare(crank.To.Result), Figures.Bare(PastDegrees)),
            Counterclockwise = true,
            ReadBack = false,
            IsPast = true,
            Remark = "back past it, to come forward: the slack is taken up",
        };
    }

    private static Working By(Working to, string name, string formula, double by, string before, string told) => to with
    {
        Name = name,
        Formula = $"{to.Name} {formula}",
        PutIn = $"{before} {(by < 0 ? "-" : "+")} {told}",
        Exact = to.Result + by,
        Result = to.Result + by,
        Rounded = string.Empty,
        Source = Work.Practice,
        Inputs = [],
    };

    private AxisFacts Facts(Axis axis) => axis switch { Axis.X => setup.Axes.X, Axis.Y => setup.Axes.Y, Axis.Z => setup.Axes.Z, _ => setup.Axes.T };

    private static string Key(double place) => Math.Round(place, 6).ToString(CultureInfo.InvariantCulture);
}
