namespace Handwheel.Trade.Asking;

/// <summary>Words that carry no meaning in a question.</summary>
internal static class Fillers
{
    private static readonly HashSet<string> Words = new(StringComparer.Ordinal)
    {
        "a", "an", "the", "of", "for", "to", "in", "on", "at", "by", "with", "from", "into", "is", "are", "be", "do", "does", "did", "i", "my", "me", "we", "it", "its", "this",
        "that", "what", "which", "how", "much", "many", "will", "would", "should", "can", "could", "need", "needs", "want", "use", "using", "get", "give", "find", "please", "and", "or", "if",
        "when", "x", "per", "as", "so", "then", "than", "there", "have", "has", "per", "some", "any", "big", "right", "correct", "good", "best", "about", "going", "go", "put", "make",
        "out", "up", "-", "=", "/", "+", "let", "tell", "show", "value", "equal", "made", "got", "using", "just", "take", "takes", "through", "over", "s", "whats", "what's", "you", "largest", "biggest", "smallest", "without", "set", "inch", "inches", "size", "sizes", "hard", "meat", "stated", "otherwise", "unless", "mean", "why", "where", "quick",
        "maximum", "minimum", "max", "required", "proper", "recommended", "suitable", "sized", "mine", "these", "those", "your", "was", "were", "am",
    };

    /// <summary>Whether a word is one.</summary>
    /// <param name="word">Lower case.</param>
    /// <returns>True where it is.</returns>
    internal static bool Contains(string word) => Words.Contains(word);
}
