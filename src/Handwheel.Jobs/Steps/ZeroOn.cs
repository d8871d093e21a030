namespace Handwheel.Jobs.Steps;

/// <summary>What a zero is found on.</summary>
public enum ZeroOn
{
    /// <summary>The rotary&#39;s centre, with or without a named feature standing on it.</summary>
    RotaryCentre,

    /// <summary>The highest face of the stock as it is held (<c>bar top</c>).</summary>
    StockTop,

    /// <summary>The top of a named feature.</summary>
    FeatureTop,

    /// <summary>The stock&#39;s left end (least holding X).</summary>
    LeftEnd,

    /// <summary>The stock&#39;s right end.</summary>
    RightEnd,

    /// <summary>The stock&#39;s near side (least holding Y).</summary>
    NearSide,

    /// <summary>The stock&#39;s far side.</summary>
    FarSide,

    /// <summary>The fixed jaw&#39;s face.</summary>
    FixedJaw,

    /// <summary>The middle between two opposite sides of the stock or of a named feature.</summary>
    Middle,

    /// <summary>A named hole or boss, by its axis.</summary>
    FeatureAxis,

    /// <summary>The parallels or the bed, under the work.</summary>
    Bed,
}
