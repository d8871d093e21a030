namespace Handwheel.Jobs.Reading;

/// <summary>Faces named in sizes.</summary>
internal static class Faces
{
    // The end a face is; null for a face to a side.
    public static Measure? End(string? face) => face switch { "top" => Measure.Top, "bottom" => Measure.Bottom, _ => null };
}
