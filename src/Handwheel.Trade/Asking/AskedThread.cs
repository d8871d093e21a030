using Handwheel.Trade.Threads;

namespace Handwheel.Trade.Asking;

/// <summary>A thread as it was asked for: Unified or metric.</summary>
/// <param name="Unified">The Unified thread, or null.</param>
/// <param name="Metric">The metric thread, or null.</param>
internal sealed record AskedThread(UnifiedThread? Unified, MetricThread? Metric)
{
    /// <summary>Its name.</summary>
    internal string Name => Unified?.Name ?? Metric!.Name;

    /// <summary>Its size without pitch: <c>#10</c>, <c>1/4</c>, <c>M6</c>.</summary>
    internal string Size => Unified?.SizeName ?? "M" + Question.Plainly(Metric!.DiameterMm);

    /// <summary>Millimetres in its unit.</summary>
    internal double Scale => Unified is null ? 1 : 25.4;

    /// <summary>Its unit.</summary>
    internal string Unit => Unified is null ? "mm" : "in";

    /// <summary>Pitch, mm.</summary>
    internal double PitchMm => Unified is null ? Metric!.PitchMm : Unified.PitchIn * 25.4;

    /// <summary>Major diameter, mm.</summary>
    internal double MajorMm => Unified is null ? Metric!.DiameterMm : Unified.MajorIn * 25.4;

    /// <summary>Basic sizes in its own unit.</summary>
    internal ThreadBasics Basics => Unified?.Basics ?? Metric!.Basics;

    /// <summary>What its limits rest on.</summary>
    internal Basis LimitsBasis => Metric?.LimitsBasis ?? Unified!.OwnLimitsBasis;

    /// <summary>Limits of a class in its own unit.</summary>
    /// <param name="name">Class.</param>
    /// <returns>Limits.</returns>
    internal ThreadLimits Limits(string name) => Unified?.Limits(name) ?? Metric!.Limits(name);
}
