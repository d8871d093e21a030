using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Tests.Jobs;

/// <summary>One mistake a person makes at the machine, and the finding it must give.</summary>
/// <param name="Damage">What it does to the sound course.</param>
/// <param name="Code">The finding.</param>
/// <param name="Step">Its step; null: at the end.</param>
/// <param name="Then">True consequences that may be told beside it.</param>
internal sealed record JobTwin(Func<Course, Course> Damage, string Code, string? Step, params string[] Then);
