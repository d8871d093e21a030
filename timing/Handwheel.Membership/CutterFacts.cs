namespace Handwheel.Membership;

/// <summary>A cutter as a drawer of cutters knows it: plain numbers, millimetres and radians.</summary>
public sealed record CutterFacts
{
    public required string Name { get; init; }

    /// <summary>Gets the kind, in lower case without spaces: <c>endmill</c>, <c>drill</c>, <c>saw</c>.</summary>
    public required string Kind { get; init; }

    public required double Across { get; init; }

    public double Flute { get; init; }

    public double Shank { get; init; }

    public double Out { get; init; }

    public double Point { get; init; }

    public double Lead { get; init; }

    public double Corner { get; init; }

    public double Thick { get; init; }

    public double Arbor { get; init; }

    public double ScrewBelow { get; init; }

    public double ScrewAcross { get; init; }

    public double Tip { get; init; }

    public double Pitch { get; init; }

    public int Sides { get; init; }

    public double OtherSide { get; init; }

    public double HolderAcross { get; init; }

    public double HolderLong { get; init; }

    public double NoseAcross { get; init; }
}

/// <summary>One layer of a cutter: its radius runs straight, or on a quarter circle of a corner, from bottom to top; never falls and rises within one layer.</summary>
/// <param name="Z0">Bottom.</param>
/// <param name="R0">Radius there.</param>
/// <param name="Z1">Top.</param>
/// <param name="R1">Radius there.</param>
/// <param name="Cuts">Whether it takes metal.</param>
/// <param name="Corner">Radius of the corner&#39;s circle; 0: straight.</param>
/// <param name="Inner">Radius inside which nothing is.</param>
/// <param name="What">What it is.</param>
public sealed record Layer(double Z0, double R0, double Z1, double R1, bool Cuts, double Corner = 0, double Inner = 0, string What = "edge")
{
    public double At(double z)
    {
        if (Corner > 0)
        {
            var h = Corner - (z - Z0);
            return R1 - Corner + Math.Sqrt(Math.Max(0, (Corner * Corner) - (h * h)));
        }

        return R0 == R1 ? R0 : R0 + ((R1 - R0) * (z - Z0) / (Z1 - Z0));
    }
}

/// <summary>Cutters as layers, each from its definition in the trade.</summary>
public static class Layers
{
    public static IReadOnlyList<Layer> Of(CutterFacts c)
    {
        var run = Alone(c);
        var top = run[^1].Z1;
        if (c.HolderAcross > 0 && c.HolderLong > 0)
        {
            run.Add(new(top, c.HolderAcross / 2, top + c.HolderLong, c.HolderAcross / 2, false, What: "holder"));
            top += c.HolderLong;
        }

        if (c.NoseAcross > 0)
        {
            run.Add(new(top, c.NoseAcross / 2, top + 150, c.NoseAcross / 2, false, What: "nose"));
        }

        return run;
    }

    private static List<Layer> Alone(CutterFacts c)
    {
        var r = c.Across / 2;
        var most = c.Out > 0 ? c.Out : 6 * r;
        var flute = c.Flute > 0 ? Math.Min(c.Flute, most) : most;
        var shank = (c.Shank > 0 ? c.Shank : c.Across) / 2;
        var neck = c.Arbor > 0 ? c.Arbor / 2 : Math.Min(shank, r);
        var thick = c.Thick > 0 ? c.Thick : Math.Min(1, flute);
        List<Layer> run = [];
        switch (c.Kind)
        {
            case "endmill":
                run.Add(new(0, r, flute, r, true));
                return Stem(run, c.Arbor > 0 ? neck : shank, most);
            case "ball" or "bullnose":
                var corner = c.Kind == "ball" ? r : Math.Clamp(c.Corner, 1e-6, r);
                run.Add(new(0, r - corner, corner, r, true, corner));
                Up(run, r, flute);
                return Stem(run, c.Arbor > 0 ? neck : shank, most);
            case "drill" or "spottingdrill":
                var angle = c.Point > 0 ? c.Point : c.Kind == "drill" ? 118 * Math.PI / 180 : Math.PI / 2;
                run.Add(new(0, 0, r / Math.Tan(angle / 2), r, true));
                Up(run, r, flute);
                return Stem(run, shank, most);
            case "reamer":
                var lead = Math.Min(c.Lead, flute / 2);
                if (lead > 0)
                {
                    run.Add(new(0, r - Math.Min(lead, 0.3 * r), lead, r, true));
                }

                run.Add(new(lead, r, flute, r, true));
                return Stem(run, shank, most);
            case "counterbore":
                if (c.Tip > 0)
                {
                    run.Add(new(-(c.Lead > 0 ? c.Lead : c.Tip), c.Tip / 2, 0, c.Tip / 2, false, What: "pilot"));
                }

                run.Add(new(0, r, flute, r, true));
                return Stem(run, shank, most);
            case "countersink" or "chamfer":
                run.Add(new(0, c.Tip / 2, (r - (c.Tip / 2)) / Math.Tan((c.Point > 0 ? c.Point : Math.PI / 2) / 2), r, true));
                Up(run, r, flute);
                return Stem(run, shank, most);
            case "saw":
                if (c.ScrewBelow > 0)
                {
                    var head = (c.ScrewAcross > 0 ? c.ScrewAcross : 2 * neck) / 2;
                    run.Add(new(-c.ScrewBelow, head, 0, head, false, What: "screw"));
                }

                run.Add(new(0, r, thick, r, true));
                return Stem(run, neck, Math.Max(c.Out, thick + 1), "arbor");
            case "boringbar":
                run.Add(new(0, r, thick, r, true, Inner: Math.Clamp(c.Tip, 0, 1.8 * r) / 2));
                return Stem(run, Math.Min(c.Arbor > 0 ? c.Arbor / 2 : 0.7 * r, r), most, "bar");
            case "flycutter":
                run.Add(new(0, r, thick, r, true, Inner: Math.Clamp(c.Tip, 0, 1.8 * r) / 2));
                return Stem(run, Math.Min(c.Arbor > 0 ? c.Arbor / 2 : 0.8 * r, r), Math.Max(most, thick + 1), "body");
            case "tslot" or "woodruff":
                run.Add(new(0, r, thick, r, true));
                return Stem(run, neck, most);
            case "tap":
                var core = Math.Max(c.Across - (1.0825 * c.Pitch), 0.1 * c.Across) / 2;
                run.Add(new(0, core, most, core, false, What: "tap"));
                return run;
            default:
                throw new ArgumentException($"no layers are known for a {c.Kind}");
        }
    }

    private static void Up(List<Layer> run, double r, double to)
    {
        if (to > run[^1].Z1)
        {
            run.Add(new(run[^1].Z1, r, to, r, true));
        }
    }

    private static List<Layer> Stem(List<Layer> run, double r, double to, string what = "shank")
    {
        if (to > run[^1].Z1)
        {
            run.Add(new(run[^1].Z1, r, to, r, false, What: what));
        }

        return run;
    }
}
