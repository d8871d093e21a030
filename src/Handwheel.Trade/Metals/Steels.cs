namespace Handwheel.Trade.Metals;

/// <summary>Steels and stainless steels.</summary>
/// <remarks>Typical figures, remembered; strengths within about 15 %, Kienzle constants within 25 % of what published tables give.</remarks>
internal static class Steels
{
    /// <summary>The rows.</summary>
    internal static readonly Metal[] Rows =
    [
        new()
        {
            Name = "mild steel",
            AlsoCalled = ["1018", "1020", "low-carbon steel", "low carbon steel", "s235", "s275", "s355", "en3", "crs", "cold rolled", "cold-rolled steel", "cold rolled steel", "cold drawn steel", "a36", "st37", "black mild steel", "bms", "bright mild steel", "ms", "1015", "steel", "structural steel", "080m15", "070m20", "st52"],
            Group = "low-carbon steel",
            Density = 7850, ModulusGPa = 205, TensileMPa = 440, YieldMPa = 370, Kc11 = 1780, Mc = 0.17,
            Poisson = 0.29, Expansion = 11.7, ShearShare = 0.75,
        },
        new()
        {
            Name = "free-cutting steel",
            AlsoCalled = ["12l14", "11smnpb30", "11smn30", "1215", "en1a", "en1apb", "230m07", "leaded steel", "free machining steel", "free cutting steel", "freecutting steel", "1213", "1144", "stressproof"],
            Group = "free-cutting steel",
            Density = 7850, ModulusGPa = 205, TensileMPa = 540, YieldMPa = 415, Kc11 = 1400, Mc = 0.18,
            Poisson = 0.29, Expansion = 11.7, ShearShare = 0.75,
            Cautions = [MetalCautions.Lead],
        },
        new()
        {
            Name = "c15 steel",
            AlsoCalled = ["c15", "ck15", "c10", "en32", "1.0401", "1.1141"],
            Group = "low-carbon steel",
            Density = 7850, ModulusGPa = 205, TensileMPa = 500, YieldMPa = 300, Kc11 = 1820, Mc = 0.22,
            Poisson = 0.29, Expansion = 11.7, ShearShare = 0.75,
        },
        new()
        {
            Name = "case-hardening steel",
            AlsoCalled = ["16mncr5", "8620", "en36", "20mncr5", "case hardening steel", "1.7131"],
            Group = "low-carbon steel",
            Density = 7850, ModulusGPa = 205, TensileMPa = 600, YieldMPa = 400, Kc11 = 2100, Mc = 0.26,
            Poisson = 0.29, Expansion = 11.7, ShearShare = 0.75,
        },
        new()
        {
            Name = "medium-carbon steel",
            AlsoCalled = ["1045", "c45", "ck45", "1040", "en8", "080m40", "1035", "c35", "1050", "medium carbon steel"],
            Group = "medium-carbon steel",
            Density = 7850, ModulusGPa = 206, TensileMPa = 650, YieldMPa = 400, Kc11 = 2220, Mc = 0.14,
            Poisson = 0.29, Expansion = 11.5, ShearShare = 0.75,
        },
        new()
        {
            Name = "high-carbon steel",
            AlsoCalled = ["c60", "ck60", "1060", "1080", "1095", "1075", "spring steel", "en9", "high carbon steel", "piano wire", "music wire", "5160"],
            Group = "high-carbon steel",
            Density = 7850, ModulusGPa = 206, TensileMPa = 750, YieldMPa = 450, Kc11 = 2130, Mc = 0.18,
            Poisson = 0.29, Expansion = 11.5, ShearShare = 0.75,
            Cautions = [MetalCautions.Worksteel],
        },
        new()
        {
            Name = "case-hardening nickel steel",
            AlsoCalled = ["18crni6", "18crnimo7-6", "17crnimo6", "1.6587", "3310"],
            Group = "alloy steel",
            Density = 7850, ModulusGPa = 205, TensileMPa = 900, YieldMPa = 650, Kc11 = 2260, Mc = 0.30,
            Poisson = 0.29, Expansion = 11.7, ShearShare = 0.75,
        },
        new()
        {
            Name = "e295 steel",
            AlsoCalled = ["e295", "st50", "st50-2", "1.0050"],
            Group = "medium-carbon steel",
            Density = 7850, ModulusGPa = 206, TensileMPa = 530, YieldMPa = 295, Kc11 = 1990, Mc = 0.26,
            Poisson = 0.29, Expansion = 11.7, ShearShare = 0.75,
        },
        new()
        {
            Name = "e335 steel",
            AlsoCalled = ["e335", "st60", "st60-2", "e360", "st70"],
            Group = "medium-carbon steel",
            Density = 7850, ModulusGPa = 206, TensileMPa = 620, YieldMPa = 335, Kc11 = 2110, Mc = 0.17,
            Poisson = 0.29, Expansion = 11.5, ShearShare = 0.75,
        },
        new()
        {
            Name = "alloy steel",
            AlsoCalled = ["4140", "42crmo4", "4130", "25crmo4", "en19", "709m40", "chromoly", "chrome moly", "708m40", "alloy steels"],
            Group = "alloy steel",
            Density = 7850, ModulusGPa = 207, TensileMPa = 750, YieldMPa = 500, Kc11 = 2500, Mc = 0.26,
            Poisson = 0.29, Expansion = 12.3, ShearShare = 0.75,
        },
        new()
        {
            Name = "chrome-molybdenum steel 34CrMo4",
            AlsoCalled = ["34crmo4", "1.7220", "4135"],
            Group = "alloy steel",
            Density = 7850, ModulusGPa = 207, TensileMPa = 850, YieldMPa = 600, Kc11 = 2240, Mc = 0.21,
            Poisson = 0.29, Expansion = 12.3, ShearShare = 0.75,
        },
        new()
        {
            Name = "chrome-vanadium spring steel",
            AlsoCalled = ["50crv4", "51crv4", "1.8159", "6150"],
            Group = "alloy steel",
            Density = 7850, ModulusGPa = 206, TensileMPa = 950, YieldMPa = 700, Kc11 = 2220, Mc = 0.26,
            Poisson = 0.29, Expansion = 11.5, ShearShare = 0.75,
            Cautions = [MetalCautions.Worksteel],
        },
        new()
        {
            Name = "hot-work die steel",
            AlsoCalled = ["55nicrmov6", "56nicrmov7", "1.2714"],
            Group = "tool steel",
            Density = 7850, ModulusGPa = 207, TensileMPa = 800, YieldMPa = 600, Kc11 = 1740, Mc = 0.24,
            Poisson = 0.29, Expansion = 12, ShearShare = 0.75,
            Cautions = [MetalCautions.Toolsteel],
        },
        new()
        {
            Name = "nickel alloy steel",
            AlsoCalled = ["4340", "en24", "817m40", "34crnimo6", "30crnimo8"],
            Group = "alloy steel",
            Density = 7850, ModulusGPa = 207, TensileMPa = 850, YieldMPa = 650, Kc11 = 2500, Mc = 0.26,
            Poisson = 0.29, Expansion = 12.3, ShearShare = 0.75,
        },
        new()
        {
            Name = "prehardened steel",
            AlsoCalled = ["4140ht", "4140pht", "4140ph", "4140 pht", "p20", "1.2311", "40crmnmo7", "pre-hard", "prehard", "pre hardened steel", "en24t", "en19t"],
            Group = "hard steel",
            Density = 7850, ModulusGPa = 207, TensileMPa = 1000, YieldMPa = 850, Kc11 = 2700, Mc = 0.24,
            Poisson = 0.29, Expansion = 12.3, ShearShare = 0.75,
        },
        new()
        {
            Name = "tool steel",
            AlsoCalled = ["o1", "01 tool", "a2", "d2", "w1", "gauge plate", "ground flat stock", "gfs", "silver steel", "drill rod", "1.2510", "1.2842", "1.2379", "115crv3", "h13", "s7", "tool steel annealed"],
            Group = "tool steel",
            Density = 7800, ModulusGPa = 208, TensileMPa = 700, YieldMPa = 420, Kc11 = 2300, Mc = 0.22,
            Poisson = 0.29, Expansion = 11.5, ShearShare = 0.75,
            Cautions = [MetalCautions.Toolsteel],
        },
        new()
        {
            Name = "high-speed steel",
            AlsoCalled = ["hss", "m2", "m42", "t1", "hss blank", "high speed steel", "1.3343"],
            Group = "hard steel",
            Density = 8100, ModulusGPa = 215, TensileMPa = 900, YieldMPa = 500, Kc11 = 2900, Mc = 0.22,
            Poisson = 0.29, Expansion = 11, ShearShare = 0.75,
            Cautions = [MetalCautions.Toolsteel],
        },
        new()
        {
            Name = "manganese steel",
            AlsoCalled = ["hadfield", "11-14 manganese", "mangalloy", "high manganese steel"],
            Group = "manganese steel",
            Density = 7900, ModulusGPa = 190, TensileMPa = 900, YieldMPa = 400, Kc11 = 3300, Mc = 0.24,
            Poisson = 0.29, Expansion = 18, ShearShare = 0.75,
            Cautions = [MetalCautions.Workhard],
        },
        new()
        {
            Name = "cast steel",
            AlsoCalled = ["steel casting", "gs45", "gs-45", "ge240"],
            Group = "cast steel",
            Density = 7850, ModulusGPa = 205, TensileMPa = 450, YieldMPa = 240, Kc11 = 1600, Mc = 0.17,
            Poisson = 0.29, Expansion = 11.7, ShearShare = 0.75,
        },
        new()
        {
            Name = "cast steel GS-52",
            AlsoCalled = ["gs52", "gs-52", "ge260"],
            Group = "cast steel",
            Density = 7850, ModulusGPa = 205, TensileMPa = 520, YieldMPa = 260, Kc11 = 1780, Mc = 0.17,
            Poisson = 0.29, Expansion = 11.7, ShearShare = 0.75,
        },
        new()
        {
            Name = "stainless 304",
            AlsoCalled = ["304", "302", "304l", "1.4301", "1.4307", "v2a", "18-8", "301", "321", "347", "a2 stainless", "a2-70", "en58", "x5crni18-10", "stainless", "stainless steel", "inox", "ss", "ss304", "309", "310"],
            Group = "austenitic stainless",
            Density = 7930, ModulusGPa = 193, TensileMPa = 600, YieldMPa = 240, Kc11 = 2350, Mc = 0.21,
            Poisson = 0.29, Expansion = 17.2, ShearShare = 0.75,
            Cautions = [MetalCautions.Workhard],
        },
        new()
        {
            Name = "stainless 316",
            AlsoCalled = ["316", "316l", "1.4401", "1.4404", "v4a", "a4 stainless", "marine stainless", "ss316", "314"],
            Group = "austenitic stainless",
            Density = 7980, ModulusGPa = 193, TensileMPa = 580, YieldMPa = 240, Kc11 = 2350, Mc = 0.21,
            Poisson = 0.29, Expansion = 16, ShearShare = 0.75,
            Cautions = [MetalCautions.Workhard],
        },
        new()
        {
            Name = "stainless 303",
            AlsoCalled = ["303", "1.4305", "303se", "free-cutting stainless", "free cutting stainless", "free machining stainless", "ss303"],
            Group = "free-cutting stainless",
            Density = 7930, ModulusGPa = 193, TensileMPa = 620, YieldMPa = 240, Kc11 = 2000, Mc = 0.21,
            Poisson = 0.29, Expansion = 17.2, ShearShare = 0.75,
            Cautions = [MetalCautions.Workhard],
        },
        new()
        {
            Name = "stainless 416",
            AlsoCalled = ["416", "430f", "1.4005", "1.4104", "420f"],
            Group = "free-cutting martensitic stainless",
            Density = 7750, ModulusGPa = 200, TensileMPa = 550, YieldMPa = 300, Kc11 = 1900, Mc = 0.21,
            Poisson = 0.28, Expansion = 9.9, ShearShare = 0.75,
        },
        new()
        {
            Name = "stainless 410",
            AlsoCalled = ["410", "420", "431", "440", "440c", "440b", "1.4006", "1.4021", "1.4057", "martensitic stainless", "430", "1.4016", "knife steel"],
            Group = "martensitic stainless",
            Density = 7750, ModulusGPa = 200, TensileMPa = 600, YieldMPa = 350, Kc11 = 2100, Mc = 0.21,
            Poisson = 0.28, Expansion = 9.9, ShearShare = 0.75,
        },
        new()
        {
            Name = "stainless 17-4",
            AlsoCalled = ["17-4", "17-4ph", "17-4 ph", "630", "1.4542", "ph stainless", "15-5", "17-7"],
            Group = "hardening stainless",
            Density = 7800, ModulusGPa = 197, TensileMPa = 1000, YieldMPa = 800, Kc11 = 2500, Mc = 0.22,
            Poisson = 0.28, Expansion = 10.8, ShearShare = 0.75,
            Cautions = [MetalCautions.Workhard],
        },
        new()
        {
            Name = "kovar",
            AlsoCalled = ["invar", "fe-ni36", "invar 36", "nilo", "alloy 42"],
            Group = "austenitic stainless",
            Density = 8100, ModulusGPa = 141, TensileMPa = 500, YieldMPa = 280, Kc11 = 2300, Mc = 0.22,
            Poisson = 0.29, Expansion = 1.5, ShearShare = 0.65,
            Cautions = [MetalCautions.Workhard, MetalCautions.Nickel],
        },
    ];
}
