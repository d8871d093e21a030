using System.Text.Json;
using Handwheel.Jobs.Moves;

namespace Handwheel.Cases.Tests.Defects;

/// <summary>The mistakes of a <c>patch.json</c> done to a course; one that finds nothing to change is the case&#39;s own fault.</summary>
internal static class Patch
{
    public static Course Apply(Course course, string json)
    {
        foreach (var change in JsonDocument.Parse(json).RootElement.EnumerateArray())
        {
            var changed = One(course, change);
            Assert.False(JsonSerializer.Serialize(Numbers(course)) == JsonSerializer.Serialize(Numbers(changed)), $"{change} changes nothing");
            course = changed;
        }

        return course;
    }

    private static string[] Numbers(Course course) => CourseFile.Write(course).Split('\n');

    private static Course One(Course course, JsonElement change)
    {
        string Word(string name) => change.GetProperty(name).GetString()!;
        double Number(string name) => change.GetProperty(name).GetDouble();
        return Word("op") switch
        {
            "map" => Moves(course, Word("step"), Word("axis"), v => Mapped(change, v)),
            "times" => Moves(course, Word("step"), Word("axis"), v => v * Number("by")),
            "turn the other way" => Steps(course, Word("step"), TurnedTheOtherWay),
            "leave out lifts" => Steps(course, Word("step"), Unlifted),
            "leave out touch-off" => Steps(course, Word("step"), all => all.Where(e => e is not TouchOff t || !Is(t.Axis, Word("axis")))),
            "set to" => Steps(course, Word("step"), all => all.Select(e => e is TouchOff t && Is(t.Axis, Word("axis")) ? t with { SetTo = t.SetTo + Number("by") } : e)),
            "cutter" => Steps(course, Word("step"), all => WithCutter(all, Word("to"))),
            "raise" => Setups(course, Word("holding"), s => s with
            {
                Fixtures = [.. s.Fixtures.Select(f => change.GetProperty("names").EnumerateArray().Any(n => n.GetString() == f.Name)
                    ? f with { Most = f.Most with { Z = f.Most.Z + Number("by") } }
                    : f)],
            }),
            "travel" => Setups(course, Word("holding"), s => s with { Axes = s.Axes with { X = s.Axes.X with { Least = Number("least") } } }),
            var other => throw new InvalidDataException($"No change is called '{other}'."),
        };
    }

    private static double Mapped(JsonElement change, double value)
    {
        foreach (var pair in change.GetProperty("values").EnumerateArray())
        {
            if (Math.Abs(value - pair[0].GetDouble()) < 1e-6)
            {
                return pair[1].GetDouble();
            }
        }

        return value;
    }

    private static bool Is(Axis axis, string name) => string.Equals(axis.ToString(), name, StringComparison.OrdinalIgnoreCase);

    private static Course Moves(Course course, string step, string axis, Func<double, double> change) =>
        Steps(course, step, all => all.Select(e => e is not Move m ? e : m with
        {
            To = axis switch
            {
                "x" => m.To with { X = change(m.To.X) },
                "y" => m.To with { Y = change(m.To.Y) },
                "z" => m.To with { Z = change(m.To.Z) },
                _ => m.To with { T = change(m.To.T) },
            },
        }));

    // A step that works on with the cutter of the one before gets one put in.
    private static IEnumerable<CourseEvent> WithCutter(IEnumerable<CourseEvent> events, string name)
    {
        var all = events.ToList();
        return all.OfType<CutterIn>().Any()
            ? all.Select(e => e is CutterIn c ? c with { Cutter = name } : e)
            : all.Prepend(new CutterIn(name, 900));
    }

    // The turn that cuts goes the other way round to the same place; the next free turn goes back as it came.
    private static IEnumerable<CourseEvent> TurnedTheOtherWay(IEnumerable<CourseEvent> events)
    {
        double? before = null;
        double shift = 0;
        foreach (var one in events)
        {
            if (one is not Move move)
            {
                yield return one;
                continue;
            }

            var by = move.To.T - (before ?? move.To.T);
            before = move.To.T;
            if (by != 0)
            {
                shift = !move.Cutting ? 0 : by < 0 ? 360 : -360;
            }

            yield return move with { To = move.To with { T = move.To.T + shift } };
        }
    }

    private static IEnumerable<CourseEvent> Unlifted(IEnumerable<CourseEvent> events)
    {
        var at = new Reading(double.NaN, double.NaN, double.PositiveInfinity, double.NaN);
        foreach (var one in events)
        {
            if (one is not Move move)
            {
                yield return one;
                continue;
            }

            var to = move.Cutting || move.To.Z <= at.Z ? move.To : move.To with { Z = at.Z };
            if (to != at)
            {
                yield return move with { To = to };
            }

            at = to;
        }
    }

    private static Course Steps(Course course, string text, Func<IEnumerable<CourseEvent>, IEnumerable<CourseEvent>> change) => course with
    {
        Stages = [.. course.Stages.Select(s => s with
        {
            Steps = [.. s.Steps.Select(p => p.Text == text ? p with { Events = [.. change(p.Events)] } : p)],
        })],
    };

    private static Course Setups(Course course, string holding, Func<SetupFacts, SetupFacts> change) => course with
    {
        Stages = [.. course.Stages.Select(s => s.Name == holding && s.Setup is { } setup ? s with { Setup = change(setup) } : s)],
    };
}
