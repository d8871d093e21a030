using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Shops;

/// <summary>An indexer: a rotary with its axis lying along X.</summary>
public sealed record Indexer
{
    /// <summary>Turns of the crank for one of its spindle; 1 for direct indexing.</summary>
    public required double Worm { get; init; }

    /// <summary>Hole circles of its plates.</summary>
    public IReadOnlyList<int> Circles { get; init; } = [];

    /// <summary>Dial step, radians; 0 where it has only plates.</summary>
    public double DialStep { get; init; }

    /// <summary>Height of its axis above the milling table.</summary>
    public double CentreHigh { get; init; }

    /// <summary>The greatest diameter its chuck or collet takes.</summary>
    public double Takes { get; init; }

    /// <summary>Where it was typed.</summary>
    public required SourceSpan Where { get; init; }
}
