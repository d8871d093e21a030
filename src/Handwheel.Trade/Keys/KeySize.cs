namespace Handwheel.Trade.Keys;

/// <summary>A parallel key for a shaft, and its keyseats; all mm.</summary>
/// <param name="Width">Width of key and keyseat.</param>
/// <param name="Height">Height of the key.</param>
/// <param name="ShaftDepth">Depth of the shaft's keyseat, from the top of the shaft (t1); for inch keys at the side of the key.</param>
/// <param name="HubDepth">Depth of the hub's keyway over the bore (t2); for inch keys at the side of the key.</param>
/// <param name="Bottom">From the bottom of the shaft's keyseat to the opposite side of the shaft (S).</param>
/// <param name="Top">From the top of the hub's keyway to the opposite side of the bore (T).</param>
/// <param name="Basis">Where from.</param>
public sealed record KeySize(double Width, double Height, double ShaftDepth, double HubDepth, double Bottom, double Top, Basis Basis);
