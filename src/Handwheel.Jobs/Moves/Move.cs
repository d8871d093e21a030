namespace Handwheel.Jobs.Moves;

/// <summary>One cranking of one axis (two together where a step says so), or one turn of the rotary.</summary>
public sealed record Move : CourseEvent
{
    /// <summary>Its number, from 1 through the whole job. Lines of a bracket of passes carry the same number each time round.</summary>
    public required int Number { get; init; }

    /// <summary>Where the axes are brought to.</summary>
    public required Reading To { get; init; }

    /// <summary>Whether it is meant to cut (spindle on, feed) or to go free of metal.</summary>
    public required bool Cutting { get; init; }

    /// <summary>Feed at the cutter, millimetres a minute; 0 free.</summary>
    public double Feed { get; init; }

    /// <summary>Axes locked meanwhile: any of <c>x</c>, <c>y</c>, <c>z</c>, <c>t</c>.</summary>
    public IReadOnlyList<Axis> Locked { get; init; } = [];
}
