namespace Handwheel.Jobs.Reading;

/// <summary>Words people write for what has another word here: one word, one thing.</summary>
internal static class OtherWords
{
    private static readonly (string Word, string Here)[] All =
    [
        ("diameter", "across"), ("dia", "across"), ("diam", "across"), ("height", "high"), ("tall", "high"), ("thick", "high"), ("thickness", "high"), ("depth", "deep"), ("length", "long"),
        ("width", "wide"), ("thru", "through"), ("leaving", "allow"), ("leave", "allow"), ("using", "with"), ("per", "a pass"), ("stepover", "a pass"), ("circle", "round"), ("cylinder", "round"),
        ("rectangle", "block"), ("box", "block"), ("bottom", "underside"), ("level", "to"), ("distance", "hub to pin"), ("metric", "mm"), ("imperial", "in"), ("center", "centre"), ("snap", "break"),
        ("mill", "face, side, round, slot or pocket"), ("cutoff", "saw"), ("part", "saw"), ("ccw", "counterclockwise"), ("cw", "clockwise"), ("anticlockwise", "counterclockwise"), ("tolerance", "others"),
        ("x", "by, or long, wide and high"),
    ];

    // What a word is called here, as a sentence with a space after it; empty where it is not known.
    public static string Hint(string word) =>
        Array.Find(All, w => w.Word.Equals(word, StringComparison.OrdinalIgnoreCase)) is { Here: { } here } ? $"For '{word}' the word here is '{here}'. " : string.Empty;
}
