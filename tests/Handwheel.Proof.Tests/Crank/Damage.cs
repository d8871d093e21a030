using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Tests.Crank;

/// <summary>Damages a course the way a person does at the machine.</summary>
internal static class Damage
{
    public static Course Each(this Course course, string step, Func<CourseEvent, CourseEvent?> change) => course with
    {
        Stages = [.. course.Stages.Select(s => s with
        {
            Steps = [.. s.Steps.Select(p => p.Id != step ? p : p with { Events = [.. p.Events.Select(change).OfType<CourseEvent>()] })],
        })],
    };

    public static Course Before(this Course course, string step, CourseEvent added) => course with
    {
        Stages = [.. course.Stages.Select(s => s with { Steps = [.. s.Steps.Select(p => p.Id != step ? p : p with { Events = [added, .. p.Events] })] })],
    };

    public static Course Moves(this Course course, string step, Func<Reading, Reading> change) =>
        course.Each(step, e => e is Move m ? m with { To = change(m.To) } : e);

    public static Course Setups(this Course course, string stage, Func<SetupFacts, SetupFacts> change) => course with
    {
        Stages = [.. course.Stages.Select(s => s.Name == stage ? s with { Setup = change(s.Setup!) } : s)],
    };

    /// <summary>Every turn goes the other way round to the same place on the rim.</summary>
    public static Course TurnTheOtherWay(this Course course, string step)
    {
        double? before = null;
        double shift = 0;
        return course.Each(step, e =>
        {
            if (e is not Move m)
            {
                return e;
            }

            var was = before ?? m.To.T;
            var by = m.To.T - was;
            before = m.To.T;
            if (m.Cutting && by != 0)
            {
                shift += by < 0 ? 360 : -360;
            }

            return m with { To = m.To with { T = m.To.T + shift } };
        });
    }
}
