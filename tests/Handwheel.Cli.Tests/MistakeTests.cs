namespace Handwheel.Cli.Tests;

/// <summary>What cannot be done gets one plain sentence and exit code 2, and nothing is left behind.</summary>
public sealed class MistakeTests
{
    [Theory]
    [InlineData("handwheel: 'chek' is no command; known are check, sheet, why, tidy, ask", "chek")]
    [InlineData("handwheel: check needs a job: handwheel check JOB", "check")]
    [InlineData("handwheel: check has no option '--wat'; it has --moves, --write-moves, --json, --progress", "check", "--wat", "a")]
    [InlineData("handwheel: check needs one file name after --moves", "check", "--moves")]
    [InlineData("handwheel: 'b' is one word too many; see handwheel check --help", "check", "a", "b")]
    [InlineData("handwheel: sheet needs one file name after -o", "sheet", "a")]
    [InlineData("handwheel: why needs its STEP; see handwheel why --help", "why", "a")]
    [InlineData("handwheel: there is no job 'none.handwheel'", "check", "none.handwheel")]
    [InlineData("handwheel: there is no job 'none.handwheel'", "why", "none.handwheel", "A1")]
    [InlineData("handwheel: there is no moves file 'none.moves'", "check", "--moves", "none.moves")]
    [InlineData("handwheel: there is no document 'none.handwheel'", "tidy", "none.handwheel")]
    [InlineData("handwheel: there is no job '@none'", "check", "@none")]
    [InlineData("handwheel: --moves proves a file and --write-moves writes one; ask for one of them", "check", "a", "--moves", "b", "--write-moves", "c")]
    [InlineData("handwheel: the name of the job is empty", "check", "")]
    public void It_is_said_in_a_sentence(string sentence, params string[] words)
    {
        using var scratch = new Scratch();
        var (code, output, error) = Launched.Run(scratch.Folder, words);
        Assert.Equal(2, code);
        Assert.Equal(sentence + Environment.NewLine, error);
        Assert.Empty(output);
        Assert.Empty(Directory.GetFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void A_folder_is_no_job()
    {
        using var scratch = new Scratch();
        var (code, _, error) = Launched.Run(scratch.Folder, "check", ".");
        Assert.Equal(2, code);
        Assert.StartsWith("handwheel: '.' is a folder; a job is a file", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\0\0\0\0")]
    [InlineData("job Half a")]
    [InlineData("((((((((((((((((((((")]
    public void A_document_that_is_none_gets_findings(string text)
    {
        using var scratch = new Scratch().With("bad.handwheel", text);
        var (code, output, error) = Launched.Run(scratch.Folder, "check", "bad.handwheel");
        Assert.Equal(2, code);
        Assert.Contains("bad.handwheel:", output, StringComparison.Ordinal);
        Assert.Contains("halt", output, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", output + error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_that_cannot_be_written_leaves_nothing()
    {
        using var scratch = new Scratch();
        var (code, _, _) = Launched.Run(scratch.Folder, "sheet", "none.handwheel", "-o", "sub/none.html");
        Assert.Equal(2, code);
        Assert.Empty(Directory.GetFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void Writing_is_whole_or_not_at_all()
    {
        using var scratch = new Scratch();
        Assert.Throws<RefusedException>(() => Files.Write(scratch["sub/file"], "text"));
        Assert.Throws<RefusedException>(() => Files.Write(scratch.Folder, "text"));
        Assert.Empty(Directory.GetFileSystemEntries(scratch.Folder));
        Files.Write(scratch["file"], "one");
        Files.Write(scratch["file"], "two");
        Assert.Equal("two", File.ReadAllText(scratch["file"]));
        Assert.Single(Directory.GetFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void An_endless_file_is_refused()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var scratch = new Scratch();
        var (code, _, error) = Launched.Run(scratch.Folder, "check", "/dev/zero");
        Assert.Equal(2, code);
        Assert.StartsWith("handwheel: '/dev/zero' goes on past 128 MB", error, StringComparison.Ordinal);
    }
}
