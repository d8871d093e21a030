namespace Handwheel.Trade.Asking;

/// <summary>A topic as it is listed.</summary>
/// <param name="Name">Its word.</param>
/// <param name="About">What it answers.</param>
/// <param name="Example">A question that is understood.</param>
/// <param name="Sources">What it rests on.</param>
/// <param name="Evidence">How firm that is.</param>
/// <param name="IsEstimate">Whether its answers are estimates of strength, force or grip, and say to whom they defer.</param>
public sealed record TopicLine(string Name, string About, string Example, string Sources, string Evidence, bool IsEstimate)
{
    /// <summary>The head of the tables of topics, and the line under it.</summary>
    public const string Head = "| topic | answers | rests on | evidence | ask |\n| --- | --- | --- | --- | --- |";

    /// <summary>Its row in the tables of topics: name, what it answers, what that rests on, how firm it is, a question.</summary>
    public string Row => $"| {Name} | {About} | {Sources} | {Evidence} | `ask {Example}` |";
}
