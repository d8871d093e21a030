namespace Handwheel.Plan.Cranking;

// Numbers moves from 1 through the whole job.
internal sealed class MoveNumbers
{
    private int last;

    internal int Next() => ++last;
}
