namespace Handwheel.Jobs.Shops;

/// <summary>The kinds of cutter a shop may hold.</summary>
public enum CutterKind
{
    /// <summary>Flat end mill.</summary>
    EndMill,

    /// <summary>Ball-nosed end mill.</summary>
    Ball,

    /// <summary>End mill with a corner radius.</summary>
    BullNose,

    /// <summary>Twist drill.</summary>
    Drill,

    /// <summary>Spotting drill.</summary>
    SpottingDrill,

    /// <summary>Centre drill.</summary>
    CentreDrill,

    /// <summary>Reamer with a lead.</summary>
    Reamer,

    /// <summary>Counterbore with pilot.</summary>
    Counterbore,

    /// <summary>Countersink.</summary>
    Countersink,

    /// <summary>Conical chamfer cutter.</summary>
    Chamfer,

    /// <summary>Dovetail cutter.</summary>
    Dovetail,

    /// <summary>Slitting saw on an arbor.</summary>
    Saw,

    /// <summary>T-slot cutter.</summary>
    TSlot,

    /// <summary>Woodruff cutter.</summary>
    Woodruff,

    /// <summary>Boring head with a bar.</summary>
    BoringBar,

    /// <summary>Fly cutter.</summary>
    FlyCutter,

    /// <summary>Tap.</summary>
    Tap,

    /// <summary>Broach or square punch: a prism pushed along Z.</summary>
    Broach,
}
