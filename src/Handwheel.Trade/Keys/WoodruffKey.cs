namespace Handwheel.Trade.Keys;

/// <summary>A Woodruff key; all mm.</summary>
/// <param name="Name">Number, or width by diameter.</param>
/// <param name="Width">Width.</param>
/// <param name="Diameter">Diameter of the circle, which is the cutter's.</param>
/// <param name="Height">Height of the key.</param>
/// <param name="ShaftDepth">Depth of the keyseat at the side.</param>
/// <param name="Basis">Where from.</param>
public sealed record WoodruffKey(string Name, double Width, double Diameter, double Height, double ShaftDepth, Basis Basis);
