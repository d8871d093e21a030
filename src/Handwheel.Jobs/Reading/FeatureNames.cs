using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

/// <summary>The names of the drawing's features; the longest name that stands at a place is the one meant.</summary>
internal sealed class FeatureNames
{
    private readonly Dictionary<string, FeatureDraft> byName = new(StringComparer.Ordinal);
    private int mostWords;

    /// <summary>The features in the order typed.</summary>
    public List<FeatureDraft> All { get; } = [];

    public FeatureDraft? Find(string name) => byName.GetValueOrDefault(name);

    public void Add(FeatureDraft feature)
    {
        All.Add(feature);
        byName.TryAdd(feature.Name, feature);
        mostWords = Math.Max(mostWords, feature.Name.Count(c => c == ' ') + 1);
    }

    // How many tokens the longest name takes that stands here; 0 for none.
    public int Length(Cursor c)
    {
        for (var words = mostWords; words > 0; words--)
        {
            if (NameAt(c, words) is { } name && byName.ContainsKey(name))
            {
                return words;
            }
        }

        return 0;
    }

    public FeatureDraft? TryTake(Cursor c)
    {
        var words = Length(c);
        if (words == 0)
        {
            return null;
        }

        var feature = byName[NameAt(c, words)!];
        c.At += words;
        return feature;
    }

    // The feature that stands here; null with a finding where none does.
    public FeatureDraft? Take(Cursor c)
    {
        if (TryTake(c) is { } feature)
        {
            return feature;
        }

        if (c.Peek() is { Kind: TokenKind.Word } word)
        {
            c.Fail(FindingCatalogue.UnknownWord(c.Here, word.Text, "a feature of the drawing", Nearest.To(word.Text, byName.Keys), Nearest.Listed("The drawing has", byName.Keys)));
        }
        else
        {
            c.Fail("a feature of the drawing", Nearest.Listed("The drawing has", byName.Keys));
        }

        return null;
    }

    // Tokens made into a name: lower-cased, spaces single.
    public static string Name(IEnumerable<Token> tokens) => string.Join(' ', tokens.Select(t => t.Text.ToLowerInvariant()));

    private static string? NameAt(Cursor c, int words) =>
        c.Peek(words - 1) is null ? null : Name(c.Statement.Tokens.Skip(c.At).Take(words));
}
