namespace Handwheel.Jobs.Reading;

/// <summary>What a token is.</summary>
internal enum TokenKind
{
    /// <summary>A word: starts with a letter of any script.</summary>
    Word,

    /// <summary>Digits, with a point perhaps.</summary>
    Number,

    /// <summary>A sign.</summary>
    Sign,

    /// <summary>Digits with a comma and digits: <c>0,5</c>.</summary>
    Comma,

    /// <summary>Something that starts as a number and is none: <c>1.2.3</c>, <c>1e300</c>.</summary>
    Broken,
}
