namespace Handwheel.Sheets.Tests;

/// <summary>Texts as they were before, kept under <c>Snapshots</c>; see the README there for how they are rewritten.</summary>
internal static class Snapshot
{
    /// <summary>The folder the solution stands in.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Holds a text against what was kept; with HANDWHEEL_SNAPSHOTS=write it is kept anew first.</summary>
    /// <param name="name">The file's name without its ending.</param>
    /// <param name="text">The text now.</param>
    public static void Holds(string name, string text)
    {
        var file = Path.Combine(Root, "tests", "Handwheel.Sheets.Tests", "Snapshots", name + ".txt");
        if (Environment.GetEnvironmentVariable("HANDWHEEL_SNAPSHOTS") == "write")
        {
            File.WriteAllText(file, text);
        }

        var (kept, now) = (File.ReadAllLines(file), text.TrimEnd('\n').Split('\n'));
        var first = kept.Zip(now).TakeWhile(p => string.Equals(p.First, p.Second, StringComparison.Ordinal)).Count();
        if (first < kept.Length || first < now.Length)
        {
            Assert.Fail(FormattableString.Invariant($"""
                {name}.txt reads otherwise from line {first + 1} on ({kept.Length} lines kept, {now.Length} now).
                kept: {kept.ElementAtOrDefault(first)}
                now:  {now.ElementAtOrDefault(first)}
                Is it meant, rewrite all snapshots: HANDWHEEL_SNAPSHOTS=write dotnet test --project tests/Handwheel.Sheets.Tests
                """));
        }
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Handwheel.slnx")))
        {
            folder = folder.Parent;
        }

        return folder!.FullName;
    }
}
