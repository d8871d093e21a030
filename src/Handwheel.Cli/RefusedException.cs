namespace Handwheel.Cli;

/// <summary>Something asked cannot be done: one plain sentence for the person, exit code 2.</summary>
/// <param name="message">The sentence.</param>
internal sealed class RefusedException(string message) : Exception(message);
