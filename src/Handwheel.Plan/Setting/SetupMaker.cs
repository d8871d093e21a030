using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Jobs.Stocks;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// Where the part lies in a holding, what stands round it, and how far the axes go. Holding frame, theta 0.
internal sealed class SetupMaker(AimedDrawing drawing, Stock stock, Shop shop)
{
    private const double TableThick = 60;

    internal HoldingPlan Lay(Holding holding)
    {
        var turned = Placement.Of(holding);
        var bare = new HoldingPlan(drawing, stock, turned);
        double x = 0, y = 0;
        foreach (var zero in holding.Steps.OfType<ZeroStep>())
        {
            x = zero.Axes.Contains('x', StringComparison.Ordinal) ? Shift(zero, bare, true) : x;
            y = zero.Axes.Contains('y', StringComparison.Ordinal) ? Shift(zero, bare, false) : y;
        }

        return new(drawing, stock, turned.Moved(new(x, y, 0)));
    }

    internal SetupFacts Facts(Holding holding, HoldingPlan plan)
    {
        var holder = shop.Holders.GetValueOrDefault(holding.Holder);
        var fixtures = new List<FixtureFacts>();
        var bottom = plan.Least.Z;
        if (holder is { Kind: HolderKind.Vise })
        {
            bottom = Vise(holding, holder, plan, fixtures);
        }

        var rotary = holding.OnRotary ? shop.Rotary : null;
        if (rotary is not null)
        {
            fixtures.Add(new() { Name = "rotary", Turns = true, Least = new(0, 0, bottom - rotary.High), Most = new(0, 0, bottom), Across = rotary.Across });
            bottom -= rotary.High;
        }

        var mill = shop.Mill!;
        fixtures.Add(new() { Name = "table", Least = new(-mill.X.Travel, -mill.Y.Travel, bottom - TableThick), Most = new(mill.X.Travel, mill.Y.Travel, bottom) });
        return new()
        {
            Up = holding.Up.ToString().ToLowerInvariant(),
            Turn = holding.Turn * Plane.ToDegrees,
            TiltX = holding.TiltX * Plane.ToDegrees,
            TiltY = holding.TiltY * Plane.ToDegrees,
            PartOrigin = Placement.ToPlace(plan.Placement.Shift),
            Rotary = rotary is null ? null : new(0, 0, bottom + rotary.High, false, rotary.Sense, 0, rotary.DialStep * Plane.ToDegrees),
            Fixtures = fixtures,
            Axes = Axes(mill, rotary, plan),
        };
    }

    // Reading of the jaws' tops.
    internal static double JawsTop(Holding holding, Holder holder, HoldingPlan plan) =>
        holding.JawsAt is { } typed ? plan.Height(typed.Value) : plan.Least.Z - (holding.Parallels?.Value ?? 0) + holder.JawsDeep;

    private double Shift(ZeroStep zero, HoldingPlan bare, bool alongX)
    {
        double Pick(double x, double y) => alongX ? x : y;
        var at = zero.On switch
        {
            ZeroOn.LeftEnd => bare.Least.X,
            ZeroOn.RightEnd => bare.Most.X,
            ZeroOn.NearSide => bare.Least.Y,
            ZeroOn.FarSide or ZeroOn.FixedJaw => bare.Most.Y,
            ZeroOn.Middle when zero.Feature is null => Pick(bare.Least.X + bare.Most.X, bare.Least.Y + bare.Most.Y) / 2,
            _ => zero.Feature is { } f && drawing.Find(f) is { } feature ? Pick(bare.InPlan(feature.View, drawing.CentreOf(feature)).X, bare.InPlan(feature.View, drawing.CentreOf(feature)).Y) : 0,
        };
        return (zero.SetTo?.Value ?? 0) - at;
    }

    private static double Vise(Holding holding, Holder holder, HoldingPlan plan, List<FixtureFacts> fixtures)
    {
        var top = JawsTop(holding, holder, plan);
        var bed = top - holder.JawsDeep;
        var middle = holding.JawsMiddle?.Value ?? (holding.OnRotary ? 0 : (plan.Least.X + plan.Most.X) / 2);
        double half = holder.JawsWide / 2, body = Math.Max(holder.BodyLong, plan.Most.Y - plan.Least.Y + (2 * holder.JawThick)) / 2;
        var depth = (plan.Least.Y + plan.Most.Y) / 2;
        fixtures.Add(Block("fixed jaw", new(middle - half, plan.Most.Y, bed), new(middle + half, plan.Most.Y + holder.JawThick, top), true, true));
        fixtures.Add(Block("moving jaw", new(middle - half, plan.Least.Y - holder.JawThick, bed), new(middle + half, plan.Least.Y, top), true, true));
        fixtures.Add(Block("vise bed", new(middle - half, depth - body, bed - holder.BedHigh), new(middle + half, depth + body, bed), false, true));
        if (holding.Parallels is { } p)
        {
            fixtures.Add(Block("parallel", new(middle - half, plan.Least.Y + 0.5, bed), new(middle + half, plan.Most.Y - 0.5, bed + p.Value), false, true));
        }

        return bed - holder.BedHigh;
    }

    private static FixtureFacts Block(string name, Point3 least, Point3 most, bool holds, bool turns) =>
        new() { Name = name, Holds = holds, Turns = turns, Least = Placement.ToPlace(least), Most = Placement.ToPlace(most) };

    private static AxesFacts Axes(Mill mill, Rotary? rotary, HoldingPlan plan)
    {
        static AxisFacts Half(MachineAxis a) => new(-a.Travel / 2, a.Travel / 2, a.ReadoutStep is not null, a.Step, a.Backlash);
        var high = Math.Max(plan.Most.Z + 45, 45);
        var t = rotary is null
            ? new AxisFacts(null, null, true, 1.0 / 60, 0)
            : new AxisFacts(null, null, false, rotary.DialStep * Plane.ToDegrees, rotary.Backlash * Plane.ToDegrees);
        return new(Half(mill.X), Half(mill.Y), new(high - mill.Z.Travel, high, mill.Z.ReadoutStep is not null, mill.Z.Step, mill.Z.Backlash), t);
    }
}
