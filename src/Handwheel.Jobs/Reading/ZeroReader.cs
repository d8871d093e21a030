using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Reading;

// Reads a zero line.
internal sealed class ZeroReader(FeatureNames names, NumberReader numbers, Evaluator evaluator)
{
    private const string Mend =
        "A zero is 'zero x, y on rotary centre', 'zero x, y at pin on rotary centre', 'zero z on bar top by paper 0.05', 'zero x on left end of stock by finder', 'zero y on fixed jaw by indicator', 'zero x on middle of stock'.";

    public Step? Read(Cursor c, StepHead head)
    {
        var axes = Axes(c);
        if (axes.Length == 0)
        {
            c.Fail("an axis: x, y or z", Mend);
            return null;
        }

        var feature = c.Take("at") ? names.Take(c) : null;
        string? face = null;
        ZeroOn? on = feature is null ? null : ZeroOn.FeatureAxis;
        if (!c.AtEnd && c.Take("on"))
        {
            on = On(c, axes, ref feature, ref face);
        }

        if (on is null)
        {
            c.Fail("what the zero is found on", Mend);
            return null;
        }

        var by = By(c, on.Value);
        var setTo = !c.AtEnd && (c.Take(", set to") || c.Take("set to")) ? evaluator.TypedLength(numbers.Take(c, "what the readout is set to")) : null;
        return c.ExpectEnd(Mend) ? new ZeroStep
        {
            Id = head.Id,
            Text = head.Text,
            Where = head.Where,
            Cutter = by.Cutter,
            CutterWhere = by.CutterWhere,
            Axes = axes,
            On = on.Value,
            Feature = feature?.Name,
            Face = face?.Split(' ')[0] switch { "front" => "near", "back" => "far", "top" => null, var other => other },
            OnRotaryCentre = on == ZeroOn.RotaryCentre,
            By = by.With,
            Size = by.Size,
            SetTo = setTo,
        } : null;
    }

    private static string Axes(Cursor c)
    {
        var axes = string.Empty;
        while (c.TakeAny("x", "y", "z") is { } axis)
        {
            axes += axis;
            _ = c.TakeAny(",", "and");
        }

        return string.Concat(axes.Distinct().Order());
    }

    private ZeroOn? On(Cursor c, string axes, ref FeatureDraft? feature, ref string? face)
    {
        _ = c.Take("the");
        switch (c.TakeAny("rotary centre", "rotary center", "rotary", "indexer centre", "indexer center", "indexer", "bar top", "stock top", "top of stock", "top of bar", "left end", "right end", "near side", "far side", "fixed jaw", "middle of", "middle", "bed", "parallels"))
        {
            case "rotary centre" or "rotary center" or "rotary" or "indexer centre" or "indexer center" or "indexer":
                return ZeroOn.RotaryCentre;
            case "bar top" or "stock top" or "top of stock" or "top of bar":
                return ZeroOn.StockTop;
            case "left end":
                return Side(c, ZeroOn.LeftEnd, ref feature);
            case "right end":
                return Side(c, ZeroOn.RightEnd, ref feature);
            case "near side":
                return Side(c, ZeroOn.NearSide, ref feature);
            case "far side":
                return Side(c, ZeroOn.FarSide, ref feature);
            case "fixed jaw":
                return ZeroOn.FixedJaw;
            case "middle of" or "middle":
                return Side(c, ZeroOn.Middle, ref feature, true);
            case "bed" or "parallels":
                return ZeroOn.Bed;
            default:
                return Feature(c, axes, ref feature, ref face);
        }
    }

    private ZeroOn? Side(Cursor c, ZeroOn on, ref FeatureDraft? feature, bool ofTaken = false)
    {
        if ((ofTaken || c.Take("of")) && !c.Take("stock") && !c.Take("bar") && !c.Take("the bar") && !c.Take("the stock"))
        {
            feature = names.Take(c);
            return feature is null ? null : on;
        }

        return on;
    }

    private ZeroOn? Feature(Cursor c, string axes, ref FeatureDraft? feature, ref string? face)
    {
        feature = names.Take(c);
        if (feature is null)
        {
            return null;
        }

        face = c.TakeAny("top", "underside", "left end", "left", "right end", "right", "near side", "near", "front", "far side", "far", "back");
        return face is not null || axes == "z" ? ZeroOn.FeatureTop : ZeroOn.FeatureAxis;
    }

    private (string With, Typed? Size, string? Cutter, SourceSpan? CutterWhere) By(Cursor c, ZeroOn on)
    {
        var with = on switch
        {
            ZeroOn.RotaryCentre or ZeroOn.FixedJaw or ZeroOn.FeatureAxis => "indicator",
            ZeroOn.StockTop or ZeroOn.FeatureTop or ZeroOn.Bed => "paper",
            _ => "finder",
        };
        if (c.AtEnd || !c.Take("by"))
        {
            return (with, null, null, null);
        }

        with = c.TakeAny("indicator", "paper", "shim", "cutter", "edge finder", "finder", "pin", "block", "gauge") ?? string.Empty;
        if (with.Length == 0)
        {
            c.Fail("'paper', 'finder', 'pin', 'indicator', 'block' or 'cutter'", Mend);
        }

        with = with switch { "shim" => "paper", "edge finder" => "finder", _ => with };
        var size = !c.AtEnd && numbers.Sees(c) ? evaluator.TypedSize(numbers.Take(c, "its size")) : null;
        if (!c.AtEnd && c.Take("with") && c.TakePiece() is { } cutter)
        {
            return (with, size, cutter.Text, cutter.Where);
        }

        return (with, size, null, null);
    }
}
