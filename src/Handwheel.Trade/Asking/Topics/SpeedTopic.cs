using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Spindle speeds.</summary>
internal static class SpeedTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var speed = q.InUnit("m/min", "ft/min");
        var turns = q.InUnit("rpm");
        var teeth = q.InUnit("teeth");
        var cutter = Cutter(q);
        q.Has("hss", "high-speed", "cobalt");
        var operation = OperationOf(q);
        var metal = q.TakeMetal();
        var thread = operation == Operation.Tap ? ThreadFinder.Take(q) : null;
        q.Has("dia", "diameter", "cutter", "spindle", "speed", "speeds", "feed", "feeds", "bar", "round");
        var size = thread?.MajorMm ?? Named(q) ?? q.Length();
        if (size is null && speed is null && metal is not null)
        {
            Only(r, metal, operation, cutter);
            return;
        }

        var diameter = Question.Need(size, "the diameter");
        if (speed is { } v)
        {
            r.Add("spindle speed", Speeds.Rpm(v, diameter), "rpm", Speeds.Basis, $"1000 v / (pi D) = 1000 x {N(v, 2)} / (pi x {N(diameter)}) = {N(Speeds.Rpm(v, diameter), 1)}");
            return;
        }

        if (turns is { } n)
        {
            var cutting = Speeds.CuttingSpeed(n, diameter);
            r.Add("cutting speed", cutting, "m/min", Speeds.Basis, $"pi D n / 1000 = pi x {N(diameter)} x {N(n)} / 1000 = {N(cutting, 2)} m/min");
            return;
        }

        if (metal is null)
        {
            throw new UnansweredException("the metal (or a cutting speed, such as 100 sfm or 30 m/min) is missing");
        }

        Ranges(r, metal, operation, cutter, diameter);
        Feeds(r, metal, operation, cutter, diameter, teeth);
        foreach (var caution in metal.Cautions)
        {
            r.Caution(caution);
        }

        if (operation == Operation.Saw)
        {
            r.Caution("A slitting saw grabs: conventional cut, no backlash, work held right under the slot, start at the low end.");
        }
    }

    private static void Only(ReplyBuilder r, Metal metal, Operation operation, CutterMaterial cutter)
    {
        var (range, basis) = SpeedTable.Of(metal, operation, cutter);
        r.Add("cutting speed, start", range.LowMPerMin, "m/min", basis, "30 % either way", []).Add("cutting speed, most", range.HighMPerMin, "m/min", basis, "30 % either way", [])
            .Note($"For {Words(operation)}, {metal.Name}; say the diameter for the spindle speed.");
        foreach (var caution in metal.Cautions)
        {
            r.Caution(caution);
        }
    }

    private static CutterMaterial Cutter(Question q) =>
        q.Has("carbide", "tct", "hm", "tungsten") ? CutterMaterial.Carbide : q.Has("carbon-steel", "carbonsteel") ? CutterMaterial.CarbonSteel
        : CutterMaterial.HighSpeedSteel;

    private static Operation OperationOf(Question q)
    {
        if (q.Has("ream", "reamer", "reaming"))
        {
            return Operation.Ream;
        }

        if (q.Has("tap", "tapping"))
        {
            return Operation.Tap;
        }

        if (q.Has("countersink", "counterbore", "csk", "countersinking"))
        {
            return Operation.Countersink;
        }

        if (q.Has("saw", "slitting", "sawing"))
        {
            return Operation.Saw;
        }

        if (q.Has("drill", "drilling", "bit", "twist", "spot"))
        {
            return Operation.Drill;
        }

        if (q.Has("turn", "turning", "lathe", "bore", "boring"))
        {
            return q.Has("finish", "finishing", "fine") ? Operation.TurnFinish : Operation.TurnRough;
        }

        q.Has("end", "mill", "endmill", "milling", "slot", "slotting", "face", "facemill", "flycutter", "fly", "ball", "cutter", "slotdrill", "nose", "rpm", "revs", "surface");
        return Operation.Mill;
    }

    private static string Words(Operation operation) =>
        operation switch { Operation.TurnRough => "turning, rough", Operation.TurnFinish => "turning, finish", _ => operation.ToString().ToLowerInvariant() };

    private static double? Named(Question q)
    {
        var token = q.Tokens.FirstOrDefault(t => !t.Used && t.Raw.StartsWith('#'));
        if (token is null || Drills.DrillTable.Find(token.Raw) is not { } drill)
        {
            return null;
        }

        token.Used = true;
        return drill.DiameterMm;
    }

    private static void Ranges(ReplyBuilder r, Metal metal, Operation operation, CutterMaterial cutter, double diameter)
    {
        var (range, basis) = SpeedTable.Of(metal, operation, cutter);
        const string Off = "30 % either way; the set-up decides";
        var low = Speeds.Rpm(range.LowMPerMin, diameter);
        var high = Speeds.Rpm(range.HighMPerMin, diameter);
        r.Say("for", $"{Words(operation)}, {cutter switch { CutterMaterial.Carbide => "carbide", CutterMaterial.CarbonSteel => "carbon steel", _ => "high-speed steel" }}, {metal.Name} ({metal.Group})", basis)
            .Add("cutting speed, start", range.LowMPerMin, "m/min", basis, Off, [])
            .Add("cutting speed, most", range.HighMPerMin, "m/min", basis, Off, [])
            .Add("spindle speed, start", low, "rpm", Speeds.Basis, Off, [$"1000 v / (pi D) = 1000 x {N(range.LowMPerMin, 1)} / (pi x {N(diameter, 3)}) = {N(low, 0)}"])
            .Add("spindle speed, most", high, "rpm", Speeds.Basis, Off, [$"1000 x {N(range.HighMPerMin, 1)} / (pi x {N(diameter, 3)}) = {N(high, 0)}"]);
        r.Note("Take the machine's nearest speed below; hand feed, a weak machine or a long cutter want the low end. The cutter maker's data come first.");
        if (diameter < 3 && (operation is Operation.Mill or Operation.Saw))
        {
            r.Caution("A cutter this small breaks sooner than it burns: if it turns blue it is rubbing; feed it, slow down, use fluid.");
        }
    }

    private static void Feeds(ReplyBuilder r, Metal metal, Operation operation, CutterMaterial cutter, double diameter, double? asked)
    {
        var practice = new Basis("common practice", Evidence.CommonPractice);
        var rpm = Speeds.Rpm(SpeedTable.Of(metal, operation, cutter).Range.LowMPerMin, diameter);
        if (operation == Operation.Drill)
        {
            var feed = Speeds.StartingFeedPerTurn(diameter);
            r.Add("feed to start with", feed, "mm/rev", practice, "factor of two", [$"1.5 % of the diameter"])
                .Add("feed at the starting speed", feed * rpm, "mm/min", practice, "factor of two", [$"{N(feed)} x {N(rpm, 0)}"]);
        }
        else if (operation == Operation.Mill)
        {
            var teeth = asked ?? 2;
            var feed = Speeds.StartingFeedPerTooth(diameter);
            r.Add("feed to start with", feed, "mm/tooth", practice, "factor of two", ["0.6 % of the diameter"])
                .Add("feed at the starting speed", feed * teeth * rpm, "mm/min", practice, "factor of two", [$"{N(feed)} x {N(teeth)} teeth x {N(rpm, 0)}"]);
            if (asked is null)
            {
                r.Note("Two teeth were taken; say '4 flutes' for another.");
            }
        }
    }
}
