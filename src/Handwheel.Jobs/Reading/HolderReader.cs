using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

// Reads a vise, a chuck or clamps.
internal sealed class HolderReader(ShopNumbers numbers)
{
    private const string Mend =
        "A vise is 'vise small jaws 40 wide, open 30, deep 16.5'; also: jaws 10 thick, bed 15 high, body 120 long, soft jaws, grips 4000 N. A chuck is 'chuck three 80 across, deep 20, open 60'. Clamps are 'clamps step 20 wide, 12 high'.";

    public Holder? Read(Cursor c, string name, string word)
    {
        var kind = word switch { "vise" => HolderKind.Vise, "chuck" => HolderKind.ThreeJawChuck, _ => HolderKind.Clamps };
        var h = new Holder { Name = name, Kind = kind, JawsWide = 0, Open = 0, JawsDeep = 0, Where = c.Statement.Where };
        while (!c.AtEnd)
        {
            c.SkipCommas();
            h = c.AtEnd ? h : Clause(c, h);
        }

        if (!c.Failed && (h.JawsWide <= 0 || h.JawsDeep <= 0 || (h.Open <= 0 && kind != HolderKind.Clamps)))
        {
            c.Fail(Findings.FindingCatalogue.Missing(c.Statement.Where, $"Part of what {word} '{name}' is", Mend));
        }

        return c.Failed ? null : h;
    }

    private Holder Clause(Cursor c, Holder h) =>
        c.Take("soft jaws") || c.Take("soft") ? h with { Soft = true }
        : c.TakeAny("open", "opens") is not null ? h with { Open = numbers.Size(c, "how far it opens") ?? 0 }
        : c.Take("deep") ? h with { JawsDeep = numbers.Size(c, "how deep its jaws are") ?? 0 }
        : c.TakeAny("grips", "presses") is not null ? h with { Press = numbers.Force(c, "the force it grips with") ?? 0 }
        : c.TakeAny("jaws", "bed", "body") is { } part ? Part(c, h, part)
        : numbers.Sees(c) ? Part(c, h, string.Empty)
        : Unknown(c, h);

    // jaws 40 wide, jaws 10 thick, bed 15 high, body 120 long, 80 across.
    private Holder Part(Cursor c, Holder h, string part)
    {
        if (numbers.Size(c, "a size of the holder") is not { } size)
        {
            return h;
        }

        return (part, c.TakeAny("wide", "across", "thick", "high", "long", "deep")) switch
        {
            ("jaws" or "", "wide" or "across") => h with { JawsWide = size },
            ("jaws", "thick") => h with { JawThick = size },
            ("jaws" or "", "deep") => h with { JawsDeep = size },
            ("bed", "high") => h with { BedHigh = size },
            ("body", "long") => h with { BodyLong = size },
            ("", "high") => h with { JawsDeep = size },
            _ => Unknown(c, h),
        };
    }

    private static Holder Unknown(Cursor c, Holder same)
    {
        c.Fail("what belongs to a holder", Mend);
        return same;
    }
}
