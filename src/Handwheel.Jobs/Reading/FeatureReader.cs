using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

// Reads a feature's line: name, shape, place, ends and what else stands in it.
internal sealed class FeatureReader(FeatureNames names, NumberReader numbers)
{
    public static readonly string[] ShapeWords =
    [
        "cut", "round", "hole", "ring", "block", "slot", "square", "triangle", "pentagon", "hexagon", "hex", "octagon", "polygon", "cone", "tangent", "outline", "curved",
        "countersink", "counterbore",
    ];

    private readonly FeatureClauseReader clauses = new(names, numbers);

    // The name: the words before the first shape word. Null with a finding where no shape stands.
    public static FeatureDraft Declare(Cursor c)
    {
        var tokens = c.Statement.Tokens;
        var end = 1;
        while (end < tokens.Count && !ShapeWords.Contains(tokens[end].Text.ToLowerInvariant()))
        {
            end++;
        }

        var found = end < tokens.Count;
        var words = found ? end : 1;
        c.At = words;
        return new FeatureDraft(FeatureNames.Name(tokens.Take(words).Where(t => t.Text != ":")), c.Statement.Where, c.Statement.SpanOf(0, words - 1)) { Broken = !found };
    }

    public void Read(Cursor c, FeatureDraft feature)
    {
        if (feature.Broken)
        {
            var read = c.Peek()?.Text ?? string.Empty;
            c.Fail(FindingCatalogue.UnknownWord(c.Here, read, "the shape of a feature", Nearest.To(read, ShapeWords), OtherWords.Hint(read) + "A feature is 'name shape ...', such as 'hub round 10 at 0, 0 from -12 to 0'; " + Nearest.Listed("shapes", ShapeWords)));
            return;
        }

        feature.IsCut = c.Take("cut");
        var read1 = Shape(c, feature);
        while (read1 && !c.AtEnd)
        {
            c.SkipCommas();
            read1 = c.AtEnd || clauses.Read(c, feature);
        }

        Complete(c, feature);
        feature.Broken = c.Failed;
    }

    private bool Shape(Cursor c, FeatureDraft feature)
    {
        var word = c.TakeAny(ShapeWords);
        switch (word)
        {
            case "round" or "hole" or "counterbore":
                feature.IsCut = feature.IsCut || word != "round";
                return Form(feature, ShapeForm.Round) && clauses.Sized(c, feature, Measure.Across, "its diameter");
            case "ring":
                return Form(feature, ShapeForm.Ring) && clauses.Sized(c, feature, Measure.Across, "its outer diameter")
                    && c.Expect("bore", "A ring is 'ring 20 bore 10'.") && clauses.Sized(c, feature, Measure.Bore, "its inner diameter");
            case "block" or "slot":
                return Form(feature, word == "block" ? ShapeForm.Block : ShapeForm.Slot) && LongByWide(c, feature);
            default:
                return Further(c, feature, word);
        }
    }

    private bool Further(Cursor c, FeatureDraft feature, string? word) => word switch
    {
        "cone" => Form(feature, ShapeForm.Cone) && clauses.Sized(c, feature, Measure.AcrossBottom, "the diameter of its lower end")
            && c.Expect("to", "A cone is 'cone 10 to 6': the diameter below, then above.") && clauses.Sized(c, feature, Measure.AcrossTop, "the diameter of its upper end"),
        "countersink" => Countersink(c, feature),
        "tangent" => Tangent(c, feature),
        "curved" => Curved(c, feature),
        "outline" => Form(feature, ShapeForm.Outline) && new OutlineReader(numbers).Read(c, feature),
        _ => Polygon(c, feature, word),
    };

    private static bool Form(FeatureDraft feature, ShapeForm form)
    {
        feature.Shape = form;
        return true;
    }

    private bool LongByWide(Cursor c, FeatureDraft feature)
    {
        for (var i = 0; i < 2; i++)
        {
            if (numbers.Take(c, i == 0 ? "its length" : "its width") is not { } number)
            {
                return false;
            }

            var limits = numbers.TakeLimits(c, false);
            var worded = c.TakeAny("long", "wide");
            var measure = worded is null ? i == 0 ? Measure.Long : Measure.Wide : worded == "long" ? Measure.Long : Measure.Wide;
            feature.Typed[measure] = (number, limits);
            if (i == 0 && !c.Take("by") && !c.Take(","))
            {
                c.Fail("'by' and its width", "A block or a slot is '20 by 10' (long by wide) or '20 long, 10 wide'.");
            }
        }

        if (!c.Failed && !(feature.Typed.ContainsKey(Measure.Long) && feature.Typed.ContainsKey(Measure.Wide)))
        {
            c.Fail("one length and one width", "Write '20 long, 10 wide'.");
        }

        return !c.Failed;
    }

    private bool Polygon(Cursor c, FeatureDraft feature, string? word)
    {
        feature.Shape = ShapeForm.Polygon;
        feature.Sides = word switch { "square" => 4, "triangle" => 3, "pentagon" => 5, "hexagon" or "hex" => 6, "octagon" => 8, _ => 0 };
        if (word is null)
        {
            c.Fail("a shape", Nearest.Listed("Shapes", ShapeWords));
            return false;
        }

        if (feature.Sides == 0 && !PolygonSides(c, feature))
        {
            return false;
        }

        if (!clauses.Sized(c, feature, Measure.Flats, "its size across flats"))
        {
            return false;
        }

        feature.OverCorners = c.TakeAny("across flats", "across corners") == "across corners";
        return true;
    }

    private bool PolygonSides(Cursor c, FeatureDraft feature)
    {
        _ = c.Take("of");
        if (Counts.Take(c, 3, 100, "how many sides it has") is not { } sides || !c.Expect("sides", "A polygon is 'polygon of 8 sides, 12 across flats'."))
        {
            return false;
        }

        feature.Sides = sides;
        c.SkipCommas();
        return true;
    }

    private bool Countersink(Cursor c, FeatureDraft feature)
    {
        feature.IsCut = true;
        feature.Shape = ShapeForm.Cone;
        if (!clauses.Sized(c, feature, Measure.AcrossTop, "its diameter at the face"))
        {
            return false;
        }

        _ = c.TakeAny("by", ",");
        feature.Point = numbers.Take(c, "its angle, such as 90 deg");
        return feature.Point is not null;
    }

    private bool Tangent(Cursor c, FeatureDraft feature)
    {
        feature.Shape = ShapeForm.Tangent;
        const string mend = "A tangent outline is 'tangent to hub and eye', two rounds of the drawing.";
        if (!c.Expect("to", mend) || names.Take(c) is not { } first || !c.Expect("and", mend) || names.Take(c) is not { } second)
        {
            return false;
        }

        feature.Rounds = (first, second);
        return true;
    }

    // curved slot 3 on circle 15, 100 to 200 deg: its middle line lies on the circle, counterclockwise from the first angle to the second.
    private bool Curved(Cursor c, FeatureDraft feature)
    {
        const string mend = "A curved slot is 'curved slot 3 on circle 15, 100 deg to 200 deg': its width, its middle line's diameter, the angles of its two ends' middles.";
        feature.Shape = ShapeForm.Outline;
        if (!c.Expect("slot", mend) || numbers.Take(c, "its width") is not { } wide || c.TakeAny("on circle", "on a circle", "wide on circle") is null || numbers.Take(c, "the diameter of its middle line") is not { } circle)
        {
            c.Fail("'on circle' and a diameter", mend);
            return false;
        }

        c.SkipCommas();
        if (numbers.Take(c, "the angle of its first end") is not { } from || !c.Expect("to", mend) || numbers.Take(c, "the angle of its last end") is not { } to)
        {
            return false;
        }

        feature.Curve = (wide, circle, from, to);
        return true;
    }

    private static void Complete(Cursor c, FeatureDraft feature)
    {
        if (c.Failed)
        {
            return;
        }

        LookingDown(c, feature);
        if (feature.Typed.ContainsKey(Measure.High) && feature.Typed.ContainsKey(Measure.Bottom) && feature.Typed.ContainsKey(Measure.Top))
        {
            c.Fail(FindingCatalogue.SaidTwice(feature.Where, $"How {Measures.Name(Measure.High, feature.IsCut)} '{feature.Name}' is", feature.Where));
        }

        if (EndsLack(feature) is { } lack)
        {
            c.Fail(lack);
        }
        else if (feature.At is null && !feature.Typed.ContainsKey(Measure.X) && feature.Shape is not (ShapeForm.Tangent or ShapeForm.Outline))
        {
            c.Fail(FindingCatalogue.Missing(feature.Where, $"The place of '{feature.Name}'", "Write 'at 0, 0', or 'at' and another feature."));
        }
    }

    // What is wrong with where it starts and ends; null where nothing is.
    private static Finding? EndsLack(FeatureDraft feature)
    {
        var ends = feature.Typed.ContainsKey(Measure.Bottom) || feature.Typed.ContainsKey(Measure.Top);
        if (feature.Through && !feature.IsCut)
        {
            return FindingCatalogue.Contradiction(feature.Where, $"'{feature.Name}' is metal that is added, and cannot go through.", "Give it two ends, or write 'cut' before its shape.");
        }

        if (feature.Through && ends)
        {
            return FindingCatalogue.Contradiction(feature.Where, $"'{feature.Name}' goes through and has ends as well.", "Keep one of the two.");
        }

        return !feature.Through && !ends
            ? FindingCatalogue.Missing(feature.Where, $"Where '{feature.Name}' starts and ends", feature.IsCut ? "Write 'from -6 to 0' or 'through'." : "Write 'from -12 to 0'.")
            : OneEnd(feature)
            ? FindingCatalogue.Missing(feature.Where, $"The {(feature.IsCut ? "depth" : "height")} of '{feature.Name}'", feature.IsCut ? "Write '6 deep from 0', or both ends: 'from -6 to 0'." : "Write '5 high from -12', or both ends: 'from -12 to -7'.")
            : null;
    }

    // One end alone says no height, but of a countersink, which runs down to its point.
    private static bool OneEnd(FeatureDraft feature) =>
        !feature.Through && !feature.Typed.ContainsKey(Measure.High)
        && feature.Typed.ContainsKey(Measure.Bottom) != feature.Typed.ContainsKey(Measure.Top)
        && !(feature.Shape == ShapeForm.Cone && feature.Point is not null);

    // Seen from the front, the left or below, deep goes towards plus of the part's axis: the face it starts in is its lower end.
    private static void LookingDown(Cursor c, FeatureDraft feature)
    {
        if ((feature.View == Drawings.View.Front) == feature.Behind)
        {
            return;
        }

        if (feature.Shape == ShapeForm.Cone && feature.Point is not null)
        {
            c.Fail(FindingCatalogue.NotThere(feature.Where, "A countersink is drawn from the top, the right or the back.", $"Write it as 'cut cone 8 to 2 at ..., from -20 to -17, seen from {Drawings.FeatureView.Said(feature.View, feature.Behind)}'."));
        }
        else if (feature.Typed.ContainsKey(Measure.High))
        {
            var deep = feature.Typed.Remove(Measure.Top, out var face);
            if (!deep)
            {
                _ = feature.Typed.Remove(Measure.Bottom, out face);
            }

            feature.Typed[deep ? Measure.Bottom : Measure.Top] = face;
        }
    }
}
