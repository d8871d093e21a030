namespace Handwheel.Quantities;

/// <summary>Which way a value is rounded to a dial's step.</summary>
public enum Toward
{
    /// <summary>To the nearest step; a tie goes away from zero.</summary>
    Nearest,

    /// <summary>To the next step that is not less.</summary>
    Plus,

    /// <summary>To the next step that is not greater.</summary>
    Minus,
}
