using Handwheel.Jobs.Moves;

namespace Handwheel.Cases.Tests;

/// <summary>The moves files the slip bench damages are the hand-worked courses, to the byte. HANDWHEEL_WRITE=1 writes them anew.</summary>
public sealed class MovesFileTests
{
    public static TheoryData<string> Names() => [.. Courses.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_moves_file_is_the_hand_worked_course(string name)
    {
        var file = Path.Combine(Courses.Root, "timing", "courses", name + ".moves.json");
        var text = CourseFile.Write(Courses.Course(name));
        if (Environment.GetEnvironmentVariable("HANDWHEEL_WRITE") == "1")
        {
            File.WriteAllText(file, text);
        }

        Assert.Equal(File.ReadAllText(file), text);
    }
}
