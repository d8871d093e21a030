using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Stocks;
using Handwheel.Quantities;

namespace Handwheel.Jobs;

/// <summary>One job as it was meant: everything a document says, checked against itself, nothing worked out yet.</summary>
public sealed record Job
{
    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>The document&#39;s name, without folders.</summary>
    public required string File { get; init; }

    /// <summary>The unit bare numbers are in and the sheet speaks.</summary>
    public required LengthUnit Unit { get; init; }

    /// <summary>The metal as typed.</summary>
    public required string Metal { get; init; }

    /// <summary>The shop&#39;s file as typed.</summary>
    public required string ShopFile { get; init; }

    /// <summary>How many are to be made; 1 unless told.</summary>
    public int ToMake { get; init; } = 1;

    /// <summary>The drawing.</summary>
    public required Drawing Drawing { get; init; }

    /// <summary>The stock.</summary>
    public required Stock Stock { get; init; }

    /// <summary>Holdings and work by hand, in order.</summary>
    public required IReadOnlyList<Stage> Stages { get; init; }
}
