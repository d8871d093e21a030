namespace Handwheel.Plan.Lines;

/// <summary>One line of a step as a person works through it. Subtypes are the only kinds there are.</summary>
public abstract record SheetLine
{
    private protected SheetLine()
    {
    }

    /// <summary>A remark printed beside it; empty where none.</summary>
    public string Remark { get; init; } = string.Empty;
}
