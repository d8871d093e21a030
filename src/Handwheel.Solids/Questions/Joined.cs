namespace Handwheel.Solids.Questions;

/// <summary>Whether two places belong to one piece of metal.</summary>
public enum Joined
{
    /// <summary>One piece: a chain of straight lines wholly in metal joins them.</summary>
    One,

    /// <summary>Two pieces: even with every gap up to four spacings along the rays filled they stay apart.</summary>
    Apart,

    /// <summary>Too close to tell at this spacing, or a place is not in metal.</summary>
    Undecided,
}
