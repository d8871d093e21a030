using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary>Typed moves: <c>turn rotary clockwise once at x 5, y 0, z -8 with em10</c>, <c>move x to 12.5</c>, <c>plunge z to -3</c>. Readings of the holding.</summary>
public sealed record MoveStep : Step
{
    /// <summary>Reading moved to or stood at.</summary>
    public Typed? X { get; init; }

    /// <summary>Reading.</summary>
    public Typed? Y { get; init; }

    /// <summary>Reading.</summary>
    public Typed? Z { get; init; }

    /// <summary>Rotary&#39;s reading typed (<c>to 90 deg</c>), turned into theta by its sense: counterclockwise-positive, radians, from holding zero, 0 to a turn as typed; null none.</summary>
    public Typed? T { get; init; }

    /// <summary>Whether the line turns the rotary.</summary>
    public bool TurnsRotary { get; init; }

    /// <summary>Whether it turns it clockwise from above.</summary>
    public bool Clockwise { get; init; }

    /// <summary>Whole turns, for <c>once</c>, <c>twice</c>.</summary>
    public double Turns { get; init; }

    /// <summary>Whether it is meant to cut (<c>cut</c>, <c>plunge</c>, <c>turn</c>) or to go clear (<c>move</c>).</summary>
    public bool Cutting { get; init; }
}
