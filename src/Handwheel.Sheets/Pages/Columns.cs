namespace Handwheel.Sheets.Pages;

/// <summary>How a block divides the width of a page.</summary>
internal enum Columns
{
    /// <summary>A picture at the left, a list at the right: 114 and 67 mm.</summary>
    Overview,

    /// <summary>Picture and workings at the left, readings at the right: 64 and 118.4 mm.</summary>
    Step,

    /// <summary>One column of 186 mm.</summary>
    Whole,
}
