using System.Text.Json.Nodes;

namespace Handwheel.Trade.Tests.Known;

/// <summary>One value of a source, with what it takes to work it out.</summary>
internal sealed record KnownValue(string Area, string Statement, JsonObject Inputs, JsonNode Expected, JsonObject Tolerance, string Source, string Evidence)
{
    public double In(string name) => Inputs[name]!.GetValue<double>();

    public int Whole(string name) => Inputs[name]!.GetValue<int>();

    public string Word(string name) => Inputs[name]!.GetValue<string>();

    public double[] Numbers(string name) => [.. Inputs[name]!.AsArray().Select(n => n!.GetValue<double>())];

    public int[] Wholes(string name) => [.. Inputs[name]!.AsArray().Select(n => n!.GetValue<int>())];

    public bool Says(string words) => Statement.Contains(words, StringComparison.Ordinal);
}
