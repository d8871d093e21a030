namespace Handwheel.Trade.Metals;

/// <summary>Cutting speeds of one machining group, ft/min as printed in the sources.</summary>
/// <param name="Name">Group.</param>
/// <param name="Drill">High-speed steel twist drill.</param>
/// <param name="Mill">High-speed steel milling cutter.</param>
/// <param name="TurnRough">High-speed steel, roughing.</param>
/// <param name="TurnFinish">High-speed steel, finishing.</param>
/// <param name="CarbideMill">Carbide milling cutter.</param>
/// <param name="CarbideRough">Carbide, rough turning.</param>
/// <param name="CarbideFinish">Carbide, finish turning.</param>
/// <param name="Basis">Where the high-speed steel figures come from.</param>
internal sealed record SpeedGroup(
    string Name,
    (double Low, double High) Drill,
    (double Low, double High) Mill,
    (double Low, double High) TurnRough,
    (double Low, double High) TurnFinish,
    (double Low, double High) CarbideMill,
    (double Low, double High) CarbideRough,
    (double Low, double High) CarbideFinish,
    Basis Basis);
