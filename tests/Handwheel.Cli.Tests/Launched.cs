using System.Diagnostics;

namespace Handwheel.Cli.Tests;

/// <summary>The built program, started as a person starts it.</summary>
internal static class Launched
{
    public static string Root { get; } = FindRoot();

    public static (int Code, string Out, string Error) Run(string folder, params string[] words)
    {
        var start = new ProcessStartInfo("dotnet") { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "handwheel.dll"));
        foreach (var word in words)
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }

    public static string Example(string name) => Path.Combine(Root, "examples", name);

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
