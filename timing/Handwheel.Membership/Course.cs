using System.Text.Json;

namespace Handwheel.Membership;

/// <summary>A fixture as a moves file has it, holding frame at theta 0.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Turns">Whether it turns with the rotary.</param>
/// <param name="Soft">Whether it may be cut.</param>
/// <param name="Holds">Whether it presses on the work.</param>
/// <param name="Least">Lowest corner, or a round&#39;s lower centre.</param>
/// <param name="Most">Highest corner, or a round&#39;s upper centre.</param>
/// <param name="Across">A round&#39;s diameter; 0: a block.</param>
/// <param name="Bore">A ring&#39;s bore.</param>
public sealed record Fixture(string Name, bool Turns, bool Soft, bool Holds, Vec Least, Vec Most, double Across, double Bore);

/// <summary>One axis as set up.</summary>
/// <param name="Readout">Whether a readout shows the true place.</param>
/// <param name="Backlash">Its slack.</param>
/// <param name="Least">Least reading.</param>
/// <param name="Most">Greatest reading.</param>
public sealed record AxisSetting(bool Readout, double Backlash, double? Least, double? Most);

/// <summary>How the work is held.</summary>
/// <param name="FromPart">From the part frame to the holding frame at theta 0.</param>
/// <param name="Turns">Whether a rotary or indexer is there.</param>
/// <param name="Lies">Whether its axis lies along X.</param>
/// <param name="Centre">A place on its axis.</param>
/// <param name="Fixtures">What stands round.</param>
/// <param name="Axes">X, Y, Z, T.</param>
/// <param name="Carried">Axes whose zero was carried over.</param>
public sealed record Setting(Frame FromPart, bool Turns, bool Lies, Vec Centre, IReadOnlyList<Fixture> Fixtures, AxisSetting[] Axes, string[] Carried)
{
    /// <summary>The turn of the rotary alone.</summary>
    /// <param name="theta">Degrees.</param>
    /// <returns>From the holding frame at theta 0.</returns>
    public Frame Turned(double theta) => !Turns || theta == 0 ? Frame.Still : Frame.Turn(Lies ? 'X' : 'Z', theta, Centre);
}

/// <summary>A moves file read with nothing but the JSON standard&#39;s reader.</summary>
/// <param name="Stages">Stages: their setting (null by hand) and steps.</param>
public sealed record Course(IReadOnlyList<(Setting? Setting, IReadOnlyList<(string Id, IReadOnlyList<JsonElement> Events)> Steps)> Stages)
{
    public static Course Read(string json)
    {
        var root = JsonDocument.Parse(json).RootElement.GetProperty("course");
        return new([.. root.GetProperty("stages").EnumerateArray().Select(s => (
            s.TryGetProperty("setup", out var setup) && setup.ValueKind == JsonValueKind.Object ? SettingOf(setup) : null,
            (IReadOnlyList<(string, IReadOnlyList<JsonElement>)>)[.. s.GetProperty("steps").EnumerateArray().Select(p => (
                p.GetProperty("id").GetString()!,
                (IReadOnlyList<JsonElement>)[.. p.GetProperty("events").EnumerateArray()]))]))]);
    }

    public static double Number(JsonElement e, string name, double otherwise = 0) =>
        e.TryGetProperty(name, out var v) && v.ValueKind == JsonValueKind.Number ? v.GetDouble() : otherwise;

    public static bool Flag(JsonElement e, string name) => e.TryGetProperty(name, out var v) && v.ValueKind == JsonValueKind.True;

    public static string Word(JsonElement e, string name) => e.TryGetProperty(name, out var v) && v.ValueKind == JsonValueKind.String ? v.GetString()! : string.Empty;

    public static Vec Place(JsonElement e, string name) =>
        e.TryGetProperty(name, out var v) && v.ValueKind == JsonValueKind.Object ? new(Number(v, "x"), Number(v, "y"), Number(v, "z")) : default;

    private static Setting SettingOf(JsonElement s)
    {
        var side = Word(s, "up") switch
        {
            "underside" => Frame.Turn('X', 180),
            "front" => Frame.Turn('X', -90),
            "back" => Frame.Turn('X', 90),
            "right" => Frame.Turn('Y', -90),
            "left" => Frame.Turn('Y', 90),
            _ => Frame.Still,
        };
        var pose = side
            .Then(Frame.Turn('Z', Number(s, "turn")))
            .Then(Frame.Turn('X', Number(s, "tiltX")))
            .Then(Frame.Turn('Y', Number(s, "tiltY")))
            .Then(Frame.Shift(Place(s, "partOrigin")));
        var turns = s.TryGetProperty("rotary", out var rotary) && rotary.ValueKind == JsonValueKind.Object;
        var axes = s.GetProperty("axes");
        return new(
            pose,
            turns,
            turns && Flag(rotary, "lies"),
            turns ? new(Number(rotary, "x"), Number(rotary, "y"), Number(rotary, "z")) : default,
            [.. s.GetProperty("fixtures").EnumerateArray().Select(f => new Fixture(
                Word(f, "name"), Flag(f, "turns"), Flag(f, "soft"), Flag(f, "holds"), Place(f, "least"), Place(f, "most"), Number(f, "across"), Number(f, "bore")))],
            [.. new[] { "x", "y", "z", "t" }.Select(a => AxisOf(axes.GetProperty(a)))],
            s.TryGetProperty("carried", out var carried) && carried.ValueKind == JsonValueKind.Array ? [.. carried.EnumerateArray().Select(c => c.GetString()!)] : []);
    }

    private static AxisSetting AxisOf(JsonElement a) => new(
        Flag(a, "readout"),
        Number(a, "backlash"),
        double.IsNaN(Number(a, "least", double.NaN)) ? null : Number(a, "least"),
        double.IsNaN(Number(a, "most", double.NaN)) ? null : Number(a, "most"));
}
