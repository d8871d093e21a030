using Handwheel.Jobs.Designs;
using Handwheel.Jobs.Findings;

namespace Handwheel.Proof.Designs;

/// <summary>Grades of what came of a line.</summary>
internal static class Verdicts
{
    /// <summary>By how many times over it stands: under once a halt, under twice a caution.</summary>
    /// <param name="line">The line.</param>
    /// <param name="answers">Its values.</param>
    /// <param name="margin">How many times over it stands.</param>
    /// <param name="why">What gives way first, a clause.</param>
    /// <param name="mend">What mends it.</param>
    /// <returns>The result.</returns>
    public static DesignResult Margin(DesignLine line, DesignAnswers answers, double margin, string why, string mend)
    {
        Grade? grade = margin >= 2 ? null : margin >= 1 ? Grade.Caution : Grade.Halt;
        var told = grade switch
        {
            Grade.Halt => $"it does not stand: {why}",
            Grade.Caution => $"it stands {DesignAnswers.N(margin)} times over, which is near for an estimate: {why}",
            _ => $"it stands {DesignAnswers.N(margin)} times over: {why}",
        };
        return new DesignResult { Line = line, Answers = answers.All, Margin = margin, Grade = grade, Verdict = told, Mend = grade is null ? string.Empty : mend };
    }

    /// <summary>Yes or no.</summary>
    /// <param name="line">The line.</param>
    /// <param name="answers">Its values.</param>
    /// <param name="grade">Halt or caution; null where it is well.</param>
    /// <param name="told">What it comes to.</param>
    /// <param name="mend">What mends it.</param>
    /// <returns>The result.</returns>
    public static DesignResult Said(DesignLine line, DesignAnswers answers, Grade? grade, string told, string mend) =>
        new() { Line = line, Answers = answers.All, Grade = grade, Verdict = told, Mend = grade is null ? string.Empty : mend };

    /// <summary>What cannot be worked out from what is drawn.</summary>
    /// <param name="line">The line.</param>
    /// <param name="answers">Its values so far.</param>
    /// <param name="why">Why not.</param>
    /// <returns>A caution.</returns>
    public static DesignResult Unworkable(DesignLine line, DesignAnswers answers, string why) =>
        Said(line, answers, Grade.Caution, $"it was not checked: {why}", "Say it another way, or reckon it by hand; ./handwheel ask answers each of these by itself.");
}
