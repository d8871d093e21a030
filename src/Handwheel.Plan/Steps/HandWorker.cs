using Handwheel.Jobs;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Workpieces;
using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;

namespace Handwheel.Plan.Steps;

// Work away from the machine: what is done, where, and how to check it.
internal sealed class HandWorker(Job job, Shop shop, Figures figures, (Place3 At, Place3 Outward)? web)
{
    // How far off a face is filed or rubbed where nothing was said, millimetres.
    private const double Usual = 0.5;

    private readonly DrawnPart part = DrawnPart.Of(job.Drawing, PartVariant.Aimed);

    // The event, and the line; null where it cannot be worked out. Before hands come near what a machine held, its cutter goes.
    internal (Handwork Work, HandLine Line)? Plan(HandStep step, Workpiece metal, string? inSpindle)
    {
        var done = Worked(step, metal);
        return done is { } d && inSpindle is { } cutter
            ? (d.Work, d.Line with { Says = $"Spindle stopped, {cutter} out of it, the table run clear. {d.Line.Says}" })
            : done;
    }

    private (Handwork Work, HandLine Line)? Worked(HandStep step, Workpiece metal) => step.Work switch
    {
        HandWork.Press => Press(step),
        HandWork.Run => Run(step, metal),
        HandWork.BreakWeb => Web(step),
        HandWork.File or HandWork.Rub => Faced(step),
        HandWork.Saw => Sawn(step, metal),
        HandWork.Tap => (new() { Work = "tap", Cutter = step.Cutter, Feature = step.Feature }, Line($"Tap {step.Feature} with {step.Cutter}, square, half a turn on and a quarter back; cutting oil.", "the screw runs in by hand")),
        HandWork.BreakEdges => (new() { Work = "break edges", Feature = step.Feature }, Line($"Break {(step.Feature is { } f ? "the edges of " + f : "all edges")}{(step.Amount is { } a ? " " + figures.LU(a.Value) : string.Empty)}.", "no edge catches a fingernail")),
        _ => (new() { Work = "other" }, Line(Said(step.Text), string.Empty)),
    };

    private static HandLine Line(string says, string check, params Working[] workings) => new() { Says = says, Check = check, Workings = workings };

    private static string Said(string text) => text.StartsWith("do ", StringComparison.OrdinalIgnoreCase) ? text[3..] : text;

    private (Handwork Work, HandLine Line)? Press(HandStep step)
    {
        if (part.Find(step.Feature ?? string.Empty) is not { } f)
        {
            return null;
        }

        var depth = f.To - f.From;
        var turn = f.Feature.Shape is PolygonShape p ? p.Turn * Plane.ToDegrees : 0;
        List<Working> workings = [];
        workings.Add(Work.Value(new($"depth of {f.Feature.Name}", "its upper end - its floor", $"{figures.L(f.To)} - {figures.L(f.From)}", depth, Work.Geometry), "mm"));
        var broach = shop.Cutters.GetValueOrDefault(step.Cutter ?? string.Empty);
        var push = broach is null ? null : Push(f, broach);
        workings.AddRange(push is null ? [] : [push]);
        var size = broach is null ? string.Empty : $" ({figures.LU(broach.TrueAcross)})";
        var asks = push is null ? string.Empty : $" It asks about {Newtons(push.Result)}{(shop.PressPush is > 0 and var gives ? $" of the press's {Newtons(gives)}" : string.Empty)}: stop where it asks much more.";
        return (
            new() { Work = "press", Cutter = step.Cutter, At = new(f.Centres[0].X, f.Centres[0].Y, f.To), Direction = new(0, 0, -1), Depth = depth, Turn = turn, Feature = f.Feature.Name },
            Line($"Take the work out of its holding, brush it off, stand it on a flat block in a press. Press {f.Feature.Name} with {step.Cutter}{size}, {figures.LU(depth)} deep, against a stop; {(step.SquareTo is { } to ? $"a square held to {to} and to a flat of the punch guides it" : "a square on the block guides it")}. Back it out to clear the chips.{asks}", $"measure the depth: {figures.LU(depth)}; stone its rim flat, and measure again what stands round it: pressed metal spreads", [.. workings]));
    }

    // The push of a broach through what a drilled hole on its axis leaves; null where there is none.
    private Working? Push(DrawnFeature f, Cutter broach)
    {
        const double Friction = 1.3;
        if (broach.OtherSide > 0 || broach.Sides < 3 || MetalTable.FindSaid(job.Metal) is not { } metal || f.Centres.Count == 0)
        {
            return null;
        }

        var pilot = part.Features.Where(h => h.Feature is { IsCut: true, Shape: RoundShape } && h.Centres.Any(c => Plane.Distance(c, f.Centres[0]) < 1e-6))
            .Select(h => 2 * (AimedDrawing.RadiusOf(h.Feature) ?? 0)).DefaultIfEmpty(0).Max();
        var flats = broach.TrueAcross;
        var whole = broach.Sides * flats * flats * Math.Tan(Math.PI / broach.Sides) / 4;
        var area = whole - (Math.PI * pilot * pilot / 4);
        var thick = ((flats / Math.Cos(Math.PI / broach.Sides)) - pilot) / 2;
        if (pilot <= 0 || area <= 0 || thick <= 0)
        {
            return null;
        }

        var force = Friction * Kienzle.PushN(metal.Kc11, metal.Mc, area, thick);
        return Work.Value(
            new($"push of {broach.Name}", "(its area - the pilot's) x cutting force x 1.3 for friction", $"({Figures.Bare(whole, 3)} - {Figures.Bare(area < whole ? whole - area : 0, 3)}) mm2 x {Figures.Bare(force / Friction / area, 0)} N/mm2 x {Figures.Bare(Friction, 1)}", force, Kienzle.Basis.Source, "May be off by a factor of two."),
            "N");
    }

    private static string Newtons(double n) => n >= 1000 ? Figures.Bare(n / 1000, 1) + " kN" : Figures.Bare(Math.Round(n / 10) * 10, 0) + " N";

    private (Handwork Work, HandLine Line)? Run(HandStep step, Workpiece metal)
    {
        if (part.Find(step.Feature ?? string.Empty) is not { } f)
        {
            return null;
        }

        var bounds = part.Solid.Bounds;
        var blind = metal.Sound(new Line3(new Point3(f.Centres[0].X, f.Centres[0].Y, 0), Vector3.UnitZ)).Any(s => s.To < bounds.Min.Z);
        return (
            new() { Work = "run", Cutter = step.Cutter, At = new(f.Centres[0].X, f.Centres[0].Y, bounds.Max.Z), Direction = new(0, 0, -1), Depth = bounds.Size.Z + 2, Feature = f.Feature.Name },
            Line($"Run {step.Cutter} through {f.Feature.Name} again by hand.", blind ? "it runs free to the bottom; the metal below is still there. Shake the chips out" : "it runs free from end to end"));
    }

    private (Handwork Work, HandLine Line)? Web(HandStep step)
    {
        if (web is not { } w)
        {
            return null;
        }

        return (
            new() { Work = "break web", At = w.At, Direction = w.Outward },
            Line("Leave the stock held. Draw any shim out; a rag round the part, bend it to and fro until the web breaks." + (step.FileToLine ? " File the nub it leaves: to the line, and down to the sawn face." : string.Empty), "nothing of the web stands out past the outline or the sawn face"));
    }

    // A place of the face and the way out of the part, part frame.
    private (Point3 At, Vector3 Out)? Face(HandStep step)
    {
        var solid = step.Feature is { } name && part.Find(name) is { } own ? own.Solid : step.Size is { } size && job.Drawing.Sizes.FirstOrDefault(s => s.Name == size) is { } of && part.Find(of.Feature) is { } sized ? sized.Solid : part.Solid;
        var box = solid.Bounds;
        var c = box.Centre;
        (Point3, Vector3)? found = step.Face switch
        {
            "underside" => (new(c.X, c.Y, box.Min.Z), -Vector3.UnitZ),
            "top" => (new(c.X, c.Y, box.Max.Z), Vector3.UnitZ),
            "left end" => (new(box.Min.X, c.Y, c.Z), -Vector3.UnitX),
            "right end" => (new(box.Max.X, c.Y, c.Z), Vector3.UnitX),
            "near side" => (new(c.X, box.Min.Y, c.Z), -Vector3.UnitY),
            "far side" => (new(c.X, box.Max.Y, c.Z), Vector3.UnitY),
            "near flank" or "far flank" => Flank(step),
            _ => null,
        };
        return found;
    }

    private (Point3 At, Vector3 Out)? Flank(HandStep step)
    {
        var drawing = new AimedDrawing(job);
        var f = job.Drawing.Features.FirstOrDefault(x => x.Shape is TangentShape && (step.Feature is null || x.Name == step.Feature));
        if (f is null || SideMilling.Edges(drawing.Outline(f, f.Places[0]), step.Face!).Select(e => (PlanEdge?)e).FirstOrDefault() is not { } edge)
        {
            return null;
        }

        return (new((edge.From.X + edge.To.X) / 2, (edge.From.Y + edge.To.Y) / 2, (f.From.Middle + f.To.Middle) / 2), new Vector3(edge.Normal.X, edge.Normal.Y, 0));
    }

    private (Handwork Work, HandLine Line)? Faced(HandStep step)
    {
        if (Face(step) is not { } face)
        {
            return null;
        }

        var rubs = step.Work == HandWork.Rub;
        var at = rubs ? OnMetal(step, face) : face.At;
        var to = step.Size is { } size ? $" to {size} {Size(size)}" : " to the line";
        return (
            new() { Work = rubs ? "rub" : "file", At = new(at.X, at.Y, at.Z), Direction = new(face.Out.X, face.Out.Y, face.Out.Z), Depth = step.Amount?.Value ?? Usual, Feature = step.Size is { } s ? job.Drawing.Sizes.First(x => x.Name == s).Feature : step.Feature },
            Line($"{(rubs ? "Rub" : "File")} the {step.Face}{to}{(rubs ? ", on abrasive paper on a flat plate, turning it now and then" : string.Empty)}.", step.Size is { } m ? $"measure {m}" : "no light under a straightedge"));
    }

    // A place of the face where the part has metal: its middle may lie over a hole.
    private Point3 OnMetal(HandStep step, (Point3 At, Vector3 Out) face)
    {
        var box = (step.Size is { } size && part.Find(job.Drawing.Sizes.First(s => s.Name == size).Feature) is { } f ? f.Solid : part.Solid).Bounds;
        for (var i = 0; i < 40; i++)
        {
            var p = face.At;
            var (u, v) = ((0.5 + (i * 0.618033988749895)) % 1, (0.5 + (i * 0.7548776662466927)) % 1);
            p = face.Out.Z != 0 ? new(box.Min.X + (u * box.Size.X), box.Min.Y + (v * box.Size.Y), p.Z) : p;
            if (part.Solid.Sound(new Line3(p, face.Out)).Any(s => Math.Abs(s.To) < 1e-6))
            {
                return p;
            }
        }

        return face.At;
    }

    private string Size(string name) => job.Drawing.Sizes.First(s => s.Name == name) is var s ? $"{figures.L(s.Limits.Lower)} to {figures.LU(s.Limits.Upper)}" : string.Empty;

    private (Handwork Work, HandLine Line)? Sawn(HandStep step, Workpiece metal)
    {
        if (Face(step) is not { } face)
        {
            return null;
        }

        var allow = step.Allow?.Value ?? 0;
        var at = face.At + (face.Out * allow);
        var waste = Waste(metal, at, face.Out);
        return (
            new() { Work = "saw", At = new(at.X, at.Y, at.Z), Direction = new(face.Out.X, face.Out.Y, face.Out.Z), Depth = waste, Feature = step.Face },
            Line($"Saw off at the {step.Face}, {figures.LU(allow)} outside the line; the blade runs on the waste side.", $"{figures.LU(allow)} left on"));
    }

    private static double Waste(Workpiece metal, Point3 at, Vector3 way)
    {
        var box = metal.Bare.Bounds;
        var far = Math.Max((box.Max - at).Dot(way), (box.Min - at).Dot(way));
        return Math.Max(far, 0) + 1;
    }
}
