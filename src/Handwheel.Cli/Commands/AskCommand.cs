using Handwheel.Trade.Asking;

namespace Handwheel.Cli.Commands;

/// <summary>Prints the answer to a question put at the machine.</summary>
internal static class AskCommand
{
    /// <summary>Asks and prints; with no words, lists what can be asked; with the word "topics" alone, prints the table of the README.</summary>
    /// <param name="words">The words after <c>ask</c>.</param>
    /// <param name="json">Print JSON.</param>
    /// <param name="output">Where answers go.</param>
    /// <param name="error">Where a refusal goes; with <paramref name="json"/> it stays in the JSON.</param>
    /// <returns>0 where answered, 1 where not.</returns>
    internal static int Run(string[] words, bool json, TextWriter output, TextWriter error)
    {
        if (words.Length == 0 && !json)
        {
            foreach (var topic in Asker.Topics)
            {
                output.WriteLine($"{topic.Name,-14} {topic.About}");
                output.WriteLine($"{string.Empty,-14} ask {topic.Example}");
                output.WriteLine($"{string.Empty,-14} rests on {topic.Sources}: {topic.Evidence}");
            }

            return 0;
        }

        if (words is ["topics"])
        {
            output.WriteLine(TopicLine.Head);
            foreach (var topic in Asker.Topics)
            {
                output.WriteLine(topic.Row);
            }

            return 0;
        }

        var reply = Asker.Ask(words);
        if (json)
        {
            output.WriteLine(ReplyJson.Write(reply));
        }
        else
        {
            (reply.Refusal is null ? output : error).Write(ReplyText.Write(reply));
        }

        return reply.Refusal is null ? 0 : 1;
    }
}
