using Handwheel.Trade.Metals;

namespace Handwheel.Trade.Asking;

/// <summary>Answers a question put in a few words.</summary>
/// <remarks>Pure: the same words give the same reply. Nothing is thrown for what was typed; a question without an answer gets a refusal.</remarks>
public static class Asker
{
    /// <summary>Every topic.</summary>
    public static IReadOnlyList<TopicLine> Topics { get; } = [.. TopicList.All.Select(t => new TopicLine(t.Name, t.About, t.Examples[0], t.Sources, TopicEvidence.Of(t.Name), TopicEvidence.IsEstimate(t.Name)))];

    /// <summary>Answers.</summary>
    /// <param name="words">The words after <c>ask</c>.</param>
    /// <returns>The reply.</returns>
    public static Reply Ask(IEnumerable<string> words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var text = string.Join(' ', words).Trim();
        var question = new Question(text);
        if (text.Length == 0 || text.Length > TokenReader.Longest)
        {
            return Refuse(question, text.Length == 0 ? "nothing was asked" : $"a question of up to {TokenReader.Longest} characters is read", [], Spread());
        }

        var respelled = Respell(question);
        if (NotCarried(question) is { } absent)
        {
            return Refuse(question, absent, [], Spread());
        }

        var topic = Choose(question);
        if (topic is null)
        {
            return Unknown(question);
        }

        try
        {
            var builder = new ReplyBuilder(question);
            foreach (var (read, taken) in respelled)
            {
                builder.Note($"'{read}' was read as '{taken}'.");
            }

            question.Has([.. topic.Words.Keys]);
            topic.Work(question, builder);
            if (TopicEvidence.IsEstimate(topic.Name))
            {
                builder.Caution(TopicEvidence.Estimate);
            }

            NoteLeft(question, builder);
            return AskedFor.Mark(question, builder.Done(topic.Name));
        }
        catch (UnansweredException missing)
        {
            return Refuse(question, missing.Message, missing.Nearest, topic.Examples) with { Topic = topic.Name };
        }
    }

    // What is known to be asked for and is not carried: said so, rather than answered with something else.
    private static string? NotCarried(Question question)
    {
        string[] threads = ["whitworth", "bsw", "bsf", "bsp", "bspt", "bspp", "npt", "ba", "0ba", "2ba", "4ba", "6ba"];
        if (!question.HasIn("wires", "wire") && question.HasIn(threads))
        {
            return "Whitworth, BA and pipe threads are not carried here (over wires, 55 degrees, is)";
        }

        return question.Tokens.Any(t => !t.IsNumber && (t.Low.StartsWith("hsk", StringComparison.Ordinal) || t.Low is "er" or "er11" or "er16" or "er20" or "er25" or "er32" or "er40" or "5c"))
            ? "HSK, ER and 5C are not carried here" : null;
    }

    private static Topic? Choose(Question question)
    {
        Topic? best = null;
        var most = 0;
        foreach (var topic in TopicList.All)
        {
            var score = TopicScore.Of(topic, question);
            if (score > most)
            {
                (best, most) = (topic, score);
            }
        }

        return best;
    }

    // A word one slip away from the only topic word near to it is taken for that word, and the reply says so.
    private static List<(string Read, string Taken)> Respell(Question question)
    {
        var words = TopicList.All.SelectMany(t => t.Words.Keys).ToHashSet(StringComparer.Ordinal);
        var done = new List<(string Read, string Taken)>();
        foreach (var token in question.Tokens.Where(t => !t.IsNumber && t.Raw.Length >= 5 && t.Raw.All(char.IsAsciiLetter)).ToArray())
        {
            if (words.Contains(token.Low) || Fillers.Contains(token.Low) || MetalTable.Find(token.Raw) is not null)
            {
                continue;
            }

            var near = words.Where(w => w.Length >= 4 && Nearness.Steps(token.Low, w) == 1).ToArray();
            if (near.Length == 1)
            {
                done.Add((token.Raw, near[0]));
                question.Respell(token, near[0]);
            }
        }

        return done;
    }

    private static void NoteLeft(Question question, ReplyBuilder builder)
    {
        var words = TopicList.All.SelectMany(t => t.Words.Keys).ToHashSet(StringComparer.Ordinal);
        foreach (var word in question.Left().Where(w => !words.Contains(w.ToLowerInvariant())))
        {
            var near = Nearness.Nearest(word.ToLowerInvariant(), KnownWords(), 2);
            builder.Note(near.Count == 0 ? $"Not made use of: '{word}'." : $"Not made use of: '{word}' (known: {string.Join(", ", near)}).");
        }
    }

    private static Reply Unknown(Question question)
    {
        var near = new List<string>();
        foreach (var word in question.Left().Where(w => w.Any(char.IsLetter)))
        {
            near.AddRange(Nearness.Nearest(word.ToLowerInvariant(), KnownWords(), 3));
        }

        var nearest = near.Distinct(StringComparer.Ordinal).Take(5).ToArray();
        var examples = TopicList.All.Where(t => t.Words.Keys.Any(k => nearest.Contains(k, StringComparer.Ordinal))).SelectMany(t => t.Examples.Take(2)).Take(4).ToArray();
        return Refuse(question, $"'{question.Text}' names no topic that is known", nearest, examples.Length == 0 ? Spread() : examples);
    }

    private static IEnumerable<string> KnownWords() =>
        TopicList.All.SelectMany(t => t.Words.Keys).Concat(MetalTable.All.SelectMany(m => m.AlsoCalled.Append(m.Name))).Where(w => w.Length > 2 && w.Any(char.IsLetter));

    private static string[] Spread() => ["thread 10-32 UNF 2B", "tap drill M6", "taper Morse 2", "divide 17 on 40", "fit 25 H7/g6", "speed 6 end mill in 6061"];

    private static Reply Refuse(Question question, string what, IReadOnlyList<string> nearest, IReadOnlyList<string> examples) =>
        new() { Question = question.Text, Refusal = new Refusal(what, nearest, examples) };
}
