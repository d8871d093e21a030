namespace Handwheel.Jobs.Moves;

/// <summary>One thing that happens in a step.</summary>
public abstract record CourseEvent
{
    private protected CourseEvent()
    {
    }
}
