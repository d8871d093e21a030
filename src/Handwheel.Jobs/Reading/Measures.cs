namespace Handwheel.Jobs.Reading;

/// <summary>The words for the measures of a feature.</summary>
internal static class Measures
{
    private static readonly (string Word, Measure Measure)[] Words =
    [
        ("across flats", Measure.Flats), ("across bottom", Measure.AcrossBottom), ("across top", Measure.AcrossTop), ("across", Measure.Across),
        ("bore", Measure.Bore), ("long", Measure.Long), ("wide", Measure.Wide), ("high", Measure.High), ("deep", Measure.High),
        ("bottom", Measure.Bottom), ("underside", Measure.Bottom), ("top", Measure.Top), ("x", Measure.X), ("y", Measure.Y),
    ];

    // What a feature's name alone means in a sum: its across.
    public static Measure Main(FeatureDraft feature) => feature.Shape switch
    {
        ShapeForm.Polygon => Measure.Flats,
        ShapeForm.Slot => Measure.Wide,
        ShapeForm.Cone => Measure.AcrossTop,
        _ => Measure.Across,
    };

    public static Measure TakeInSum(Cursor c, FeatureDraft feature)
    {
        foreach (var (word, measure) in Words)
        {
            if (c.Take(word))
            {
                return measure == Measure.Across ? Main(feature) : measure;
            }
        }

        return Main(feature);
    }

    // As a person says it: hub across, socket across flats, base long.
    public static string Name(Measure measure, bool isCut) => measure switch
    {
        Measure.Flats => "across flats",
        Measure.AcrossBottom => "across bottom",
        Measure.AcrossTop => "across top",
        Measure.High => isCut ? "deep" : "high",
        _ => measure.ToString().ToLowerInvariant(),
    };

    public static bool IsPlace(Measure measure) => measure is Measure.X or Measure.Y;

    public static bool IsEnd(Measure measure) => measure is Measure.Top or Measure.Bottom;

    // The measures a feature of a form has.
    public static IEnumerable<Measure> Of(ShapeForm form) => form switch
    {
        ShapeForm.Round => [Measure.Across],
        ShapeForm.Ring => [Measure.Across, Measure.Bore],
        ShapeForm.Block or ShapeForm.Slot => [Measure.Long, Measure.Wide],
        ShapeForm.Polygon => [Measure.Flats],
        ShapeForm.Cone => [Measure.AcrossBottom, Measure.AcrossTop],
        _ => [],
    };
}
