namespace Handwheel.Trade.Asking;

/// <summary>A topic as it is listed.</summary>
/// <param name="Name">Its word.</param>
/// <param name="About">What it answers.</param>
/// <param name="Example">A question that is understood.</param>
/// <param name="Sources">What it rests on.</param>
public sealed record TopicLine(string Name, string About, string Example, string Sources);
