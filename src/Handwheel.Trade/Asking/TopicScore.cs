using System.Text.RegularExpressions;
using Handwheel.Trade.Fits;

namespace Handwheel.Trade.Asking;

/// <summary>How well a question suits a topic.</summary>
internal static partial class TopicScore
{
    /// <summary>Adds up the words that point to a topic, and what the shape of the numbers says.</summary>
    /// <param name="topic">Topic.</param>
    /// <param name="question">Question.</param>
    /// <returns>Score; 0 where nothing points to it.</returns>
    internal static int Of(Topic topic, Question question)
    {
        var score = 0;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var token in question.Tokens.Where(t => !t.IsNumber && seen.Add(t.Low)))
        {
            score += topic.Words.GetValueOrDefault(token.Low);
        }

        return score + Shape(topic.Name, question);
    }

    private static int Shape(string topic, Question question) => topic switch
    {
        "fit" => question.Tokens.Any(t => t.Raw.Contains('/', StringComparison.Ordinal) && t.Raw.Split('/').All(p => Iso286.IsZone(p))) ? 6
            : question.Tokens.Any(t => (Iso286.IsZone(t.Raw) && t.Raw[0] != 'M' && !MorseShape().IsMatch(t.Raw)) || InchClass().IsMatch(t.Raw)) ? 3 : 0,
        "thread" => ThreadFinder.Holds(question) ? 2 : 0,
        "force" => question.Tokens.Any(t => t.Low is "torque" or "force" or "power") && question.Tokens.Any(t => t.Low is "tap" or "drill" or "mill" or "endmill" or "cutter") ? 4 : 0,
        "drill" => question.Tokens.Any(t => t.Raw.StartsWith('#')) && !ThreadFinder.Holds(question) ? 2 : 0,
        "taper" => question.Tokens.Any(t => MorseShape().IsMatch(t.Raw)) ? 6 : 0,
        "general" => question.Tokens.Any(t => GradeShape().IsMatch(t.Raw)) ? 5 : 0,
        _ => 0,
    };

    [GeneratedRegex("^(?:mt|m[.]t[.]|morse|b&s|bs|jt|j|nt|nmtb|iso|bt|cat|sk|r)[-#]?[0-9]+s?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex MorseShape();

    [GeneratedRegex("^(?:rc|lc|lt|ln|fn)-?[0-9]{1,2}$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex InchClass();

    [GeneratedRegex("^(?:it-?[0-9]{1,2}|iso-?2768(?:-?1)?(?:-?[fmcv][a-z]?)?|2768-?[fmcv]?[a-z]?)$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex GradeShape();
}
