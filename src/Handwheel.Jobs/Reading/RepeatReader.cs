namespace Handwheel.Jobs.Reading;

// Reads the repeats of a feature: 6 on circle 30, first at 30 deg; row of 4, 10 apart along x; grid of 3 by 2, 10 by 15 apart.
internal sealed class RepeatReader(NumberReader numbers)
{
    public bool Circle(Cursor c, FeatureDraft feature)
    {
        if (Counts.Take(c, 1, ReadingLimits.Places, "how many places") is not { } count)
        {
            return false;
        }

        _ = c.TakeAny("on circle", "on a circle", "places on circle");
        if (numbers.Take(c, "the circle's diameter") is not { } across)
        {
            return false;
        }

        TypedNumber? first = null;
        var start = c.At;
        c.SkipCommas();
        if (c.Take("first at"))
        {
            first = numbers.Take(c, "the angle of the first place");
        }
        else
        {
            c.At = start;
        }

        feature.Repeat = new RepeatDraft("circle", count, 1, across, null, first);
        return !c.Failed;
    }

    public bool Row(Cursor c, FeatureDraft feature)
    {
        const string mend = "A row is 'row of 4, 10 apart along x'.";
        if (Counts.Take(c, 1, ReadingLimits.Places, "how many places") is not { } count)
        {
            return false;
        }

        c.SkipCommas();
        if (numbers.Take(c, "how far they are apart") is not { } pitch || !c.Expect("apart", mend) || !c.Expect("along", mend))
        {
            return false;
        }

        var axis = c.TakeAny("x", "y");
        var direction = axis is null ? numbers.Take(c, "x, y or an angle") : null;
        feature.Repeat = new RepeatDraft(axis == "y" ? "column" : "row", count, 1, pitch, null, direction);
        return !c.Failed;
    }

    public bool Grid(Cursor c, FeatureDraft feature)
    {
        const string mend = "A grid is 'grid of 3 by 2, 10 by 15 apart'.";
        if (Counts.Take(c, 1, ReadingLimits.Places, "how many along x") is not { } along || !c.Expect("by", mend)
            || Counts.Take(c, 1, ReadingLimits.Places / along, "how many along y") is not { } across)
        {
            return false;
        }

        c.SkipCommas();
        if (numbers.Take(c, "how far apart along x") is not { } pitch || !c.Expect("by", mend)
            || numbers.Take(c, "how far apart along y") is not { } other || !c.Expect("apart", mend))
        {
            return false;
        }

        feature.Repeat = new RepeatDraft("grid", along, across, pitch, other, null);
        return true;
    }
}
