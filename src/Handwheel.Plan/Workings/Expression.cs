namespace Handwheel.Plan.Workings;

// A rule put to use: what it gives, the rule in letters, with its numbers, its value and its source.
internal readonly record struct Expression(string Name, string Formula, string PutIn, double Exact, string Source, string Note = "");
