namespace Handwheel.Trade.Metals;

/// <summary>Copper and its alloys, plastics and laminates.</summary>
/// <remarks>Typical figures, remembered; strengths within about 15 %, Kienzle constants within 25 % of what published tables give.</remarks>
internal static class CopperAlloysAndPlastics
{
    /// <summary>The rows.</summary>
    internal static readonly Metal[] Rows =
    [
        new()
        {
            Name = "free-cutting brass",
            AlsoCalled = ["cz121", "c360", "c36000", "cuzn39pb3", "cuzn40pb2", "ms58", "360 brass", "brass", "free cutting brass", "free machining brass", "cz120", "cw614n", "leaded brass", "engraving brass", "brass, free-cutting", "cuzn", "brass & bronze", "brass and bronze", "yellow brass", "hard brass"],
            Group = "brass",
            Density = 8470, ModulusGPa = 97, TensileMPa = 400, YieldMPa = 200, Kc11 = 780, Mc = 0.18,
            Poisson = 0.34, Expansion = 20.5, ShearShare = 0.65,
            Cautions = [MetalCautions.Brass, MetalCautions.Lead],
        },
        new()
        {
            Name = "cartridge brass",
            AlsoCalled = ["cuzn37", "cuzn30", "c260", "c26000", "cz108", "cz106", "ms63", "70/30 brass", "260 brass", "alpha brass"],
            Group = "brass",
            Density = 8500, ModulusGPa = 110, TensileMPa = 370, YieldMPa = 150, Kc11 = 1000, Mc = 0.20,
            Poisson = 0.35, Expansion = 19.9, ShearShare = 0.65,
            Cautions = [MetalCautions.Gummy],
        },
        new()
        {
            Name = "naval brass",
            AlsoCalled = ["c464", "c46400", "cz112", "naval"],
            Group = "brass",
            Density = 8410, ModulusGPa = 100, TensileMPa = 430, YieldMPa = 200, Kc11 = 900, Mc = 0.19,
            Poisson = 0.34, Expansion = 21, ShearShare = 0.65,
            Cautions = [MetalCautions.Brass],
        },
        new()
        {
            Name = "nickel silver",
            AlsoCalled = ["german silver", "cuni18zn20", "c752", "ns"],
            Group = "bronze",
            Density = 8700, ModulusGPa = 125, TensileMPa = 450, YieldMPa = 300, Kc11 = 1100, Mc = 0.2,
            Poisson = 0.33, Expansion = 16, ShearShare = 0.65,
            Cautions = [MetalCautions.Gummy],
        },
        new()
        {
            Name = "phosphor bronze",
            AlsoCalled = ["pb1", "pb102", "c510", "c544", "cusn8", "cusn6", "phos bronze"],
            Group = "bronze",
            Density = 8800, ModulusGPa = 110, TensileMPa = 450, YieldMPa = 300, Kc11 = 1000, Mc = 0.2,
            Poisson = 0.34, Expansion = 17.8, ShearShare = 0.65,
            Cautions = [MetalCautions.Gummy],
        },
        new()
        {
            Name = "bearing bronze",
            AlsoCalled = ["sae660", "sae 660", "c932", "c93200", "lg2", "rg7", "gunmetal", "leaded bronze", "bronze", "gun metal", "c83600", "cusn12"],
            Group = "bronze",
            Density = 8900, ModulusGPa = 100, TensileMPa = 250, YieldMPa = 130, Kc11 = 780, Mc = 0.18,
            Poisson = 0.34, Expansion = 18, ShearShare = 0.65,
            Cautions = [MetalCautions.Bronze, MetalCautions.Lead],
        },
        new()
        {
            Name = "sintered bronze",
            AlsoCalled = ["oilite", "oil-retaining bronze", "sae841", "sae 841", "sintered"],
            Group = "bronze",
            Density = 6500, ModulusGPa = 50, TensileMPa = 95, YieldMPa = 75, Kc11 = 600, Mc = 0.18,
            Poisson = 0.3, Expansion = 18, ShearShare = 0.65,
            Cautions = [MetalCautions.Sinter],
        },
        new()
        {
            Name = "aluminium bronze",
            AlsoCalled = ["c954", "ca104", "ab2", "ab1", "cual10", "aluminum bronze", "c630", "nickel aluminium bronze"],
            Group = "hard bronze",
            Density = 7500, ModulusGPa = 115, TensileMPa = 650, YieldMPa = 280, Kc11 = 1500, Mc = 0.22,
            Poisson = 0.33, Expansion = 16.5, ShearShare = 0.65,
            Cautions = [MetalCautions.Workhard],
        },
        new()
        {
            Name = "silicon bronze",
            AlsoCalled = ["c655", "cusi3", "everdur"],
            Group = "hard bronze",
            Density = 8500, ModulusGPa = 105, TensileMPa = 400, YieldMPa = 150, Kc11 = 1100, Mc = 0.2,
            Poisson = 0.34, Expansion = 18, ShearShare = 0.65,
            Cautions = [MetalCautions.Gummy],
        },
        new()
        {
            Name = "manganese bronze",
            AlsoCalled = ["c675", "high tensile brass", "ht1"],
            Group = "hard bronze",
            Density = 8350, ModulusGPa = 103, TensileMPa = 450, YieldMPa = 210, Kc11 = 1100, Mc = 0.2,
            Poisson = 0.34, Expansion = 21, ShearShare = 0.65,
            Cautions = [MetalCautions.Brass],
        },
        new()
        {
            Name = "copper",
            AlsoCalled = ["c101", "c110", "cu-etp", "ofhc", "etp", "cu", "electrolytic copper", "pure copper", "c106"],
            Group = "copper",
            Density = 8940, ModulusGPa = 117, TensileMPa = 240, YieldMPa = 180, Kc11 = 1100, Mc = 0.22,
            Poisson = 0.34, Expansion = 17, ShearShare = 0.65,
            Cautions = [MetalCautions.Gummycu],
        },
        new()
        {
            Name = "tellurium copper",
            AlsoCalled = ["c145", "free-machining copper", "cute"],
            Group = "brass",
            Density = 8940, ModulusGPa = 115, TensileMPa = 290, YieldMPa = 250, Kc11 = 850, Mc = 0.2,
            Poisson = 0.34, Expansion = 17, ShearShare = 0.65,
            Cautions = [MetalCautions.Gummycu],
        },
        new()
        {
            Name = "beryllium copper",
            AlsoCalled = ["c172", "c17200", "becu", "cube2", "beryllium"],
            Group = "hard bronze",
            Density = 8250, ModulusGPa = 128, TensileMPa = 500, YieldMPa = 220, Kc11 = 1300, Mc = 0.22,
            Poisson = 0.3, Expansion = 17, ShearShare = 0.65,
            Cautions = [MetalCautions.Beryllium],
        },
        new()
        {
            Name = "acetal",
            AlsoCalled = ["delrin", "pom", "pom-c", "pom-h", "hostaform"],
            Group = "plastic",
            Density = 1420, ModulusGPa = 3, TensileMPa = 68, YieldMPa = 68, Kc11 = 80, Mc = 0.25,
            Poisson = 0.35, Expansion = 110, ShearShare = 0.7,
            Cautions = [MetalCautions.Plastic, MetalCautions.Acetal],
        },
        new()
        {
            Name = "nylon",
            AlsoCalled = ["pa6", "pa66", "polyamide", "nylon 6", "ertalon"],
            Group = "plastic",
            Density = 1140, ModulusGPa = 2.8, TensileMPa = 78, YieldMPa = 60, Kc11 = 80, Mc = 0.25,
            Poisson = 0.39, Expansion = 85, ShearShare = 0.7,
            Cautions = [MetalCautions.Plastic],
        },
        new()
        {
            Name = "ptfe",
            AlsoCalled = ["teflon"],
            Group = "plastic",
            Density = 2170, ModulusGPa = 0.5, TensileMPa = 25, YieldMPa = 10, Kc11 = 40, Mc = 0.25,
            Poisson = 0.46, Expansion = 135, ShearShare = 0.7,
            Cautions = [MetalCautions.Plastic, MetalCautions.Ptfe],
        },
        new()
        {
            Name = "acrylic",
            AlsoCalled = ["perspex", "plexiglas", "plexiglass", "pmma"],
            Group = "plastic",
            Density = 1190, ModulusGPa = 3.2, TensileMPa = 70, YieldMPa = 70, Kc11 = 80, Mc = 0.25,
            Poisson = 0.37, Expansion = 70, ShearShare = 0.7,
            Cautions = [MetalCautions.Plastic, MetalCautions.Crack],
        },
        new()
        {
            Name = "polycarbonate",
            AlsoCalled = ["lexan", "makrolon", "pc"],
            Group = "plastic",
            Density = 1200, ModulusGPa = 2.3, TensileMPa = 65, YieldMPa = 62, Kc11 = 80, Mc = 0.25,
            Poisson = 0.37, Expansion = 68, ShearShare = 0.7,
            Cautions = [MetalCautions.Plastic],
        },
        new()
        {
            Name = "peek",
            AlsoCalled = ["polyetheretherketone"],
            Group = "plastic",
            Density = 1310, ModulusGPa = 3.6, TensileMPa = 100, YieldMPa = 95, Kc11 = 110, Mc = 0.25,
            Poisson = 0.4, Expansion = 47, ShearShare = 0.7,
            Cautions = [MetalCautions.Plastic],
        },
        new()
        {
            Name = "hdpe",
            AlsoCalled = ["uhmw", "uhmwpe", "polyethylene", "pe", "pe1000", "polythene", "pp", "polypropylene"],
            Group = "plastic",
            Density = 950, ModulusGPa = 1, TensileMPa = 28, YieldMPa = 25, Kc11 = 40, Mc = 0.25,
            Poisson = 0.42, Expansion = 130, ShearShare = 0.7,
            Cautions = [MetalCautions.Plastic],
        },
        new()
        {
            Name = "pvc",
            AlsoCalled = ["upvc", "rigid pvc"],
            Group = "plastic",
            Density = 1400, ModulusGPa = 3, TensileMPa = 50, YieldMPa = 50, Kc11 = 70, Mc = 0.25,
            Poisson = 0.38, Expansion = 80, ShearShare = 0.7,
            Cautions = [MetalCautions.Plastic, MetalCautions.Pvc],
        },
        new()
        {
            Name = "laminate",
            AlsoCalled = ["tufnol", "phenolic", "bakelite", "g10", "fr4", "micarta", "paxolin", "glass epoxy", "garolite", "carbon fibre", "carbon fiber", "cfrp"],
            Group = "laminate",
            Density = 1800, ModulusGPa = 18, TensileMPa = 250, YieldMPa = 250, Kc11 = 300, Mc = 0.25,
            Poisson = 0.3, Expansion = 15, ShearShare = 0.5,
            Cautions = [MetalCautions.Glass],
        },
    ];
}
