namespace Handwheel.Trade.Asking;

/// <summary>Something that can be asked about.</summary>
/// <param name="Name">Its word.</param>
/// <param name="About">What it answers, in a line.</param>
/// <param name="Words">Words that point to it, with how strongly.</param>
/// <param name="Examples">Questions that are understood.</param>
/// <param name="Sources">What it rests on.</param>
/// <param name="Work">Works out the answers.</param>
internal sealed record Topic(
    string Name, string About, IReadOnlyDictionary<string, int> Words, IReadOnlyList<string> Examples, string Sources, Action<Question, ReplyBuilder> Work);
