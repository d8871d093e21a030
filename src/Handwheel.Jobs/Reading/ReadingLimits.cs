namespace Handwheel.Jobs.Reading;

/// <summary>How much the reader takes on, so that any text is answered in bounded time and memory.</summary>
public static class ReadingLimits
{
    /// <summary>Most characters of one document; what follows is not read.</summary>
    public const int Characters = 2_000_000;

    /// <summary>Most lines of one document.</summary>
    public const int Lines = 20_000;

    /// <summary>Most characters of one line.</summary>
    public const int LineCharacters = 2_000;

    /// <summary>Most findings of one reading; the last one says that reading stopped.</summary>
    public const int Findings = 100;

    /// <summary>Deepest parentheses of a sum.</summary>
    public const int Depth = 40;

    /// <summary>Most places of one repeat.</summary>
    public const int Places = 1_000;

    /// <summary>Greatest length, millimetres (a hundred metres).</summary>
    public const double Length = 100_000;
}
