namespace Handwheel.Jobs.Drawings;

/// <summary>The side a feature is drawn from. Plan axes of each: see the language reference.</summary>
public enum View
{
    /// <summary>From above: plan X, Y are part X, Y; depth along part Z.</summary>
    Top,

    /// <summary>From the front (looking towards +Y): plan X, Y are part X, Z; depth along part Y.</summary>
    Front,

    /// <summary>From the right end (looking towards -X): plan X, Y are part Y, Z; depth along part X.</summary>
    Right,
}
