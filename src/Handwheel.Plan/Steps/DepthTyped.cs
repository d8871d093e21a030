using Handwheel.Jobs.Documents;

namespace Handwheel.Plan.Steps;

// The depth of a step as typed, and the depth of one pass.
internal readonly record struct DepthTyped(Typed To, Typed? PerPass);
