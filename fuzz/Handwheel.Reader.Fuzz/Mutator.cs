namespace Handwheel.Reader.Fuzz;

// Damages documents by lines, tokens and letters.
internal sealed class Mutator(Random random, string[] documents)
{
    private readonly string[] words = documents.SelectMany(d => d.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Distinct(StringComparer.Ordinal).ToArray();

    public string Next()
    {
        var document = documents[random.Next(documents.Length)];
        var lines = document.Split('\n').ToList();
        for (var changes = random.Next(1, 6); changes > 0; changes--)
        {
            var at = random.Next(lines.Count);
            var tokens = lines[at].Split(' ').ToList();
            var token = random.Next(tokens.Count);
            switch (random.Next(7))
            {
                case 0: lines.RemoveAt(at); break;
                case 1: lines.Insert(random.Next(lines.Count + 1), lines[at]); break;
                case 2: tokens.RemoveAt(token); lines[at] = string.Join(' ', tokens); break;
                case 3: tokens[token] = words[random.Next(words.Length)]; lines[at] = string.Join(' ', tokens); break;
                case 4: tokens.Insert(token, words[random.Next(words.Length)]); lines[at] = string.Join(' ', tokens); break;
                case 5: lines[at] = lines[at][..random.Next(lines[at].Length + 1)]; break;
                default: lines[at] = lines[at].Insert(random.Next(lines[at].Length + 1), ((char)random.Next(1, 0x3000)).ToString()); break;
            }

            lines.AddRange(lines.Count == 0 ? [string.Empty] : []);
        }

        return string.Join('\n', lines);
    }
}
