namespace Handwheel.Trade.Metals;

/// <summary>What metals do to people and cutters; facts of the trade.</summary>
internal static class MetalCautions
{
    internal const string Lead = "Holds lead: keep chips and dust off food and hands, wash before eating; do not grind or burn it.";
    internal const string Leadmetal = "Poisonous as dust and fume: no grinding, no smoking or eating, wash hands; it grabs, so keep edges sharp with no rake.";
    internal const string Worksteel = "May be supplied hard: try a file first; a hardened piece ruins a cutter at once.";
    internal const string Toolsteel = "Cut it annealed only; once hardened it is ground, not cut. Hot spots may harden under a rubbing drill.";
    internal const string Workhard = "Hardens where the cutter rubs: keep it cutting, never let it dwell, take a chip thicker than the hardened skin, sharp edge, plenty of fluid.";
    internal const string Iron = "Dust is abrasive and gets everywhere: cover the ways, no air blast, a mask when dry; the skin of a casting is hard, get under it in the first pass.";
    internal const string Aluminium = "Sticks to the edge when dry: fluid or paraffin, polished flutes. Fine dust burns; never grind it on a wheel used for steel.";
    internal const string Aluminiumgum = "Soft and gummy: sharp high-rake cutters and fluid, or it welds to the edge; long chips. Fine dust burns.";
    internal const string Magnesium = "Chips and dust burn, and water makes them burn fiercer or explode: sharp cutters, coarse chips, cut dry or with mineral oil, keep dry sand or a class D extinguisher at hand, never let chips gather.";
    internal const string Brass = "Grabs: brass pulls a drill in. Stone a flat on the lips (no rake), hold the work so that it cannot lift or spin, feed by the stop. Small chips fly like needles: eyes.";
    internal const string Bronze = "Grabs a drill or reamer less than brass but still does: flat on the lips. Fine chips fly: eyes.";
    internal const string Gummy = "Tough and stringy: sharp edges with rake, fluid; drills bind as the hole closes in.";
    internal const string Gummycu = "Gummy: long chips that wind up, drills bind and seize as the hole closes in; sharp, high rake, fluid, clear often. Takes no spring pass well.";
    internal const string Sinter = "Sharp cutters only and light cuts: a dull one smears the pores shut; no water fluid.";
    internal const string Beryllium = "Dust and fume cause incurable lung disease: never grind, file dry, sand or burn it without extraction made for it; wet cutting, coarse chips, wash up.";
    internal const string Titanium = "Chips and dust burn and water does not put them out (dry sand, class D); it holds the heat at the edge: slow, sharp, steady feed, much fluid, never rub.";
    internal const string Nickel = "Nickel dust and fume harm lungs and skin: no dry grinding without extraction.";
    internal const string Plastic = "Melts and grabs rather than cuts when hot: sharp, coarse feed, air; it springs, so measure cool and unclamped.";
    internal const string Acetal = "Burns with an unseen flame and gives formaldehyde when overheated.";
    internal const string Ptfe = "Fume of the overheated plastic is poisonous (no smoking near it).";
    internal const string Crack = "Cracks at breakthrough: drill with blunt lips, back it up, no spirit-based fluid.";
    internal const string Pvc = "Overheated it gives off hydrochloric fume that rusts the machine and hurts the lungs.";
    internal const string Glass = "Dust of glass, carbon or resin is harmful to lungs and skin and conducts or abrades: extraction and a mask; carbide only; edges splinter at breakthrough.";
    internal const string Graphite = "Dust conducts and is a nuisance to lungs and ways: extraction.";
}
