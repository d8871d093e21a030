using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Stocks;
using Handwheel.Proof.Following;
using Handwheel.Quantities;

namespace Handwheel.Proof.Questions;

/// <summary>All that a question of the proof may look at: moves and declared facts, the drawing, the stock, the shop, and what following them showed.</summary>
internal sealed record Subject
{
    /// <summary>The course.</summary>
    public required Course Course { get; init; }

    /// <summary>The drawing.</summary>
    public required Drawing Drawing { get; init; }

    /// <summary>The stock.</summary>
    public required Stock Stock { get; init; }

    /// <summary>The shop.</summary>
    public required Shop Shop { get; init; }

    /// <summary>What following the course showed.</summary>
    public required Trace Trace { get; init; }

    /// <summary>The part with every limit on its side of least metal.</summary>
    public required DrawnPart Least { get; init; }

    /// <summary>The part with every limit on its side of most metal.</summary>
    public required DrawnPart Most { get; init; }

    /// <summary>The part as aimed.</summary>
    public required DrawnPart Aimed { get; init; }

    /// <summary>The options.</summary>
    public required ProofOptions Options { get; init; }

    /// <summary>The unit findings speak.</summary>
    public LengthUnit Unit => Course.Unit;
}
