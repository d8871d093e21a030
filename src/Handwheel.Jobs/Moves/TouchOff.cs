namespace Handwheel.Jobs.Moves;

/// <summary>
/// A zero is found. The proof finds where the metal truly is: the readout then says <see cref="SetTo"/> at that true place, so a wrong value or a
/// surface that is not where it was thought to be displaces every later cut.
/// </summary>
public sealed record TouchOff : CourseEvent
{
    /// <summary>The axis set (T: the jaw swept parallel, the dial set).</summary>
    public required Axis Axis { get; init; }

    /// <summary>On what: <c>rotary centre</c>, <c>metal</c> (the stock as it then is), <c>fixture</c> (its name in <see cref="Surface"/>), <c>axis</c> (a hole or boss, swept or pinned).</summary>
    public required string On { get; init; }

    /// <summary>The surface in words: <c>bar top</c>, <c>hub top</c>, <c>fixed jaw</c>.</summary>
    public required string Surface { get; init; }

    /// <summary>Where the spindle stands as it touches (readings as they are meant; the axis touched along is left out of account). For <c>axis</c>: the hole&#39;s or boss&#39;s axis.</summary>
    public required Place3 At { get; init; }

    /// <summary>Which way it comes against the metal along its axis: -1 (downwards, towards minus) or +1.</summary>
    public int Towards { get; init; } = -1;

    /// <summary>
    /// Which way the axis was last cranked as its dial is set, so that the slack is taken up on that side: +1 come to from minus, -1 from plus. 0: not told; then
    /// <see cref="Towards"/> on metal or a fixture, and on a centre, an axis or a turn the way the axis is next cranked. On a readout it is nothing.
    /// </summary>
    public int Way { get; init; }

    /// <summary>What touches: the cutter&#39;s name, or <c>finder</c>, <c>pin</c>, <c>indicator</c>, <c>block</c>.</summary>
    public required string With { get; init; }

    /// <summary>Half the thickness that stands between spindle axis and metal sideways (half a finder or cutter); 0 along Z.</summary>
    public double Half { get; init; }

    /// <summary>Thickness of paper, shim or block between.</summary>
    public double Paper { get; init; }

    /// <summary>For a saw: which of its faces touches, <c>lower</c> or <c>upper</c>; empty else.</summary>
    public string Face { get; init; } = string.Empty;

    /// <summary>What the readout is set to there.</summary>
    public required double SetTo { get; init; }
}
