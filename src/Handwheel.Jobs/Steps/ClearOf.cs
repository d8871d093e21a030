using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary>A feature a step keeps clear of.</summary>
/// <param name="Feature">Its name.</param>
/// <param name="By">How far, a side.</param>
public sealed record ClearOf(string Feature, Typed By);
