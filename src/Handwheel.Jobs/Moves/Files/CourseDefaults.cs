namespace Handwheel.Jobs.Moves.Files;

/// <summary>Fills what a moves file left out with the records' own defaults (the compiled reader sets such members to nothing).</summary>
internal static class CourseDefaults
{
    /// <summary>The course with nothing missing that has a default.</summary>
    /// <param name="course">The course as read.</param>
    /// <returns>The course, filled.</returns>
    public static Course Fill(Course course) => course with
    {
        JobFile = Or(course.JobFile),
        ShopFile = Or(course.ShopFile),
        Stages = [.. course.Stages.Select(Fill)],
    };

    private static CourseStage Fill(CourseStage stage) => stage with
    {
        Setup = stage.Setup is null ? null : stage.Setup with { Carried = Or(stage.Setup.Carried) },
        Steps = [.. stage.Steps.Select(step => step with { Events = [.. step.Events.Select(Fill)] })],
    };

    private static CourseEvent Fill(CourseEvent one) => one switch
    {
        TouchOff touch => touch with { Face = Or(touch.Face), Towards = touch.Towards == 0 ? -1 : touch.Towards },
        Move move => move with { Locked = Or(move.Locked) },
        _ => one,
    };

    private static string Or(string? text) => text ?? string.Empty;

    private static IReadOnlyList<T> Or<T>(IReadOnlyList<T>? list) => list ?? [];
}
