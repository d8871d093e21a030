namespace Handwheel.Trade.Asking;

/// <summary>One word or number of a question.</summary>
internal sealed class Token
{
    /// <summary>As typed.</summary>
    internal required string Raw { get; init; }

    /// <summary>Lower case.</summary>
    internal string Low => Raw.ToLowerInvariant();

    /// <summary>Whether it is a number.</summary>
    internal bool IsNumber { get; init; }

    /// <summary>The number.</summary>
    internal double Value { get; init; }

    /// <summary>Its unit; empty where none was typed.</summary>
    internal string Unit { get; set; } = string.Empty;

    /// <summary>Whether it was typed as a fraction.</summary>
    internal bool IsFraction { get; init; }

    /// <summary>Digits typed after the point.</summary>
    internal int Decimals { get; init; }

    /// <summary>Whether an answer has made use of it.</summary>
    internal bool Used { get; set; }
}
