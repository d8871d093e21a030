namespace Handwheel.Trade.Asking;

/// <summary>Raised inside a topic when the question lacks something; turned into a refusal at the border.</summary>
internal sealed class UnansweredException : Exception
{
    /// <summary>Makes one.</summary>
    public UnansweredException()
    {
    }

    /// <summary>Makes one.</summary>
    /// <param name="message">What is missing.</param>
    public UnansweredException(string message)
        : base(message)
    {
    }

    /// <summary>Makes one.</summary>
    /// <param name="message">What is missing.</param>
    /// <param name="innerException">Why.</param>
    public UnansweredException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Known words near to the one that was not.</summary>
    internal IReadOnlyList<string> Nearest { get; init; } = [];
}
