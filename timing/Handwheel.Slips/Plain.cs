using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Stocks;
using Handwheel.Membership;
using Handwheel.Quantities;

namespace Handwheel.Slips;

/// <summary>What a person read into a job and a shop, as the plain numbers the membership test takes.</summary>
public static class Plain
{
    public static StockFacts Of(Stock s) => new(
        s.Form.ToString().ToLowerInvariant(), new(s.Least.X, s.Least.Y, s.Least.Z), new(s.Used.X, s.Used.Y, s.Used.Z), s.Along[0], s.FlatsUp, s.Bore);

    public static IReadOnlyDictionary<string, CutterFacts> Of(Shop shop) => shop.Cutters.Values.ToDictionary(
        c => c.Name,
        c => new CutterFacts
        {
            Name = c.Name,
            Kind = c.Kind.ToString().ToLowerInvariant(),
            Across = c.TrueAcross,
            Flute = c.Flute,
            Shank = c.Shank,
            Out = c.Out,
            Point = c.PointAngle,
            Lead = c.Lead,
            Corner = c.CornerRadius,
            Thick = c.Thick,
            Arbor = c.Arbor,
            ScrewBelow = c.ScrewBelow,
            ScrewAcross = c.ScrewAcross,
            Tip = c.Tip,
            Pitch = c.Pitch,
            Sides = c.Sides,
            OtherSide = c.OtherSide,
            HolderAcross = c.HolderAcross,
            HolderLong = c.HolderLong,
            NoseAcross = shop.Mill?.NoseAcross ?? 0,
        },
        StringComparer.Ordinal);

    public static PartFacts Of(Drawing d) => new(
        [.. d.Features.Select(Of)],
        [.. d.Sizes.Select(s => new SizeFacts(s.Name, s.Kind.ToString().ToLowerInvariant(), s.Feature, s.Other ?? string.Empty, s.Along ?? string.Empty, Of(s.Limits), s.Stated))],
        (d.Others?.Width ?? 0) / 2);

    private static Lim Of(Limits l) => new(l.Nominal, l.Lower, l.Upper);

    private static FeatureFacts Of(Feature f)
    {
        var facts = new FeatureFacts
        {
            Name = f.Name,
            Cut = f.IsCut,
            Shape = string.Empty,
            Places = [.. f.Places.Select(p => (p.Centre.X, p.Centre.Y, p.Turn, p.Mirrored))],
            From = Of(f.From),
            To = Of(f.To),
            Through = f.Through,
            View = f.View.ToString().ToLowerInvariant(),
            Behind = f.Behind,
            Point = f.PointAngle ?? 0,
        };
        return f.Shape switch
        {
            RoundShape s => facts with { Shape = "round", A = Of(s.Across) },
            RingShape s => facts with { Shape = "ring", A = Of(s.Across), B = Of(s.Bore) },
            ConeShape s => facts with { Shape = "cone", A = Of(s.AcrossLow), B = Of(s.AcrossHigh) },
            BlockShape s => facts with { Shape = "block", A = Of(s.Wide), B = Of(s.Deep), Turn = s.Turn },
            SlotShape s => facts with { Shape = "slot", A = Of(s.Wide), B = Of(s.Long), Turn = s.Turn },
            PolygonShape s => facts with { Shape = "polygon", A = Of(s.AcrossFlats), Sides = s.Sides, Turn = s.Turn },
            TangentShape s => facts with { Shape = "tangent", First = s.First, Second = s.Second },
            OutlineShape s when s.Corners.All(c => c.Fillet == 0 && c.Chamfer == 0) => facts with
            {
                Shape = "outline",
                Corners = [.. s.Corners.Select(c => new Corner(c.At.X, c.At.Y, c.ArcCentre is not null, c.ArcCentre?.X ?? 0, c.ArcCentre?.Y ?? 0, c.ArcCounterclockwise))],
            },
            _ => throw new NotSupportedException($"The membership test knows no {f.Shape.GetType().Name} with fillets or chamfers."),
        };
    }
}
