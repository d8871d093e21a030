using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>saw under arm with saw1, from near side, web 0.3 along far flank, allow 0.1</c>.</summary>
public sealed record SawStep : Step
{
    /// <summary>The feature whose underside is sawn under.</summary>
    public string? Under { get; init; }

    /// <summary>The slit that is sawn: a block cut away that lies level, as deep from the side the saw comes from.</summary>
    public string? Slit { get; init; }

    /// <summary>The height its upper face stands at, where typed instead.</summary>
    public Typed? At { get; init; }

    /// <summary>The side it comes from: <c>near</c>, <c>far</c>, <c>left</c>, <c>right</c>.</summary>
    public required string From { get; init; }

    /// <summary>Thickness of the web left; null: sawn right through.</summary>
    public Typed? Web { get; init; }

    /// <summary>Where the web is left: <c>far flank</c>, <c>near flank</c>, <c>far side</c>, <c>near side</c>, <c>left end</c>, <c>right end</c>.</summary>
    public string? WebAlong { get; init; }

    /// <summary>Metal left under the kept face.</summary>
    public Typed? Allow { get; init; }
}
