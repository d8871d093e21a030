namespace Handwheel.Trade;

/// <summary>What a number rests on, from the firmest to the weakest.</summary>
public enum Evidence
{
    /// <summary>A formula that a standard, or plane geometry and statics, gives.</summary>
    StandardFormula,

    /// <summary>A table of a standard or handbook, held against a printed or published copy of it.</summary>
    HandbookTable,

    /// <summary>What the trade does; no printed source.</summary>
    CommonPractice,

    /// <summary>Remembered; nobody confirmed it against a printed page.</summary>
    Memory,
}
