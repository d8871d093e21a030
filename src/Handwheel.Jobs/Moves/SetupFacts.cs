namespace Handwheel.Jobs.Moves;

/// <summary>
/// How the work is held, as it truly stands. Holding frame as planned: Z up along the spindle, X long travel, Y cross travel; its origin is where the
/// holding&#39;s zero is meant to be. Millimetres and degrees.
/// </summary>
public sealed record SetupFacts
{
    /// <summary>The part&#39;s side up: <c>top</c>, <c>underside</c>, <c>front</c>, <c>back</c>, <c>left</c>, <c>right</c>.</summary>
    public required string Up { get; init; }

    /// <summary>Turn about Z after that, degrees.</summary>
    public double Turn { get; init; }

    /// <summary>Tilt about holding X after that, degrees.</summary>
    public double TiltX { get; init; }

    /// <summary>Tilt about holding Y after that, degrees.</summary>
    public double TiltY { get; init; }

    /// <summary>Then moved: where the part frame&#39;s origin comes to lie in the holding frame, theta 0.</summary>
    public required Place3 PartOrigin { get; init; }

    /// <summary>The rotary or indexer; null: none, T never moves.</summary>
    public RotaryFacts? Rotary { get; init; }

    /// <summary>The solids that hold the work and stand round it, holding frame, theta 0.</summary>
    public required IReadOnlyList<FixtureFacts> Fixtures { get; init; }

    /// <summary>The four axes as set up.</summary>
    public required AxesFacts Axes { get; init; }

    /// <summary>Axes whose zero was carried over from the holding before, not found anew: any of <c>x</c>, <c>y</c>, <c>z</c>, <c>t</c>.</summary>
    public IReadOnlyList<string> Carried { get; init; } = [];
}
