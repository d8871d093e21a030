namespace Handwheel.Jobs.Moves.Files;

/// <summary>What stands in a moves file: its format, the version of it, and the course.</summary>
/// <param name="Format">Always <see cref="FormatName"/>.</param>
/// <param name="Version">The version written, <see cref="CurrentVersion"/> now.</param>
/// <param name="Course">The course.</param>
internal sealed record CourseDocument(string Format, int Version, Course Course)
{
    /// <summary>The name a moves file opens with.</summary>
    public const string FormatName = "handwheel moves";

    /// <summary>The version written and read.</summary>
    public const int CurrentVersion = 1;
}
