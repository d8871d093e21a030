using System.Text.Json.Nodes;

namespace Handwheel.Trade.Tests.Known;

/// <summary>The known values carried with the tests.</summary>
internal static class KnownValues
{
    public static IReadOnlyList<KnownValue> All { get; } = Read("known-values");

    private static KnownValue[] Read(string name)
    {
        var corrected = Parse("known-values-corrected").ToDictionary(n => n!["statement"]!.GetValue<string>(), n => n!["expected"]!);
        return
        [
            .. Parse(name).Select(n => n!.AsObject()).Select(o => new KnownValue(
                o["area"]!.GetValue<string>(),
                o["statement"]!.GetValue<string>(),
                o["inputs"]!.AsObject(),
                corrected.GetValueOrDefault(o["statement"]!.GetValue<string>(), o["expected"]!),
                o["tolerance"]!.AsObject(),
                o["source"]!.GetValue<string>(),
                o["evidence"]!.GetValue<string>())),
        ];
    }

    private static JsonArray Parse(string name)
    {
        using var stream = typeof(KnownValues).Assembly.GetManifestResourceStream(name)!;
        return JsonNode.Parse(stream)!.AsArray();
    }
}
