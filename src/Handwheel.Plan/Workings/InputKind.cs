namespace Handwheel.Plan.Workings;

/// <summary>Where a number in a working comes from.</summary>
public enum InputKind
{
    /// <summary>Typed in the job.</summary>
    Typed,

    /// <summary>The middle of a size&#39;s limits.</summary>
    Aimed,

    /// <summary>From the shop: a true diameter, a dial&#39;s step.</summary>
    Shop,

    /// <summary>Worked out by another working.</summary>
    WorkedOut,

    /// <summary>A rule of the trade with its source.</summary>
    Rule,
}
