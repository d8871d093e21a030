using Handwheel.Jobs.Drawings;

namespace Handwheel.Jobs.Reading;

// Reads a <c>size</c> line.
internal sealed class SizeReader(FeatureNames names, NumberReader numbers)
{
    private const string Mend =
        "Sizes are 'hub across', 'socket across flats', 'arm high', 'socket deep', 'base long', 'base wide', 'ring bore', 'hub to pin along x', 'hub radius', 'pin position', 'arm angle to base', 'arm angle to x'.";

    private static readonly string[] Faces = ["top", "underside", "bottom", "left", "right", "near", "far"];

    public SizeDraft? Read(Cursor c)
    {
        c.At = 1;
        if (names.Take(c) is not { } feature)
        {
            return null;
        }

        var face = Face(c);
        var draft = c.Take("to") ? Distance(c, feature, face) : face is null ? Own(c, feature) : null;
        if (draft is null)
        {
            c.Fail("what the size measures", Mend);
            return null;
        }

        var end = c.At - 1;
        if (numbers.Take(c, "the size's value") is not { } value)
        {
            return null;
        }

        var limits = numbers.TakeLimits(c, draft.Kind != SizeKind.Position);
        return c.ExpectEnd("A size is one value with its limits: '10 +0 -0.05', '28 +/-0.05', '6 H7', '9.95 to 10'.")
            ? draft with { Value = value, Limits = limits, Name = FeatureNames.Name(c.Statement.Tokens.Take(end + 1).Skip(1)), NameWhere = c.Statement.SpanOf(1, end) }
            : null;
    }

    private static string? Face(Cursor c)
    {
        var face = c.TakeAny(Faces);
        return face == "underside" ? "bottom" : face;
    }

    private SizeDraft? Distance(Cursor c, FeatureDraft feature, string? face)
    {
        if (names.Take(c) is not { } other)
        {
            return null;
        }

        var otherFace = Face(c);
        var along = c.Take("along") ? c.TakeAny("x", "y", "z") : AcrossFaces(face ?? otherFace);
        return Made(c, feature, SizeKind.Distance, null) with { Other = other, Face = face, OtherFace = otherFace, Along = along };
    }

    // A distance from a face is along that face's normal.
    private static string? AcrossFaces(string? face) => face switch
    {
        "top" or "bottom" => "z",
        "left" or "right" => "x",
        "near" or "far" => "y",
        _ => null,
    };

    private SizeDraft? Own(Cursor c, FeatureDraft feature)
    {
        if (c.Take("angle to"))
        {
            if (names.TryTake(c) is { } other)
            {
                return Made(c, feature, SizeKind.Angle, null) with { Other = other };
            }

            // To an axis of the part, where no feature has its name.
            return c.TakeAny("x", "y", "z") is { } axis ? Made(c, feature, SizeKind.Angle, null) with { Along = axis }
                : names.Take(c) is { } ? Made(c, feature, SizeKind.Angle, null) : null;
        }

        var word = c.TakeAny("across corners", "across flats", "across bottom", "across top", "across", "high", "deep", "long", "wide", "bore", "radius", "position");
        return word switch
        {
            "across flats" => Made(c, feature, SizeKind.AcrossFlats, feature.Shape switch { ShapeForm.Block or ShapeForm.Slot => Measure.Wide, _ => Measure.Flats }),
            "across corners" => Made(c, feature, SizeKind.AcrossCorners, Measure.Flats),
            "across bottom" => Made(c, feature, SizeKind.Across, Measure.AcrossBottom) with { Face = "bottom" },
            "across top" => Made(c, feature, SizeKind.Across, Measure.AcrossTop) with { Face = "top" },
            "across" when feature is { Shape: ShapeForm.Cone, Point: not null } => Made(c, feature, SizeKind.Across, Measure.AcrossTop) with { Face = "top" },
            "across" => Made(c, feature, SizeKind.Across, Measure.Across),
            "high" => Made(c, feature, SizeKind.High, Measure.High),
            "deep" => Made(c, feature, SizeKind.Deep, Measure.High),
            "long" => Made(c, feature, SizeKind.Long, Measure.Long),
            "wide" => Made(c, feature, SizeKind.Wide, Measure.Wide),
            "bore" => Made(c, feature, SizeKind.Bore, Measure.Bore),
            "radius" => Made(c, feature, SizeKind.Radius, feature.Shape is ShapeForm.Outline ? null : Measure.Across),
            "position" => Made(c, feature, SizeKind.Position, null),
            _ => null,
        };
    }

    // Value, name and limits are put in once the rest of the line is read.
    private static SizeDraft Made(Cursor c, FeatureDraft feature, SizeKind kind, Measure? measure) => new()
    {
        Where = c.Statement.Where,
        Name = string.Empty,
        NameWhere = c.Statement.Where,
        Feature = feature,
        Kind = kind,
        Measure = measure,
        Value = new TypedNumber(new Expression.Literal(c.Statement.Where, new Quantity(Exact.Zero, Dimension.Bare)), string.Empty, c.Statement.Where, null),
    };
}
