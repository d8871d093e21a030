namespace Handwheel.Jobs.Reading;

/// <summary>One token of a line.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">As typed (dashes and quotes of other kinds made plain).</param>
/// <param name="Line">Its line, from 1.</param>
/// <param name="Start">Where it starts in its line, characters from 0.</param>
/// <param name="Length">Its length in characters.</param>
/// <param name="Spaced">Whether a space stands before it.</param>
internal readonly record struct Token(TokenKind Kind, string Text, int Line, int Start, int Length, bool Spaced)
{
    /// <summary>Where it ends.</summary>
    public int End => Start + Length;

    public bool Is(string word) => Text.Equals(word, StringComparison.OrdinalIgnoreCase);
}
