using Handwheel.Trade.Geometry;
using Handwheel.Trade.Keys;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Keys.</summary>
internal static class KeyTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        if (q.Has("woodruff", "half-moon", "halfmoon"))
        {
            Woodruff(q, r);
            return;
        }

        var torque = q.InUnit("N m", "lbf in", "ft lbf") * 1000;
        var flat = q.Has("flat", "rectangular");
        q.Has("shaft", "square", "keyway", "keyseat", "slot", "diameter", "dia", "bore", "hub", "size", "parallel", "metric", "inch");
        var sizes = q.Labelled(("width", ["wide", "width"]), ("length", ["long", "length"]));
        double? length = sizes.TryGetValue("length", out var along) ? q.Mm(along) : null;
        var named = sizes.ContainsKey("width") ? q.Labelled(("shaft", ["shaft"])) : q.Labelled(("shaft", ["shaft"]), ("key", ["key"]));
        if (named.Count > 0 && !named.ContainsKey("shaft") && named.TryGetValue("key", out var lone))
        {
            named.Remove("key");
            lone.Used = false;
        }

        var wide = sizes.GetValueOrDefault("width") ?? named.GetValueOrDefault("key");

        var shaft = named.TryGetValue("shaft", out var s) ? q.Mm(s) : Question.Need(q.Length(), "the shaft's diameter");
        if (!q.Inch)
        {
            Load(q, r, shaft, Metric(r, shaft), torque, length);
            return;
        }

        var key = wide is { } w ? KeyTable.InchKey(shaft / 25.4, q.Mm(w) / 25.4, q.Mm(w) / 25.4) : KeyTable.OfInch(shaft / 25.4, !flat)
            ?? throw new UnansweredException($"ASME B17.1 gives no {(flat ? "flat" : "square")} key for a shaft of {r.L(shaft)} (over 5/16 to 6 1/2 in)");
        Inch(r, shaft, key);
        Load(q, r, shaft, key, torque, length);
    }

    private static void Load(Question q, ReplyBuilder r, double shaft, KeySize key, double? torque, double? length)
    {
        q.Has("torque", "long", "length", "carry", "carries", "load", "strong", "hold");
        if (torque is not { } t)
        {
            return;
        }

        var force = KeyStrength.ForceN(t, shaft);
        var along = length ?? 1.5 * shaft;
        r.Add("force on the key", force, "N", KeyStrength.Basis, "25 %", [$"2 T / D = 2 x {N(t / 1000, 2)} N m / {r.L(shaft)}"])
            .Add("shear stress in the key", KeyStrength.ShearMPa(force, key.Width, along), "MPa", KeyStrength.Basis, "25 %", [$"F / (w l), l = {r.L(along)}"])
            .Add("pressure on its flank", KeyStrength.BearingMPa(force, key.Height, along), "MPa", KeyStrength.Basis, "25 %", ["F / (h/2 l)"])
            .Caution(TopicEvidence.Estimate);
        if (length is null)
        {
            r.Note("No length was said; one and a half diameters was taken.");
        }
    }

    private static void Inch(ReplyBuilder r, double shaft, KeySize key)
    {
        var arc = Shapes.KeyseatArc(shaft, key.Width);
        r.Add("key width", key.Width, "mm", key.Basis).Add("key height", key.Height, "mm", key.Basis)
            .Add("height of the arc over the keyseat (Y)", arc, "mm", key.Basis, $"(D - sqrt(D^2 - W^2)) / 2 = {r.L(arc)}")
            .Add("bottom of keyseat to the opposite side (S)", key.Bottom, "mm", key.Basis, $"D - Y - H/2 = {r.L(shaft)} - {r.L(arc)} - {r.L(key.Height / 2)} = {r.L(key.Bottom)}")
            .Add("top of keyway to the opposite side of the bore (T)", key.Top, "mm", key.Basis, $"D - Y + H/2 + 0.005 in = {r.L(key.Top)}")
            .Add("depth to feed from the top of the shaft", shaft - key.Bottom, "mm", key.Basis, $"D - S = {r.L(shaft - key.Bottom)}");
    }

    private static KeySize Metric(ReplyBuilder r, double shaft)
    {
        var key = KeyTable.OfMetric(shaft) ?? throw new UnansweredException($"DIN 6885-1 gives no key for a shaft of {N(shaft)} mm (over 6 to 500){(shaft <= 6 ? "; for inches write 2 in or 1 1/2" : string.Empty)}");
        r.Add("key width", key.Width, "mm", key.Basis).Add("key height", key.Height, "mm", key.Basis)
            .Add("depth in the shaft (t1)", key.ShaftDepth, "mm", key.Basis).Add("depth in the hub (t2)", key.HubDepth, "mm", key.Basis)
            .Add("bottom of keyseat to the opposite side", key.Bottom, "mm", key.Basis, $"d - t1 = {N(shaft)} - {N(key.ShaftDepth)}")
            .Add("top of keyway to the opposite side of the bore", key.Top, "mm", key.Basis, $"d + t2 = {N(shaft)} + {N(key.HubDepth)}")
            .Say("keyseat width tolerance", "P9 tight; N9 in the shaft and JS9 in the hub normal; H9 and D10 sliding", key.Basis);
        return key;
    }

    private static void Woodruff(Question q, ReplyBuilder r)
    {
        q.Has("key", "keyseat", "cutter", "no", "number", "slot");
        var token = q.Tokens.FirstOrDefault(t => !t.Used && (t.IsNumber || t.Raw.StartsWith('#') || t.Raw.Contains('x', StringComparison.OrdinalIgnoreCase)))
            ?? throw new UnansweredException("the key's number is missing, such as 404, or its width by height, such as 5x6.5");
        token.Used = true;
        var name = token.Raw.TrimStart('#').ToLowerInvariant();
        var key = KeyTable.WoodruffKeys.FirstOrDefault(k => k.Name == name)
            ?? throw new UnansweredException($"there is no Woodruff key {token.Raw}; known are {string.Join(", ", KeyTable.WoodruffKeys.Select(k => k.Name))}");
        q.Inch = !name.Contains('x', StringComparison.Ordinal);
        r.Add("width", key.Width, "mm", key.Basis, q.Inch ? "the leading figures count 1/32 in" : string.Empty)
            .Add("cutter diameter", key.Diameter, "mm", key.Basis, q.Inch ? "the last two figures count 1/8 in" : string.Empty)
            .Add("key height", key.Height, "mm", key.Basis)
            .Add("depth of keyseat at its side", key.ShaftDepth, "mm", q.Inch ? KeyTable.WoodruffDepthBasis : key.Basis, q.Inch ? $"least height - width/2 = {r.L(key.Height)} - 0.005 in - {r.L(key.Width / 2)} = {r.L(key.ShaftDepth)}; 0 to + 0.005 in" : "0 to + 0.1 mm")
            .Add("key stands out of the shaft", key.Height - key.ShaftDepth, "mm", key.Basis);
    }
}
