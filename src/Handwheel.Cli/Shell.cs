namespace Handwheel.Cli;

/// <summary>Where commands speak: results on out, sentences and progress on error.</summary>
/// <param name="Out">Results.</param>
/// <param name="Error">Everything else.</param>
internal sealed record Shell(TextWriter Out, TextWriter Error);
