using Handwheel.Trade.Joints;

namespace Handwheel.Trade.Asking;

/// <summary>Finds a screw's strength grade in a question.</summary>
internal static class GradeFinder
{
    /// <summary>Takes a grade.</summary>
    /// <param name="q">Question.</param>
    /// <param name="diameterMm">Thread diameter, mm.</param>
    /// <param name="inch">Whether an inch screw.</param>
    /// <param name="r">Reply, for the note where one is assumed.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="UnansweredException">None is tabulated for that size.</exception>
    internal static BoltGrade Take(Question q, double diameterMm, bool inch, ReplyBuilder r)
    {
        for (var i = 0; i < q.Tokens.Count; i++)
        {
            var token = q.Tokens[i];
            var name = (token.Low is "grade" or "gr" or "gr.") && i + 1 < q.Tokens.Count ? "grade " + q.Tokens[i + 1].Raw : token.Low is "stainless" ? "A2-70" : token.Raw;
            if ((!token.Used || name.StartsWith("grade", StringComparison.Ordinal)) && BoltGrades.Find(name, diameterMm) is { } grade)
            {
                token.Used = true;
                if (token.Low.StartsWith("gr", StringComparison.Ordinal))
                {
                    q.Tokens[i + 1].Used = true;
                }

                return grade;
            }
        }

        var usual = BoltGrades.Find(inch ? "grade 5" : "8.8", diameterMm)
            ?? throw new UnansweredException("no strength grade is tabulated for a screw of that size");
        r.Note($"No strength was said for the screw; {usual.Name} was taken.");
        return usual;
    }
}
