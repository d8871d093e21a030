namespace Handwheel.Jobs.Holdings;

/// <summary>Work away from the machine.</summary>
public sealed record HandStage : Stage;
