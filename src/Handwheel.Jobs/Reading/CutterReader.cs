using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Reading;

// Reads a cutter's line: name, kind, diameter and what else is known of it.
internal sealed class CutterReader(ShopNumbers numbers)
{
    private const double MostAcross = 400;
    private const string Mend =
        "After kind and diameter a cutter has: true 10.00, 2 flutes, HSS or carbide, flute 22, shank 10, out 30, cuts to centre, point 118, lead 1.5, corner 0.5, thick 4, arbor 16, screw stands 4 below, screw 14 across, tip 2, pitch 1, holder 40 across, holder 60 long.";

    public Cutter? Read(Cursor c, string name, string[] heads)
    {
        var start = c.At;
        var (word, kind) = Array.Find(CutterWords.All, w => c.Take(w.Word));
        if (word is null)
        {
            var read = c.Peek()?.Text ?? string.Empty;
            var nearest = Nearest.To(name, heads);
            c.At = nearest is null ? start : 0;
            c.Fail(nearest is null
                ? FindingCatalogue.UnknownWord(c.Here, read, "a kind of cutter", Nearest.To(read, CutterWords.All.Select(w => w.Word)), Nearest.Listed("Kinds are", CutterWords.All.Select(w => w.Word)))
                : FindingCatalogue.UnknownWord(c.Here, name, "a heading of a shop", nearest, "A cutter's line is its name, its kind and its diameter: 'em10 end mill 10'."));
            return null;
        }

        var k = Sized(c, new Cutter { Name = name, Kind = kind, Across = 0, TrueAcross = 0, Where = c.Statement.Where }, word);
        while (!c.AtEnd)
        {
            c.SkipCommas();
            k = c.AtEnd ? k : Clause(c, k);
        }

        return c.Failed ? null : Complete(c, k);
    }

    private Cutter Sized(Cursor c, Cutter k, string word)
    {
        if (k.Kind == CutterKind.Tap && ThreadWords.Sees(c))
        {
            return TapSizes.Read(c, k);
        }

        var across = numbers.Size(c, "its diameter") ?? 0;
        k = k with { Across = across, TrueAcross = across, Sides = word switch { "square broach" => 4, "hexagon broach" => 6, _ => 0 } };
        if (c.Take("by"))
        {
            var other = numbers.Size(c, k.Kind == CutterKind.Broach ? "its other side" : "its thickness") ?? 0;
            k = k.Kind == CutterKind.Broach ? k with { OtherSide = other, Sides = 4 } : k with { Thick = other };
        }

        return k;
    }

    private Cutter Clause(Cursor c, Cutter k) =>
        c.TakeAny("true", "flute", "shank", "out", "lead", "corner", "thick", "arbor", "neck", "tip", "pilot", "pitch") is { } word ? Length(c, k, word)
        : c.TakeAny("point", "angle") is not null ? k with { PointAngle = numbers.Angle(c, "its included angle") ?? 0 }
        : c.TakeAny("HSS", "carbide", "tool steel") is { } material ? k with { Material = material.ToLowerInvariant() }
        : c.TakeAny("cuts to centre", "cuts to center") is not null ? k with { CutsToCentre = true }
        : c.Take("screw") ? Screw(c, k)
        : c.Take("holder") ? Holder(c, k)
        : numbers.Sees(c) ? Counted(c, k)
        : Unknown(c, k);

    private Cutter Length(Cursor c, Cutter k, string word)
    {
        var value = numbers.Size(c, $"its {word}") ?? 0;
        return word switch
        {
            "true" => k with { TrueAcross = value },
            "flute" => k with { Flute = value },
            "shank" => k with { Shank = value },
            "out" => k with { Out = value },
            "lead" => k with { Lead = value },
            "corner" => k with { CornerRadius = value },
            "thick" => k with { Thick = value },
            "arbor" or "neck" => k with { Arbor = value },
            "tip" or "pilot" => k with { Tip = value },
            _ => k with { Pitch = value },
        };
    }

    private Cutter Screw(Cursor c, Cutter k)
    {
        if (!c.Take("stands"))
        {
            var across = numbers.Size(c, "the diameter of its screw") ?? 0;
            _ = c.Expect("across", Mend);
            return k with { ScrewAcross = across };
        }

        var below = numbers.Size(c, "how far its screw stands below") ?? 0;
        _ = c.Expect("below", Mend);
        return k with { ScrewBelow = below };
    }

    private Cutter Holder(Cursor c, Cutter k)
    {
        var size = numbers.Size(c, "a size of its holder") ?? 0;
        var word = c.TakeAny("across", "long");
        return word == "across" ? k with { HolderAcross = size } : word == "long" ? k with { HolderLong = size } : Unknown(c, k);
    }

    // 2 flutes, 40 teeth, 4 sides.
    private Cutter Counted(Cursor c, Cutter k)
    {
        var count = Counts.Take(c, 1, 400, "how many") ?? 0;
        var word = c.TakeAny("flutes", "flute", "teeth", "sides");
        return word is null ? Unknown(c, k) : word == "sides" ? k with { Sides = count } : k with { Teeth = count };
    }

    private static Cutter Unknown(Cursor c, Cutter same)
    {
        c.Fail("what belongs to a cutter", Mend);
        return same;
    }

    // What was not written and follows from what was; what cannot be is a finding.
    private Cutter? Complete(Cursor c, Cutter k)
    {
        if (Math.Abs(k.TrueAcross - k.Across) > Math.Max(0.3, k.Across * 0.05))
        {
            c.Report(FindingCatalogue.Contradiction(c.Statement.Where, $"{k.Name} is called {numbers.Unit.Said(k.Across)} and truly measures {numbers.Unit.Said(k.TrueAcross)}.", "Measure it again, or give it the diameter it has."));
        }

        if (k.Across > MostAcross)
        {
            c.Fail(FindingCatalogue.AbsurdNumber(c.Statement.Where, k.Name, $"no cutter of a hand-cranked mill is {numbers.Unit.Said(k.Across)} across", "Write the diameter it has, with its unit."));
            return null;
        }

        if (k.Kind is CutterKind.Saw or CutterKind.TSlot or CutterKind.Woodruff && k.Thick <= 0)
        {
            c.Fail(FindingCatalogue.Missing(c.Statement.Where, $"How thick {k.Name} is", "Write 'saw1 saw 63 by 1.0'."));
            return null;
        }

        if (k.Out > 0 && k.Flute > k.Out)
        {
            c.Report(FindingCatalogue.Contradiction(c.Statement.Where, $"The flutes of {k.Name} are longer than it stands out.", "Write 'flute' for the length that cuts and 'out' for what stands out of the holder."));
        }

        return k with { PointAngle = k.PointAngle > 0 ? k.PointAngle : Usual(k.Kind), Shank = k.Shank > 0 ? k.Shank : k.Kind == CutterKind.Saw ? k.Arbor : k.Across };
    }

    // The usual angles: ISO 235 drills 118 deg, spotting drills 90 deg, centre drills 60 deg (ISO 866), countersinks 90 deg (ISO 3294). From memory.
    private static double Usual(CutterKind kind) => kind switch
    {
        CutterKind.Drill => 118,
        CutterKind.SpottingDrill or CutterKind.Countersink or CutterKind.Chamfer => 90,
        CutterKind.CentreDrill => 60,
        _ => 0,
    } * Math.PI / 180;
}
