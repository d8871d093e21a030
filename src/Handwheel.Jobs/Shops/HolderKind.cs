namespace Handwheel.Jobs.Shops;

/// <summary>What holds work.</summary>
public enum HolderKind
{
    /// <summary>A vise with two parallel jaws.</summary>
    Vise,

    /// <summary>A chuck with three jaws.</summary>
    ThreeJawChuck,

    /// <summary>Clamps and studs on the table or a plate.</summary>
    Clamps,
}
