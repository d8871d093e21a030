namespace Handwheel.Trade.Metals;

/// <summary>Cast irons, aluminium, magnesium, titanium, nickel, zinc and others.</summary>
/// <remarks>Typical figures, remembered; strengths within about 15 %, Kienzle constants within 25 % of what published tables give.</remarks>
internal static class IronsAndLightMetals
{
    /// <summary>The rows.</summary>
    internal static readonly Metal[] Rows =
    [
        new()
        {
            Name = "grey cast iron",
            AlsoCalled = ["gjl-250", "en-gjl-250", "gg25", "gg-25", "class 35", "cast iron", "ci", "gray cast iron", "gray iron", "grey iron", "meehanite", "class 40"],
            Group = "soft cast iron",
            Density = 7200, ModulusGPa = 110, TensileMPa = 250, YieldMPa = double.NaN, Kc11 = 1160, Mc = 0.26,
            Poisson = 0.26, Expansion = 10.5, ShearShare = 1.1,
            Cautions = [MetalCautions.Iron],
        },
        new()
        {
            Name = "soft grey cast iron",
            AlsoCalled = ["gjl-200", "en-gjl-200", "gg20", "gg-20", "class 30", "class 25", "gjl-150", "gg15", "soft cast iron", "durabar"],
            Group = "soft cast iron",
            Density = 7150, ModulusGPa = 100, TensileMPa = 200, YieldMPa = double.NaN, Kc11 = 1020, Mc = 0.25,
            Poisson = 0.26, Expansion = 10.5, ShearShare = 1.1,
            Cautions = [MetalCautions.Iron],
        },
        new()
        {
            Name = "hard cast iron",
            AlsoCalled = ["gjl-300", "gjl-350", "gg30", "gg35", "chilled iron", "class 50", "class 60", "white iron"],
            Group = "hard cast iron",
            Density = 7300, ModulusGPa = 130, TensileMPa = 320, YieldMPa = double.NaN, Kc11 = 2060, Mc = 0.19,
            Poisson = 0.26, Expansion = 10.5, ShearShare = 1.1,
            Cautions = [MetalCautions.Iron],
        },
        new()
        {
            Name = "ductile iron",
            AlsoCalled = ["gjs-400", "gjs-500", "ggg40", "ggg50", "nodular iron", "nodular cast iron", "sg iron", "65-45-12", "ductile cast iron"],
            Group = "ductile iron",
            Density = 7150, ModulusGPa = 169, TensileMPa = 450, YieldMPa = 300, Kc11 = 1480, Mc = 0.17,
            Poisson = 0.275, Expansion = 12.5, ShearShare = 0.9,
            Cautions = [MetalCautions.Iron],
        },
        new()
        {
            Name = "malleable iron",
            AlsoCalled = ["gtw", "gts", "malleable", "malleable cast iron"],
            Group = "ductile iron",
            Density = 7300, ModulusGPa = 170, TensileMPa = 370, YieldMPa = 230, Kc11 = 1180, Mc = 0.24,
            Poisson = 0.26, Expansion = 11, ShearShare = 0.9,
            Cautions = [MetalCautions.Iron],
        },
        new()
        {
            Name = "aluminium 6061",
            AlsoCalled = ["6061", "6061-t6", "6061t6", "6082", "6082-t6", "6082t6", "6063", "ht30", "aluminium", "aluminum", "alu", "ali", "alloy", "6026", "al", "aluminium alloy"],
            Group = "aluminium",
            Density = 2700, ModulusGPa = 69, TensileMPa = 310, YieldMPa = 275, Kc11 = 700, Mc = 0.25,
            Poisson = 0.33, Expansion = 23.6, ShearShare = 0.65,
            Cautions = [MetalCautions.Aluminium],
        },
        new()
        {
            Name = "aluminium 2024",
            AlsoCalled = ["2024", "2024-t3", "2011", "2014", "2017", "dural", "duralumin", "he15", "fc1"],
            Group = "aluminium",
            Density = 2780, ModulusGPa = 73, TensileMPa = 470, YieldMPa = 325, Kc11 = 780, Mc = 0.23,
            Poisson = 0.33, Expansion = 23, ShearShare = 0.6,
            Cautions = [MetalCautions.Aluminium],
        },
        new()
        {
            Name = "aluminium 7075",
            AlsoCalled = ["7075", "7075-t6", "7050", "7068", "alumec", "fortal", "ergal"],
            Group = "aluminium",
            Density = 2810, ModulusGPa = 72, TensileMPa = 570, YieldMPa = 505, Kc11 = 850, Mc = 0.23,
            Poisson = 0.33, Expansion = 23.4, ShearShare = 0.6,
            Cautions = [MetalCautions.Aluminium],
        },
        new()
        {
            Name = "aluminium 5083",
            AlsoCalled = ["5083", "5754", "5052", "5251", "marine aluminium", "tooling plate", "mic6", "cast tooling plate"],
            Group = "aluminium",
            Density = 2660, ModulusGPa = 71, TensileMPa = 300, YieldMPa = 150, Kc11 = 700, Mc = 0.25,
            Poisson = 0.33, Expansion = 24, ShearShare = 0.6,
            Cautions = [MetalCautions.Aluminiumgum],
        },
        new()
        {
            Name = "aluminium 1100",
            AlsoCalled = ["1100", "1050a", "al 1050", "al 1060", "pure aluminium", "pure aluminum", "soft aluminium"],
            Group = "aluminium",
            Density = 2710, ModulusGPa = 69, TensileMPa = 110, YieldMPa = 100, Kc11 = 500, Mc = 0.25,
            Poisson = 0.33, Expansion = 23.6, ShearShare = 0.65,
            Cautions = [MetalCautions.Aluminiumgum],
        },
        new()
        {
            Name = "cast aluminium",
            AlsoCalled = ["a356", "356", "lm25", "lm6", "adc12", "a380", "cast aluminum", "alsi", "alsi10mg", "aluminium casting", "lm4"],
            Group = "cast aluminium",
            Density = 2680, ModulusGPa = 72, TensileMPa = 240, YieldMPa = 170, Kc11 = 830, Mc = 0.23,
            Poisson = 0.33, Expansion = 21.5, ShearShare = 0.65,
            Cautions = [MetalCautions.Aluminium],
        },
        new()
        {
            Name = "magnesium az31",
            AlsoCalled = ["az31", "az91", "magnesium", "mg", "az61", "zk60", "elektron", "magnesium alloy"],
            Group = "magnesium",
            Density = 1770, ModulusGPa = 45, TensileMPa = 250, YieldMPa = 170, Kc11 = 390, Mc = 0.19,
            Poisson = 0.35, Expansion = 26, ShearShare = 0.6,
            Cautions = [MetalCautions.Magnesium],
        },
        new()
        {
            Name = "titanium grade 2",
            AlsoCalled = ["grade 2", "grade2", "cp titanium", "pure titanium", "3.7035", "ti2", "titanium", "ti"],
            Group = "titanium",
            Density = 4510, ModulusGPa = 103, TensileMPa = 400, YieldMPa = 300, Kc11 = 1500, Mc = 0.22,
            Poisson = 0.34, Expansion = 8.9, ShearShare = 0.6,
            Cautions = [MetalCautions.Titanium],
        },
        new()
        {
            Name = "titanium 6al-4v",
            AlsoCalled = ["ti-6al-4v", "ti6al4v", "6al4v", "6al-4v", "grade 5", "grade5", "3.7165", "ti5", "tc4"],
            Group = "titanium",
            Density = 4430, ModulusGPa = 114, TensileMPa = 950, YieldMPa = 880, Kc11 = 1700, Mc = 0.23,
            Poisson = 0.34, Expansion = 8.6, ShearShare = 0.6,
            Cautions = [MetalCautions.Titanium],
        },
        new()
        {
            Name = "monel",
            AlsoCalled = ["monel 400", "m400", "400 monel", "k500", "monel k500", "2.4360"],
            Group = "nickel-copper",
            Density = 8800, ModulusGPa = 179, TensileMPa = 550, YieldMPa = 240, Kc11 = 2200, Mc = 0.22,
            Poisson = 0.32, Expansion = 13.9, ShearShare = 0.65,
            Cautions = [MetalCautions.Workhard, MetalCautions.Nickel],
        },
        new()
        {
            Name = "inconel 625",
            AlsoCalled = ["inconel", "625", "600", "inconel 600", "2.4856", "2.4816", "alloy 625"],
            Group = "nickel superalloy",
            Density = 8440, ModulusGPa = 205, TensileMPa = 850, YieldMPa = 420, Kc11 = 2700, Mc = 0.24,
            Poisson = 0.3, Expansion = 12.8, ShearShare = 0.65,
            Cautions = [MetalCautions.Workhard, MetalCautions.Nickel],
        },
        new()
        {
            Name = "inconel 718",
            AlsoCalled = ["718", "2.4668", "nimonic", "hastelloy", "waspaloy", "rene", "c276"],
            Group = "nickel superalloy",
            Density = 8190, ModulusGPa = 200, TensileMPa = 1240, YieldMPa = 1030, Kc11 = 3000, Mc = 0.24,
            Poisson = 0.29, Expansion = 13, ShearShare = 0.65,
            Cautions = [MetalCautions.Workhard, MetalCautions.Nickel],
        },
        new()
        {
            Name = "zinc alloy",
            AlsoCalled = ["zamak", "zamak 3", "mazak", "za8", "za12", "zinc", "die cast zinc", "pot metal"],
            Group = "zinc",
            Density = 6600, ModulusGPa = 85, TensileMPa = 280, YieldMPa = 220, Kc11 = 500, Mc = 0.2,
            Poisson = 0.3, Expansion = 27.4, ShearShare = 0.75,
        },
        new()
        {
            Name = "lead",
            AlsoCalled = ["pb", "wheel weights", "babbitt", "white metal", "tin", "solder", "pewter"],
            Group = "lead",
            Density = 11340, ModulusGPa = 16, TensileMPa = 18, YieldMPa = 8, Kc11 = 200, Mc = 0.15,
            Poisson = 0.43, Expansion = 29, ShearShare = 0.7,
            Cautions = [MetalCautions.Leadmetal],
        },
        new()
        {
            Name = "silver",
            AlsoCalled = ["sterling", "sterling silver", "925"],
            Group = "precious metal",
            Density = 10360, ModulusGPa = 75, TensileMPa = 250, YieldMPa = 150, Kc11 = 800, Mc = 0.2,
            Poisson = 0.37, Expansion = 19, ShearShare = 0.65,
            Cautions = [MetalCautions.Gummy],
        },
        new()
        {
            Name = "gold",
            AlsoCalled = ["18 carat", "18ct", "14k", "18k"],
            Group = "precious metal",
            Density = 15500, ModulusGPa = 80, TensileMPa = 400, YieldMPa = 250, Kc11 = 800, Mc = 0.2,
            Poisson = 0.42, Expansion = 14, ShearShare = 0.65,
            Cautions = [MetalCautions.Gummy],
        },
        new()
        {
            Name = "graphite",
            AlsoCalled = ["carbon", "edm graphite"],
            Group = "hard cast iron",
            Density = 1800, ModulusGPa = 11, TensileMPa = 40, YieldMPa = double.NaN, Kc11 = 100, Mc = 0.2,
            Poisson = 0.2, Expansion = 5, ShearShare = 1,
            Cautions = [MetalCautions.Graphite],
        },
    ];
}
