using System.Globalization;
using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Moves.Files;

/// <summary>What a course must have beside good JSON: known words, boxes the right way round, steps with ids of their own.</summary>
internal static class CourseRules
{
    private static readonly string[] Ups = ["top", "underside", "front", "back", "left", "right"];
    private static readonly string[] Ons = ["rotary centre", "metal", "fixture", "axis"];
    private static readonly string[] Works = ["press", "run", "break web", "file", "rub", "break edges", "saw", "tap", "other"];
    private static readonly string[] Faces = [string.Empty, "lower", "upper"];
    private static readonly string[] AxisNames = ["x", "y", "z", "t"];

    /// <summary>Holds a course against these rules.</summary>
    /// <param name="top">The file, for findings.</param>
    /// <param name="course">The course.</param>
    /// <returns>What is wrong, in order; none where it is sound.</returns>
    public static IReadOnlyList<Finding> Check(SourceSpan top, Course course)
    {
        var wrong = new List<Finding>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var stage in course.Stages)
        {
            if (stage.Setup is { } setup)
            {
                CheckSetup(top, stage.Name, setup, wrong);
            }

            foreach (var step in stage.Steps)
            {
                if (!ids.Add(step.Id))
                {
                    wrong.Add(FindingCatalogue.MovesFileUnread(top, $"two steps have the id {step.Id}; each has its own"));
                }

                foreach (var one in step.Events)
                {
                    CheckEvent(top, step, one, wrong);
                }
            }
        }

        return wrong;
    }

    private static void CheckSetup(SourceSpan top, string stage, SetupFacts setup, List<Finding> wrong)
    {
        Known(top, $"holding {stage}: up", setup.Up, Ups, wrong);
        foreach (var carried in setup.Carried)
        {
            Known(top, $"holding {stage}: carried", carried, AxisNames, wrong);
        }

        foreach (var fixture in setup.Fixtures)
        {
            var upright = fixture.Across > 0 || (fixture.Most.X > fixture.Least.X && fixture.Most.Y > fixture.Least.Y);
            if (!upright || fixture.Most.Z <= fixture.Least.Z || fixture.Across < 0 || fixture.Bore < 0 || (fixture.Bore > 0 && fixture.Bore >= fixture.Across))
            {
                wrong.Add(FindingCatalogue.MovesFileUnread(top, $"holding {stage}: the {fixture.Name} has no thickness: its most must exceed its least"));
            }
        }

        foreach (var (name, axis) in new[] { ("x", setup.Axes.X), ("y", setup.Axes.Y), ("z", setup.Axes.Z), ("t", setup.Axes.T) })
        {
            if (axis.Step < 0 || axis.Backlash < 0 || axis.Least > axis.Most)
            {
                wrong.Add(FindingCatalogue.MovesFileUnread(top, $"holding {stage}: axis {name}: step and backlash are not negative and least is not above most"));
            }
        }
    }

    private static void CheckEvent(SourceSpan top, CourseStep step, CourseEvent one, List<Finding> wrong)
    {
        switch (one)
        {
            case TouchOff touch:
                Known(top, $"step {step.Id}: touch-off on", touch.On, Ons, wrong);
                Known(top, $"step {step.Id}: face", touch.Face, Faces, wrong);
                if (touch.Towards is not (1 or -1))
                {
                    wrong.Add(FindingCatalogue.MovesFileUnread(top, string.Create(CultureInfo.InvariantCulture, $"step {step.Id}: towards is {touch.Towards}; 1 or -1 was expected")));
                }

                if (touch.Way is not (1 or 0 or -1))
                {
                    wrong.Add(FindingCatalogue.MovesFileUnread(top, string.Create(CultureInfo.InvariantCulture, $"step {step.Id}: way is {touch.Way}; 1, -1 or 0 was expected")));
                }

                break;
            case Handwork hand:
                Known(top, $"step {step.Id}: work", hand.Work, Works, wrong);
                break;
            case HeadOpened { Across: <= 0 } head:
                wrong.Add(FindingCatalogue.MovesFileUnread(top, string.Create(CultureInfo.InvariantCulture, $"step {step.Id}: the boring head is set to {head.Across}; a diameter over 0 was expected")));
                break;
            case Spindle { Rpm: < 0 } spindle:
                wrong.Add(FindingCatalogue.MovesFileUnread(top, string.Create(CultureInfo.InvariantCulture, $"step {step.Id}: the spindle is started at {spindle.Rpm} rpm; 0 or more was expected")));
                break;
            case Move { Number: < 1 } move:
                wrong.Add(FindingCatalogue.MovesFileUnread(top, string.Create(CultureInfo.InvariantCulture, $"step {step.Id}: a move has the number {move.Number}; they count from 1")));
                break;
            default:
                break;
        }
    }

    private static void Known(SourceSpan top, string what, string word, string[] words, List<Finding> wrong)
    {
        if (!words.Contains(word, StringComparer.Ordinal))
        {
            var list = string.Join(", ", words.Where(w => w.Length > 0).Select(w => $"\"{w}\""));
            wrong.Add(FindingCatalogue.MovesFileUnread(top, $"{what}: \"{word}\" is not known; one of {list} was expected"));
        }
    }
}
