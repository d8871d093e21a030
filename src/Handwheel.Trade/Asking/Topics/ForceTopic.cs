using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Cutting forces.</summary>
internal static class ForceTopic
{
    private const string Off = "30 %; a worn edge adds 30 to 50 %";

    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var teeth = q.InUnit("teeth") ?? 2;
        var rpm = q.InUnit("rpm");
        var tableFeed = q.InUnit("mm/min", "in/min");
        var speed = q.InUnit("m/min", "ft/min");
        if (q.HasIn("vf") || tableFeed is not null)
        {
            ByRemoval.Work(q, r, tableFeed);
            return;
        }

        var metal = q.TakeMetal() ?? throw new UnansweredException("the metal is missing");
        if (q.Has("tap", "tapping"))
        {
            Tap(q, r, metal);
            return;
        }

        Cut(q, r, metal, (int)Math.Clamp(teeth, 1, 40), rpm, speed);
        r.Note("A sharp cutter was taken; force, torque and power are estimates.");
    }

    private static void Cut(Question q, ReplyBuilder r, Metal metal, int teeth, double? rpm, double? speed)
    {
        var drilling = q.Has("drill", "drilling", "thrust");
        var turning = Turning(q);
        var carbide = q.Has("carbide");
        q.Has("end", "mill", "endmill", "milling", "hss", "cutter", "cut", "cutting", "slot", "slotting", "dia", "diameter", "torque", "power", "force", "bar", "off", "horsepower", "hp");
        var named = q.Labelled(("deep", ["deep", "depth", "ap"]), ("wide", ["wide", "width", "ae", "stepover", "step-over"]), ("feed", ["feed", "tooth", "rev", "fz"]));
        var (depth, width, feed) = (Size(q, named, "deep"), Size(q, named, "wide"), Size(q, named, "feed"));
        if (turning)
        {
            Turn(r, metal, q.Length() ?? double.NaN, depth, feed, speed ?? TurningSpeed(metal, carbide));
            return;
        }

        var diameter = Question.Need(q.Length(), "the diameter");
        feed = drilling && double.IsNaN(feed) ? BareFeed(q) : feed;
        var cutter = carbide ? CutterMaterial.Carbide : CutterMaterial.HighSpeedSteel;
        if (drilling)
        {
            Drill(r, metal, diameter, feed, rpm ?? Speeds.Rpm(SpeedTable.Of(metal, Operation.Drill, cutter).Range.LowMPerMin, diameter));
        }
        else
        {
            width = double.IsNaN(width) ? Slot(r, diameter) : width;
            depth = double.IsNaN(depth) ? Depth(r, diameter) : depth;
            feed = double.IsNaN(feed) ? Speeds.StartingFeedPerTooth(diameter) : feed;
            Mill(r, metal, Kienzle.Milling(metal.Kc11, metal.Mc, diameter, depth, width, feed, teeth,
                rpm ?? Speeds.Rpm(SpeedTable.Of(metal, Operation.Mill, cutter).Range.LowMPerMin, diameter)));
            r.Note($"Feed {N(feed)} mm a tooth, {N(teeth)} teeth, {N(depth, 3)} deep, {N(width, 3)} wide.");
        }
    }

    private static double Size(Question q, Dictionary<string, Token> named, string name) => named.TryGetValue(name, out var t) ? q.Mm(t) : double.NaN;

    // "thrust 10 drill in C45 0.2".
    private static double BareFeed(Question q)
    {
        var token = q.Tokens.FirstOrDefault(t => t is { IsNumber: true, Used: false, IsFraction: false, Value: > 0 and < 2 } && (t.Unit.Length == 0 || Units.IsLength(t.Unit)));
        return token is null ? double.NaN : q.Mm(token);
    }

    private static double TurningSpeed(Metal metal, bool carbide) =>
        SpeedTable.Of(metal, Operation.TurnRough, carbide ? CutterMaterial.Carbide : CutterMaterial.HighSpeedSteel).Range.LowMPerMin;

    // A cut off a bar is turned, unless a mill is named.
    private static bool Turning(Question q) => q.Has("turn", "turning", "lathe", "bore", "boring") || (q.HasIn("bar", "shaft") && !q.HasIn("mill", "endmill", "milling", "tooth", "teeth"));

    private static double Slot(ReplyBuilder r, double diameter)
    {
        r.Note("No width was said; a full slot was taken.");
        return diameter;
    }

    private static double Depth(ReplyBuilder r, double diameter)
    {
        r.Note("No depth was said; a quarter of the diameter was taken.");
        return diameter / 4;
    }

    private static void Mill(ReplyBuilder r, Metal metal, MillingForce m) =>
        r.Add("mean chip", m.MeanChipMm, "mm", Kienzle.Basis, $"fz (1 - cos phi) / phi, phi = {N(m.EngagementDeg, 1)} deg")
            .Add("specific cutting force", m.SpecificForce, "MPa", MetalTable.ForceBasisOf(metal), MetalTable.ForceSpread(metal), [$"kc = {N(metal.Kc11)} x {N(m.MeanChipMm, 5)}^-{N(metal.Mc)} = {N(m.SpecificForce, 0)} N/mm^2"])
            .Add("force of one tooth at its thickest chip", m.ToothForceN, "N", Kienzle.Basis, Off, [$"kc h ap at h = {N(m.GreatestChipMm)} mm"])
            .Add("force that bends the cutter", m.SideForceN, "N", Kienzle.Basis, "40 %", ["tooth force with a radial share of 0.4, and the teeth in the cut together"])
            .Add("metal removed", m.RemovalCm3PerMin, "cm^3/min", Kienzle.Basis, "ap ae vf / 1000")
            .Add("power at the cutter", m.PowerKw, "kW", Kienzle.Basis, Off, ["ap ae vf kc / 60e6"]);

    private static void Drill(ReplyBuilder r, Metal metal, double diameter, double feed, double rpm)
    {
        feed = double.IsNaN(feed) ? Speeds.StartingFeedPerTurn(diameter) : feed;
        var d = Kienzle.Drilling(metal.Kc11, metal.Mc, diameter, feed, 118, rpm);
        r.Add("chip at each lip", d.ChipMm, "mm", Kienzle.Basis, "(f/2) sin 59 deg")
            .Add("specific cutting force", d.SpecificForce, "MPa", MetalTable.ForceBasisOf(metal), MetalTable.ForceSpread(metal), [$"kc = {N(metal.Kc11)} x {N(d.ChipMm, 5)}^-{N(metal.Mc)}"])
            .Add("torque", d.TorqueNm, "N m", Kienzle.Basis, Off, [$"kc f D^2 / 8 = {N(d.SpecificForce, 0)} x {N(feed)} x {N(diameter, 3)}^2 / 8000"])
            .Add("thrust", d.ThrustN, "N", Kienzle.Basis, "factor of 1.5 (the chisel edge)", ["kc f D / 2 x sin 59 deg, half of it the lips', half the chisel edge's"])
            .Add("power at the drill", d.PowerKw, "kW", Kienzle.Basis, Off, [$"torque x {N(rpm, 0)} rpm"]);
        r.Note($"Feed {N(feed)} mm a turn, {N(rpm, 0)} rpm, point 118 deg.").Caution("At breakthrough a drill grabs: clamp the work against turning and lifting, ease the feed.");
    }

    private static void Turn(ReplyBuilder r, Metal metal, double diameter, double depth, double feed, double speed)
    {
        depth = double.IsNaN(depth) ? 1 : depth;
        feed = double.IsNaN(feed) ? 0.1 : feed;
        var t = Kienzle.Turning(metal.Kc11, metal.Mc, depth, feed, 90, speed);
        r.Add("cutting force", t.ForceN, "N", Kienzle.Basis, Off, [$"b h^(1-mc) kc1.1 = {N(t.WidthMm)} x {N(t.ChipMm)}^{N(1 - metal.Mc)} x {N(metal.Kc11)}"])
            .Add("power at the tool", t.PowerKw, "kW", Kienzle.Basis, Off, [$"F v / 60000, v = {N(speed, 1)} m/min"]);
        if (!double.IsNaN(diameter))
        {
            r.Add("torque on the work", t.ForceN * diameter / 2000, "N m", Kienzle.Basis, Off, ["F D / 2"]);
        }

        r.Note($"Depth {N(depth)} mm, feed {N(feed)} mm a turn, knife tool (90 deg).");
    }

    private static void Tap(Question q, ReplyBuilder r, Metal metal)
    {
        var thread = ThreadFinder.Take(q) ?? throw new UnansweredException("the thread is missing");
        q.Inch = thread.Unified is not null;
        var torque = Kienzle.TapTorqueNm(metal.Kc11, metal.Mc, thread.MajorMm, thread.PitchMm);
        r.Add("torque of a sharp tap", torque, "N m", Kienzle.Basis, "factor of two", [$"kc P^2 D / 8000, kc at a chip of P/8: {N(Kienzle.Specific(metal.Kc11, metal.Mc, thread.PitchMm / 8), 0)} x {N(thread.PitchMm)}^2 x {N(thread.MajorMm)} / 8000 = {N(torque, 3)} N m"])
            .Caution("A dull tap, a small hole or packed chips double it; a tap that binds snaps.");
    }
}
