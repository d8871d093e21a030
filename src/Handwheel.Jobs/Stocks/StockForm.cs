namespace Handwheel.Jobs.Stocks;

/// <summary>The forms stock comes in.</summary>
public enum StockForm
{
    /// <summary>A rectangular bar, plate or blank.</summary>
    Bar,

    /// <summary>Round bar, or tube with a bore.</summary>
    Round,

    /// <summary>Hexagon bar.</summary>
    Hex,
}
