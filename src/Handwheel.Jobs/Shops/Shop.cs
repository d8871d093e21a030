namespace Handwheel.Jobs.Shops;

/// <summary>What is on hand. Lengths in millimetres, angles in radians.</summary>
public sealed record Shop
{
    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>The mill; null where none is written.</summary>
    public Mill? Mill { get; init; }

    /// <summary>The rotary table.</summary>
    public Rotary? Rotary { get; init; }

    /// <summary>The indexer.</summary>
    public Indexer? Indexer { get; init; }

    /// <summary>What holds work: vises, chucks, clamps, plates, by name.</summary>
    public IReadOnlyDictionary<string, Holder> Holders { get; init; } = new SortedDictionary<string, Holder>(StringComparer.Ordinal);

    /// <summary>Every cutter by name.</summary>
    public IReadOnlyDictionary<string, Cutter> Cutters { get; init; } = new SortedDictionary<string, Cutter>(StringComparer.Ordinal);

    /// <summary>Parallels on hand, heights.</summary>
    public IReadOnlyList<double> Parallels { get; init; } = [];

    /// <summary>Edge finders, pins, gauge blocks, papers and measuring tools by name, with their size.</summary>
    public IReadOnlyDictionary<string, Gauge> Gauges { get; init; } = new SortedDictionary<string, Gauge>(StringComparer.Ordinal);

    /// <summary>The push of an arbor press, newtons; null where there is none.</summary>
    public double? PressPush { get; init; }

    /// <summary>A cutter under this diameter is small.</summary>
    public double SmallUnder { get; init; } = 3;

    /// <summary>A web under this thickness is thin.</summary>
    public double ThinUnder { get; init; } = 1;
}
