namespace Handwheel.Jobs.Reading;

// Reads what stands after a feature's shape: place, ends, turn, view, thread, corners, repeats.
internal sealed class FeatureClauseReader(FeatureNames names, NumberReader numbers)
{
    private const string ClauseMend =
        "After its shape a feature has: at, from .. to, through, .. deep from, .. high from, sides along, along, turned, seen from, point, thread, chamfered, corner radius, .. on circle, row of, grid of, mirrored.";

    private readonly RepeatReader repeats = new(numbers);

    // One clause; false where the line is given up.
    public bool Read(Cursor c, FeatureDraft feature) =>
        c.TakeAny("at", "from", "through", "down from") is { } ends ? Standing(c, feature, ends)
        : c.TakeAny("sides along", "corners along", "along", "turned", "seen from") is { } turning ? Turned(c, feature, turning)
        : c.TakeAny("point", "thread", "tapped") is { } hole ? Hole(c, feature, hole)
        : c.Take("chamfered") ? Chamfered(c, feature)
        : c.Take("corner radius") ? Cornered(c, feature)
        : c.TakeAny("row of", "grid of", "mirrored across", "in a", "in") is { } repeat ? Repeated(c, feature, repeat)
        : Numbered(c, feature);

    private bool Standing(Cursor c, FeatureDraft feature, string word) => word switch
    {
        "at" => Place(c, feature),
        "from" => Sized(c, feature, Measure.Bottom, "its lower end") && c.Expect("to", "Ends are 'from -12 to 0', the lower first.") && Sized(c, feature, Measure.Top, "its upper end"),
        "down from" => Sized(c, feature, Measure.Top, "the height of its face"),
        _ => feature.Through = true,
    };

    private bool Turned(Cursor c, FeatureDraft feature, string word) => word switch
    {
        "sides along" => Direction(c, feature, feature.Shape == ShapeForm.Polygon ? 90 : 0),
        "corners along" => Direction(c, feature, feature.Sides == 0 ? 0 : 180d / feature.Sides),
        "along" => Direction(c, feature, 0),
        "turned" => (feature.Turn = numbers.Take(c, "an angle")) is not null,
        _ => View(c, feature),
    };

    private bool Hole(Cursor c, FeatureDraft feature, string word) =>
        word == "point" ? (feature.Point = numbers.Take(c, "the included angle of its point")) is not null : Thread(c, feature);

    private bool Repeated(Cursor c, FeatureDraft feature, string word) => word switch
    {
        "row of" => repeats.Row(c, feature),
        "grid of" => repeats.Grid(c, feature),
        "mirrored across" => Mirror(c, feature),
        _ => true,
    };

    // 6 deep from 0, 5 high from -12, 6 on circle 30.
    private bool Numbered(Cursor c, FeatureDraft feature)
    {
        if (!numbers.Sees(c))
        {
            c.Fail("'at', 'from', 'through' or another clause of a feature", ClauseMend);
            return false;
        }

        var start = c.At;
        if (numbers.Take(c, "a number") is not { } number)
        {
            return false;
        }

        if (c.TakeAny("on circle", "on a circle", "places on circle") is not null)
        {
            c.At = start;
            return repeats.Circle(c, feature);
        }

        var limits = numbers.TakeLimits(c, false);
        var word = c.TakeAny("deep", "high");
        if (word is null || !c.Expect("from", "Write '6 deep from 0' or '5 high from -12'."))
        {
            c.Fail("'deep from', 'high from' or 'on circle'", ClauseMend);
            return false;
        }

        feature.Typed[Measure.High] = (number, limits);
        return Sized(c, feature, word == "deep" ? Measure.Top : Measure.Bottom, "the face it starts in");
    }

    private bool Place(Cursor c, FeatureDraft feature)
    {
        var worded = names.Length(c) == 0 && c.Take("x");
        if (!worded && !numbers.Sees(c))
        {
            return (feature.At = names.Take(c)) is not null;
        }

        if (numbers.Take(c, "X of its centre") is not { } x || !c.Expect(",", "A place is 'at 28, 0' or 'at hub'.") || (worded && !c.Expect("y", "Write 'at x 28, y 0' or 'at 28, 0'.")) || numbers.Take(c, "Y of its centre") is not { } y)
        {
            return false;
        }

        feature.Typed[Measure.X] = (x, null);
        feature.Typed[Measure.Y] = (y, null);
        return true;
    }

    private static bool Direction(Cursor c, FeatureDraft feature, double degrees)
    {
        var axis = c.TakeAny("x", "y");
        if (axis is null)
        {
            c.Fail("x or y", "Write 'along x', 'along y', or 'turned 30 deg'.");
            return false;
        }

        feature.TurnByWord = degrees + (axis == "y" ? 90 : 0);
        return true;
    }

    private static bool View(Cursor c, FeatureDraft feature)
    {
        _ = c.Take("the");
        var side = c.TakeAny("top", "above", "front", "right", "underside", "below", "back", "left");
        if (side is null)
        {
            c.Fail("a side: top, front, right, below, back or left", "A feature is seen from the top (as usual), the front or the right; or from below, the back or the left.");
            return false;
        }

        feature.View = side switch { "front" or "back" => Drawings.View.Front, "right" or "left" => Drawings.View.Right, _ => Drawings.View.Top };
        feature.Behind = side is "underside" or "below" or "back" or "left";
        return true;
    }

    private static bool Thread(Cursor c, FeatureDraft feature)
    {
        if (ThreadWords.Take(c) is not { } thread)
        {
            return false;
        }

        feature.Thread = thread;
        return true;
    }

    private bool Cornered(Cursor c, FeatureDraft feature)
    {
        if (feature.Shape == ShapeForm.Block)
        {
            return (feature.CornerRadius = numbers.Take(c, "the radius of its corners")) is not null;
        }

        c.Fail("another clause: only a block has a corner radius", "In an outline each corner has its own: '20, 0 fillet 2'.");
        return false;
    }

    // chamfered 0.5, chamfered 0.5 below, chamfered 0.5 at both ends
    private bool Chamfered(Cursor c, FeatureDraft feature)
    {
        if ((feature.Chamfer = numbers.Take(c, "the leg of the chamfer")) is null)
        {
            return false;
        }

        var word = c.AtEnd ? null : c.TakeAny("at both ends", "both ends", "above", "below");
        feature.Chamfered = (word is not "below", word is not (null or "above"));
        return true;
    }

    private static bool Mirror(Cursor c, FeatureDraft feature)
    {
        if (c.TakeAny("x and y", "x", "y") is not { } axis)
        {
            c.Fail("x, y or 'x and y'", "Write 'mirrored across x' for its image on the other side of the X axis.");
            return false;
        }

        feature.Mirrored = (axis != "y", axis != "x");
        return true;
    }

    public bool Sized(Cursor c, FeatureDraft feature, Measure measure, string expected)
    {
        if (numbers.Take(c, expected) is not { } number)
        {
            return false;
        }

        feature.Typed[measure] = (number, numbers.TakeLimits(c, false));
        return !c.Failed;
    }

    // block 20 by 10, or 20 long, 10 wide in either order.
}
