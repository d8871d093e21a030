namespace Handwheel.Jobs.Reading;

/// <summary>One line on its way to being tidied.</summary>
/// <param name="Indent">Spaces before it.</param>
/// <param name="Columns">What stands in its columns, one at least; a comment's line has an empty one.</param>
/// <param name="Comment">Its comment with its two dashes; empty for none.</param>
/// <param name="Block">Lines of one block are aligned together.</param>
internal sealed record TidyLine(int Indent, IReadOnlyList<string> Columns, string Comment, int Block);
