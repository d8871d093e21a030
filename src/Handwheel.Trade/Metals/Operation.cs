namespace Handwheel.Trade.Metals;

/// <summary>What is being done, as far as cutting speed depends on it.</summary>
public enum Operation
{
    /// <summary>Milling: end mill, face mill, slot drill.</summary>
    Mill,

    /// <summary>Drilling with a twist drill.</summary>
    Drill,

    /// <summary>Turning or boring, roughing.</summary>
    TurnRough,

    /// <summary>Turning or boring, finishing.</summary>
    TurnFinish,

    /// <summary>Reaming.</summary>
    Ream,

    /// <summary>Tapping with a machine tap.</summary>
    Tap,

    /// <summary>Counterboring or countersinking.</summary>
    Countersink,

    /// <summary>Slitting with a saw on an arbor.</summary>
    Saw,
}
