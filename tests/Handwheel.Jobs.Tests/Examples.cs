namespace Handwheel.Jobs.Tests;

internal static class Examples
{
    public static string Folder
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder.FullName, "Handwheel.slnx")))
            {
                folder = folder.Parent ?? throw new InvalidOperationException("no solution above the tests");
            }

            return folder.FullName;
        }
    }

    public static string Text(string name) => File.ReadAllText(Path.Combine(Folder, "examples", name));

    public static string? Open(string name) => File.Exists(Path.Combine(Folder, "examples", name)) ? Text(name) : null;
}
