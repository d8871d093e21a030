using Handwheel.Jobs.Moves;

namespace Handwheel.Slips;

/// <summary>The ways a course is damaged, as a person at the machine does it.</summary>
internal static class Damage
{
    internal static double Get(Reading r, Axis a) => a switch { Axis.X => r.X, Axis.Y => r.Y, Axis.Z => r.Z, _ => r.T };

    internal static Reading Set(Reading r, Axis a, double v) => a switch { Axis.X => r with { X = v }, Axis.Y => r with { Y = v }, Axis.Z => r with { Z = v }, _ => r with { T = v } };

    // Every event changed with the reading before it known.
    internal static Course Through(Course course, Func<CourseEvent, Reading, CourseEvent> change)
    {
        var before = new Reading(double.NaN, double.NaN, double.NaN, double.NaN);
        CourseEvent One(CourseEvent e)
        {
            var changed = change(e, before);
            before = e is Move m ? m.To : before;
            return changed;
        }

        return course with { Stages = [.. course.Stages.Select(s => s with { Steps = [.. s.Steps.Select(p => p with { Events = [.. p.Events.Select(One)] })] })] };
    }

    // A line of the sheet misread: each time it is cranked the axis comes elsewhere, and stays there until it is cranked again.
    internal static Course Misread(Course course, int number, Axis axis, Axis onto, Func<double, double> wrong)
    {
        double? slipped = null;
        double? kept = null;
        return Through(course, (e, before) =>
        {
            if (e is not Move m)
            {
                return e;
            }

            if (m.Number == number && Get(m.To, axis) != Get(before, axis))
            {
                slipped = wrong(Get(m.To, axis));
                kept = axis == onto || double.IsNaN(Get(before, axis)) ? null : Get(before, axis);
            }
            else
            {
                slipped = Get(m.To, onto) != Get(before, onto) ? null : slipped;
                kept = Get(m.To, axis) != Get(before, axis) ? null : kept;
            }

            var to = slipped is { } v ? Set(m.To, onto, v) : m.To;
            return m with { To = kept is { } k && axis != onto ? Set(to, axis, k) : to };
        });
    }

    internal static Course OtherWayRound(Course course, int number)
    {
        double shift = 0;
        return Through(course, (e, before) =>
        {
            if (e is not Move m)
            {
                return e;
            }

            var by = m.To.T - before.T;
            if (by != 0)
            {
                shift = m.Number == number && m.Cutting ? (by < 0 ? 360 : -360) : 0;
            }

            return m with { To = m.To with { T = m.To.T + shift } };
        });
    }

    internal static Course Event(Course course, int index, Func<CourseEvent, CourseEvent> change)
    {
        var at = -1;
        return Through(course, (e, _) => ++at == index ? change(e) : e);
    }

    internal static Course LeftOut(Course course, string step) => course with
    {
        Stages = [.. course.Stages.Select(s => s with { Steps = [.. s.Steps.Select(p => p.Id == step ? p with { Events = [] } : p)] })],
    };

    internal static Course Exchanged(Course course, int stage, int first) => course with
    {
        Stages = [.. course.Stages.Select((s, i) =>
        {
            if (i != stage)
            {
                return s;
            }

            var steps = s.Steps.ToList();
            (steps[first], steps[first + 1]) = (steps[first + 1], steps[first]);
            return s with { Steps = steps };
        })],
    };

    internal static Course JawsRaised(Course course, int stage, double by) => course with
    {
        Stages = [.. course.Stages.Select((s, i) => i != stage || s.Setup is not { } setup ? s : s with
        {
            Setup = setup with { Fixtures = [.. setup.Fixtures.Select(f => f.Holds ? f with { Most = f.Most with { Z = f.Most.Z + by } } : f)] },
        })],
    };
}
