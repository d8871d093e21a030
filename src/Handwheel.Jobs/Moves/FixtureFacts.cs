using System.Text.Json.Serialization;

namespace Handwheel.Jobs.Moves;

/// <summary>One solid that holds the work or stands round it: a block, or a round standing on Z. Holding frame at theta 0, millimetres.</summary>
public sealed record FixtureFacts
{
    /// <summary>What it is: <c>fixed jaw</c>, <c>moving jaw</c>, <c>vise bed</c>, <c>parallel</c>, <c>rotary</c>, <c>table</c>, <c>clamp</c>, <c>stud</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it presses on the work (jaws, clamps) and so counts as what holds.</summary>
    public bool Holds { get; init; }

    /// <summary>With how much it presses, newtons (a vise or chuck with all its jaws together); 0: not said.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public double Press { get; init; }

    /// <summary>Whether it turns with the rotary.</summary>
    public bool Turns { get; init; }

    /// <summary>Whether it may be cut into (soft jaws, packing).</summary>
    public bool Soft { get; init; }

    /// <summary>Lowest corner of a block; centre of a round&#39;s lower face.</summary>
    public required Place3 Least { get; init; }

    /// <summary>Highest corner of a block; centre of a round&#39;s upper face.</summary>
    public required Place3 Most { get; init; }

    /// <summary>A round&#39;s diameter; 0: a block.</summary>
    public double Across { get; init; }

    /// <summary>A round&#39;s bore, for what stands all round the work (a chuck&#39;s jaws); 0: solid.</summary>
    public double Bore { get; init; }
}
