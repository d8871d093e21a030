using System.Text;

namespace Handwheel.Cli;

/// <summary>Files read and written, each failure as a plain sentence.</summary>
internal static class Files
{
    /// <summary>The longest file read.</summary>
    public const long Longest = 128L * 1024 * 1024;

    /// <summary>A file's text, UTF-8; bytes that are no text come through as replacement characters for the reader to speak of.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="what">What it is, for the sentence: <c>job</c>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="RefusedException">It cannot be read.</exception>
    public static string Read(string path, string what)
    {
        if (path.Length == 0)
        {
            throw new RefusedException($"the name of the {what} is empty");
        }

        if (Directory.Exists(path))
        {
            throw new RefusedException($"'{path}' is a folder; a {what} is a file");
        }

        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            if (stream.CanSeek && stream.Length > Longest)
            {
                throw new RefusedException(FormattableString.Invariant($"'{path}' is {stream.Length / 1024 / 1024} MB long; a {what} has at most {Longest / 1024 / 1024} MB"));
            }

            return Text(stream, path, what);
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new RefusedException($"there is no {what} '{path}'");
        }
        catch (Exception problem) when (problem is UnauthorizedAccessException)
        {
            throw new RefusedException($"'{path}' may not be read");
        }
        catch (Exception problem) when (problem is IOException or ArgumentException or NotSupportedException)
        {
            throw new RefusedException($"'{path}' cannot be read: {Sentence(problem)}");
        }
    }

    /// <summary>Writes a file whole or not at all: to a temporary name beside it, then moved into its place.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="text">Its text.</param>
    /// <exception cref="RefusedException">It cannot be written.</exception>
    public static void Write(string path, string text)
    {
        if (path.Length == 0)
        {
            throw new RefusedException("the name of the file to write is empty");
        }

        if (Directory.Exists(path))
        {
            throw new RefusedException($"'{path}' is a folder; name a file to write");
        }

        var beside = FormattableString.Invariant($"{path}.{Environment.ProcessId}.part");
        try
        {
            File.WriteAllText(beside, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            File.Move(beside, path, overwrite: true);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Remove(beside);
            throw new RefusedException(problem is DirectoryNotFoundException ? $"'{path}' cannot be written: its folder is not there" : problem is UnauthorizedAccessException ? $"'{path}' may not be written" : $"'{path}' cannot be written: {Sentence(problem)}");
        }
    }

    /// <summary>A file beside another, if it is there.</summary>
    /// <param name="beside">The other.</param>
    /// <param name="name">Its name as typed; a path from the other's folder.</param>
    /// <returns>Its path; null where it is not there.</returns>
    public static string? Beside(string beside, string name)
    {
        if (name.Length == 0 || name.Contains('\0', StringComparison.Ordinal))
        {
            return null;
        }

        var path = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(beside)) ?? ".", name);
        return File.Exists(path) ? path : null;
    }

    private static string Text(FileStream stream, string path, string what)
    {
        using var reader = new StreamReader(stream, Encoding.UTF8, detectEncodingFromByteOrderMarks: true);
        var text = new StringBuilder();
        var buffer = new char[65536];
        int count;
        while ((count = reader.Read(buffer, 0, buffer.Length)) > 0)
        {
            text.Append(buffer, 0, count);
            if (text.Length > Longest)
            {
                throw new RefusedException(FormattableString.Invariant($"'{path}' goes on past {Longest / 1024 / 1024} MB; a {what} has at most that"));
            }
        }

        return text.ToString();
    }

    private static void Remove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // What could not be written mostly cannot be deleted either; the sentence about it is on its way.
            _ = problem;
        }
    }

    private static string Sentence(Exception problem) => problem.Message.TrimEnd('.').ToLowerInvariant() is { Length: > 0 } text ? text : "unknown";
}
