namespace Handwheel.Jobs.Drawings;

/// <summary>The plan shape of a feature. Subtypes are the only shapes there are; each says its sizes with limits, millimetres and radians.</summary>
public abstract record FeatureShape
{
    private protected FeatureShape()
    {
    }
}
