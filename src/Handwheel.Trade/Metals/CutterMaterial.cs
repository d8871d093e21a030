namespace Handwheel.Trade.Metals;

/// <summary>What the cutting edge is made of.</summary>
public enum CutterMaterial
{
    /// <summary>High-speed steel.</summary>
    HighSpeedSteel,

    /// <summary>Cemented carbide.</summary>
    Carbide,

    /// <summary>Plain carbon tool steel: half the speed of high-speed steel.</summary>
    CarbonSteel,
}
