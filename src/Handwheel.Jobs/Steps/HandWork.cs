namespace Handwheel.Jobs.Steps;

/// <summary>Kinds of work by hand.</summary>
public enum HandWork
{
    /// <summary>Press a broach or punch: its cut is a broach&#39;s.</summary>
    Press,

    /// <summary>Run a cutter through an existing hole.</summary>
    Run,

    /// <summary>Break the web between a saw&#39;s two faces.</summary>
    BreakWeb,

    /// <summary>File a face; only metal outside most metal.</summary>
    File,

    /// <summary>Rub a face on a plate.</summary>
    Rub,

    /// <summary>Break edges; not cut.</summary>
    BreakEdges,

    /// <summary>Saw by hand along a face, a stated allowance outside it: all beyond falls away.</summary>
    Saw,

    /// <summary>Tap by hand; removes nothing.</summary>
    Tap,

    /// <summary>Anything else; removes nothing.</summary>
    Other,
}
