namespace Handwheel.Cli.Tests;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
internal sealed class Scratch : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("handwheel-test").FullName;

    public string this[string name] => Path.Combine(Folder, name);

    public Scratch With(string name, string text)
    {
        File.WriteAllText(this[name], text);
        return this;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
