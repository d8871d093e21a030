namespace Handwheel.Jobs.Reading;

// Reads the corners of an outline: <c>outline 0, 0; 20, 0 fillet 2; arc about 20, 5 to 20, 10; 0, 10 chamfer 1</c>.
internal sealed class OutlineReader(NumberReader numbers)
{
    private const int MostCorners = 500;
    private const string Mend = "Corners are 'x, y' with a semicolon between them; 'fillet 2' or 'chamfer 1' after one; 'arc about x, y to x, y' (or 'arc clockwise about ...') for an arc.";

    public bool Read(Cursor c, FeatureDraft feature)
    {
        while (Corner(c) is { } corner)
        {
            feature.Corners.Add(corner);
            if (feature.Corners.Count > MostCorners)
            {
                c.Fail("at most 500 corners", "Draw it in several features.");
            }

            if (!c.Take(";"))
            {
                break;
            }
        }

        if (!c.Failed && feature.Corners.Count < 2)
        {
            c.Fail("another corner", Mend);
        }

        return !c.Failed;
    }

    private CornerDraft? Corner(Cursor c)
    {
        TypedNumber? aboutX = null;
        TypedNumber? aboutY = null;
        var clockwise = false;
        if (c.Take("arc"))
        {
            clockwise = c.TakeAny("clockwise", "counterclockwise") == "clockwise";
            if (!c.Expect("about", Mend) || !Pair(c, out aboutX, out aboutY) || !c.Expect("to", Mend))
            {
                return null;
            }
        }

        if (!Pair(c, out var x, out var y))
        {
            return null;
        }

        TypedNumber? fillet = c.Take("fillet") ? numbers.Take(c, "the radius of the fillet") : null;
        TypedNumber? chamfer = !c.Failed && c.Take("chamfer") ? numbers.Take(c, "the leg of the chamfer") : null;
        return c.Failed ? null : new CornerDraft(x!, y!, fillet, chamfer, aboutX, aboutY, clockwise);
    }

    private bool Pair(Cursor c, out TypedNumber? x, out TypedNumber? y)
    {
        y = null;
        x = numbers.Take(c, "X of a corner");
        return x is not null && c.Expect(",", Mend) && (y = numbers.Take(c, "Y of a corner")) is not null;
    }
}
