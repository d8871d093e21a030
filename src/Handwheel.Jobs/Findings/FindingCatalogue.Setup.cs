using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Findings;

/// <summary>Findings about what is set up: the moves file, zeros, what is on hand, travels, what holds.</summary>
public static partial class FindingCatalogue
{
    /// <summary>A moves file cannot be read.</summary>
    /// <param name="where">The place in the file.</param>
    /// <param name="why">What was read and what was expected.</param>
    /// <returns>A halt <c>moves-file</c>.</returns>
    public static Finding MovesFileUnread(SourceSpan where, string why) => new()
    {
        Grade = Grade.Halt,
        Code = "moves-file",
        Message = $"The moves file cannot be read here: {why}.",
        Mend = "Write it anew with check --write-moves, or mend the place named.",
        Where = where,
    };
}
