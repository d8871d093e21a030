namespace Handwheel.Plan.Workings;

/// <summary>How a reading was arrived at, as a line a person can check. Immutable; workings form a graph that ends at typed numbers and rules.</summary>
public sealed record Working
{
    /// <summary>What it gives, in words: <c>X where the cutter stops clear of the hub</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The rule in letters: <c>sqrt((hub/2 + em10/2 + clear)^2 - y^2)</c>.</summary>
    public required string Formula { get; init; }

    /// <summary>The rule with its numbers put in, in the job&#39;s unit: <c>sqrt((9.975/2 + 10/2 + 0.3)^2 - 3^2)</c>.</summary>
    public required string PutIn
    {
        get;
        init => field = Terms.Bracketed(value);
    }

    /// <summary>The result in full precision; millimetres or degrees.</summary>
    public required double Exact { get; init; }

    /// <summary>The result as used: rounded once to the readout or dial where it is a reading, else <see cref="Exact"/>.</summary>
    public required double Result { get; init; }

    /// <summary><c>mm</c>, <c>deg</c>, <c>rpm</c>, <c>mm/min</c> (<c>in/min</c> in an inch job), <c>s</c>, <c>1</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>What rounding did: <c>9.8404 to 0.005, towards metal left: 0.0046</c>; empty where nothing was rounded.</summary>
    public string Rounded { get; init; } = string.Empty;

    /// <summary>The rule&#39;s source: a standard, a handbook&#39;s chapter, <c>plane geometry</c>, or <c>common practice</c>.</summary>
    public required string Source { get; init; }

    /// <summary>The numbers it rests on.</summary>
    public required IReadOnlyList<WorkingInput> Inputs { get; init; }

    /// <summary>What to know beside it; empty where nothing.</summary>
    public string Note { get; init; } = string.Empty;

    // Whether it is a place clear of everything, which need not be met closely.
    internal bool IsClear { get; init; }
}
