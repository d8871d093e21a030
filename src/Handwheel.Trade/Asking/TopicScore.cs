using System.Text.RegularExpressions;
using Handwheel.Trade.Asking.Topics;
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

        return score + Shape(topic.Name, question) + Said(topic.Name, question);
    }

    private static bool Any(Question question, params string[] words) => question.Tokens.Any(t => words.Contains(t.Low, StringComparer.Ordinal));

    // What only the whole of the question says.
    private static int Said(string topic, Question question) => topic switch
    {
        "divide" when AngleOnRatio().IsMatch(question.Text) && !Any(question, "taper", "sine", "dovetail", "dovetails", "countersink", "chamfer") => 12,
        "screw" when OfNutOrKey(question) => 9,
        "taper" when question.Tokens.Any(t => t.Raw == "7/24") => 7,
        "radius" when Any(question, "chord") && Any(question, "height", "high", "rise", "sagitta") => 8,
        "cusp" when Any(question, "nose") && Any(question, "feed", "finish", "roughness") => 10,
        "metal" when Constants(question) => 14,
        "punch" when Any(question, "punch", "punching") && Any(question, "hole") => 8,
        "bolt" when Any(question, "drawbar") && question.Tokens.Any(t => t.Unit is "N m" or "ft lbf" or "lbf in") && ThreadFinder.Holds(question) => 6,
        _ => 0,
    };

    private static bool OfNutOrKey(Question question) =>
        (Any(question, "nut", "nuts") && Any(question, "thick", "thickness", "height", "high", "tall") && question.Tokens.Any(t => t.IsFraction || t.Raw.StartsWith('#')))
        || (ThreadFinder.Holds(question) && (Any(question, "nut", "nuts") || (Any(question, "screw", "screws") && Any(question, "key", "allen")))
        && !Any(question, "class", "limits", "minor", "pitch", "strip", "engagement", "deep", "in", "torque", "clearance", "hole"));

    private static int Shape(string topic, Question question) => topic switch
    {
        "fit" => Fit(question),
        "thread" when FlankedThreadTopic.Named(question) => Any(question, "wire", "wires") ? 0 : 9,
        "polygon" when ThreadFinder.Holds(question) => -20,
        "screw" when ThreadFinder.Holds(question) && Any(question, "flats", "across", "spanner", "wrench") => 8,
        "thread" => (ThreadFinder.Holds(question) ? 2 : 0) + Together(topic, question),
        "taper" => question.Tokens.Any(t => MorseShape().IsMatch(t.Raw)) || (question.Tokens.Count <= 2 && question.Tokens.Any(t => ChuckShape().IsMatch(t.Raw))) ? 6 : 0,
        "divide" => question.Tokens.Any(t => RatioShape().IsMatch(t.Raw)) ? Any(question, "taper", "tapered", "cone") ? 0 : 6 : 0,
        "screw" => Any(question, "countersink", "csk", "countersunk", "counterbore", "cbore", "sink") && (ThreadFinder.Holds(question) || Any(question, "screw", "screws", "bolt")) ? 6 : 0,
        "general" => question.Tokens.Any(t => GradeShape().IsMatch(t.Raw)) ? 5 : 0,
        "drill" => question.Tokens.Any(t => t.Raw.StartsWith('#')) && !ThreadFinder.Holds(question) ? 2 : Together(topic, question),
        _ => Together(topic, question),
    };

    // Words that mean something only together.
    private static int Together(string topic, Question question) => topic switch
    {
        "tap drill" or "clearance" or "strip" or "thread" or "bolt" => Threaded(topic, question),
        "drill" when NamesDrill(question) => 5,
        "bolt circle" when Any(question, "circle", "chord") && question.Tokens.Any(t => t.IsNumber && Units.IsLength(t.Unit)) => 5,
        "polygon" when Any(question, "nut", "bolt", "spanner") && Any(question, "across") => 4,
        "press" when Any(question, "bush", "bushing", "dowel", "liner", "sleeve") && Any(question, "push", "pushing", "force", "into", "press") && !FitNamed(question) => 6,
        "metal" when Any(question, "weigh", "weighs", "weight", "heavy") => 4,
        "speed" => Speed(question),
        "buckle" when Any(question, "rod", "punch", "strut", "prop", "column") && Any(question, "long", "take", "stand") && question.Tokens.Any(t => t.Unit is "N" or "kN" or "lbf" or "kgf") => 5,
        "force" when Any(question, "torque", "force", "power") && Any(question, "tap", "drill", "mill", "endmill", "cutter", "turning", "turn", "milling", "drilling") => 4,
        _ => 0,
    };

    private static int Threaded(string topic, Question question) => topic switch
    {
        "clearance" => Any(question, "bolt", "screw", "bolts", "screws") && Any(question, "hole") ? 4 : 0,
        _ when !ThreadFinder.Holds(question) => 0,
        "tap drill" when Any(question, "drill", "hole", "bit", "drilling") && Any(question, "thread", "threads", "tap", "tapped", "threaded") => 4,
        "strip" when Any(question, "into", "in") && Any(question, "thread", "threads", "threaded", "tapped") && Any(question, "trust", "hold", "enough", "pull", "safe") => 4,
        "thread" when DepthOf(question) => 7,
        "strip" when Any(question, "screwed", "screw") && Any(question, "far", "into") => 5,
        "strip" when Any(question, "deep", "depth", "enough") && Any(question, "thread", "threads", "screw") => 3,
        "thread" when Any(question, "small", "smallest", "least", "big", "biggest", "largest", "greatest", "scrap", "oversize", "undersize", "gauge", "gage") && Any(question, "tapped", "thread", "threaded", "stud", "class") => 5,
        "bolt" when question.Tokens.Any(t => t.Raw is "8.8" or "10.9" or "12.9" or "A2-70" or "A4-80") && !Any(question, "strip", "deep", "engagement") => 4,
        _ => 0,
    };

    // "kienzle constants of C45", "specific cutting force of brass": no cut is told, so the metal's own figures are meant.
    private static bool Constants(Question question) =>
        (Any(question, "kienzle") && Any(question, "constants", "constant"))
        || (question.Text.Contains("specific cutting force", StringComparison.OrdinalIgnoreCase) && !question.Tokens.Any(t => t.IsNumber && (Units.IsLength(t.Unit) || t.Value < 200)));

    // "thread depth", "depth of thread".
    private static bool DepthOf(Question question) => question.Text.Contains("thread depth", StringComparison.OrdinalIgnoreCase) || question.Text.Contains("depth of thread", StringComparison.OrdinalIgnoreCase);

    private static bool FitNamed(Question question) => question.Tokens.Any(t => Iso286.IsZone(t.Raw));

    private static int Speed(Question question) =>
        question.Tokens.Any(t => t.Unit == "rpm") && Any(question, "speed", "surface", "sfm", "cutting") ? 5
        : Any(question, "spin", "rev", "revs", "fast", "run") && Any(question, "drill", "mill", "endmill", "cutter", "lathe", "reamer", "turn", "saw") && question.Tokens.Any(t => t.IsNumber) ? 4
        : 0;

    private static bool NamesDrill(Question question) =>
        Any(question, "drill", "bit") && Any(question, "size", "sizes", "decimal", "diameter", "between", "nearest", "closest", "inches", "mm", "millimetres") && !ThreadFinder.Holds(question)
        && !Any(question, "speed", "rpm", "feed", "tap", "clearance", "point", "thrust", "torque", "spin", "revs", "rev");

    private static int Fit(Question question) =>
        question.Tokens.Any(t => t.Raw.Contains('/', StringComparison.Ordinal) && t.Raw.Split('/').All(Iso286.IsZone)) ? 6
        : question.Tokens.Any(t => (Iso286.IsZone(t.Raw) && t.Raw[0] != 'M' && !MorseShape().IsMatch(t.Raw) && !(t.Raw[0] == 'm' && Any(question, "bolt", "bolts", "screw", "screws", "tap", "thread", "nut", "stud", "screwed"))) || InchClass().IsMatch(t.Raw)) ? 3
        : 0;

    [GeneratedRegex("^(?:mt|mk|cm|m[.]t[.]|morse|b&s|bs|jt|nt|nmtb|iso|bt|cat|sk|r)[-#]?[0-9]+s?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex MorseShape();

    // "35 deg on 40", "17 deg 30 min on a 90 table".
    [GeneratedRegex("[0-9] ?(?:deg|degrees?|min|minutes?|°)\\b[^0-9]{0,6}(?:on|with|at) (?:a |the )?(?:40|60|72|80|90|120)\\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex AngleOnRatio();

    // Drill-chuck tapers of DIN 238, alone.
    [GeneratedRegex("^B(?:10|12|16|18|22|24)$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex ChuckShape();

    [GeneratedRegex("^[0-9]+:[0-9]+$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex RatioShape();

    [GeneratedRegex("^(?:rc|lc|lt|ln|fn)-?[0-9]{1,2}$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex InchClass();

    [GeneratedRegex("^(?:it-?[0-9]{1,2}|iso-?2768(?:-?1)?(?:-?[fmcv][a-z]?)?|2768-?[fmcv]?[a-z]?)$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex GradeShape();
}
