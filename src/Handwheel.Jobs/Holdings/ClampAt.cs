using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Holdings;

/// <summary>One clamp.</summary>
/// <param name="X">Middle, reading.</param>
/// <param name="Y">Middle, reading.</param>
/// <param name="Top">Reading of the face it presses on.</param>
public sealed record ClampAt(Typed X, Typed Y, Typed Top);
