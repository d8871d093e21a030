using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Holdings;

/// <summary>
/// One way the stock is held, from clamping to unclamping. Holding frame: Z up along the spindle, X long travel, Y cross travel, origin at its zero.
/// The part comes into it by <see cref="Up"/>, then <see cref="Turn"/> about Z, then <see cref="TiltX"/> about holding X and <see cref="TiltY"/> about
/// holding Y, all right-handed, then moved so that its zero steps hold.
/// </summary>
public sealed record Holding : Stage
{
    /// <summary>The holder&#39;s name in the shop (<c>small</c>).</summary>
    public required string Holder { get; init; }

    /// <summary>Whether it stands on the rotary, so that it and the work turn.</summary>
    public bool OnRotary { get; init; }

    /// <summary>Whether the work is held in the indexer (axis along holding X).</summary>
    public bool InIndexer { get; init; }

    /// <summary>The part&#39;s side that looks up.</summary>
    public FaceUp Up { get; init; } = FaceUp.Top;

    /// <summary>The part&#39;s turn about Z after that, radians.</summary>
    public double Turn { get; init; }

    /// <summary>Tilt about holding X after that, radians.</summary>
    public double TiltX { get; init; }

    /// <summary>Tilt about holding Y after that, radians.</summary>
    public double TiltY { get; init; }

    /// <summary>Whether the jaws lie along holding Y (else along X, the fixed jaw at +Y).</summary>
    public bool JawsAlongY { get; init; }

    /// <summary>Reading of the tops of the jaws, as typed; null: worked out from parallels and jaws.</summary>
    public Typed? JawsAt { get; init; }

    /// <summary>Height of the parallels; null: the work stands on the bed.</summary>
    public Typed? Parallels { get; init; }

    /// <summary>Where the holder&#39;s middle stands along the jaws, reading; null: under the zero on the rotary, else under the work&#39;s middle.</summary>
    public Typed? JawsMiddle { get; init; }

    /// <summary>Whether soft jaws are put in for this holding: they may be cut into.</summary>
    public bool SoftJaws { get; init; }

    /// <summary>Whether the work was only slid along in the same holder since the holding before (its side and bed stay).</summary>
    public bool Slid { get; init; }

    /// <summary>What is clamped, for clamps: their middles in readings x, y; height of the face they press on.</summary>
    public IReadOnlyList<ClampAt> Clamps { get; init; } = [];
}
