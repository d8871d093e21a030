using System.Reflection;

namespace Handwheel.Sheets.Pages;

/// <summary>What is carried inside the program: style and faces.</summary>
internal static class Resource
{
    private static readonly (string Family, string File, int Weight)[] Carried =
    [
        ("Atkinson Hyperlegible", "atkinson-hyperlegible-regular.woff2", 400),
        ("Atkinson Hyperlegible", "atkinson-hyperlegible-bold.woff2", 700),
        ("B612 Mono", "b612-mono-regular.woff2", 400),
        ("B612 Mono", "b612-mono-bold.woff2", 700),
    ];

    /// <summary>The faces as style rules with their data in line. Both are under the SIL Open Font License 1.1; its text is carried beside them.</summary>
    /// <returns>CSS.</returns>
    public static string Faces() => string.Concat(Carried.Select(f =>
        FormattableString.Invariant($"@font-face{{font-family:\"{f.Family}\";font-weight:{f.Weight};src:url(data:font/woff2;base64,{Convert.ToBase64String(Bytes("fonts/" + f.File))}) format(\"woff2\")}}\n")));

    /// <summary>A text.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The text.</returns>
    public static string Text(string name) => System.Text.Encoding.UTF8.GetString(Bytes(name));

    private static byte[] Bytes(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        using var all = new MemoryStream();
        stream.CopyTo(all);
        return all.ToArray();
    }
}
