using Handwheel.Jobs.Documents;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Findings;

/// <summary>Where in a job something was found.</summary>
/// <param name="Step">The step, such as <c>A8</c>; null for the whole job.</param>
/// <param name="Where">Where that step was typed.</param>
/// <param name="Move">The move&#39;s number.</param>
/// <param name="At">The place on the part, part frame, millimetres.</param>
/// <param name="AtReading">The same place in readings of its holding, millimetres.</param>
public sealed record FindingPlace(string? Step = null, SourceSpan? Where = null, int? Move = null, Point3? At = null, Point3? AtReading = null)
{
    /// <summary>No place: the whole job.</summary>
    public static FindingPlace None { get; } = new();

    /// <summary>A finding at this place.</summary>
    /// <param name="grade">Its grade.</param>
    /// <param name="code">Its code.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="mend">What would mend it.</param>
    /// <param name="rule">The rule and its source.</param>
    /// <returns>The finding.</returns>
    internal Finding Says(Grade grade, string code, string message, string mend, string rule) => new()
    {
        Grade = grade,
        Code = code,
        Message = message,
        Mend = mend,
        Rule = rule,
        Where = Where,
        Step = Step,
        Move = Move,
        At = At,
        AtReading = AtReading,
    };
}
