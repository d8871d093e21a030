namespace Handwheel.Solids.Questions;

/// <summary>What is certain about two solids.</summary>
public enum StrikeVerdict
{
    /// <summary>They stay apart by at least the clearance given.</summary>
    Clear,

    /// <summary>They overlap.</summary>
    Strikes,

    /// <summary>They touch or pass so close that nothing is certain.</summary>
    Undecided,
}
