namespace Handwheel.Trade.Threads;

/// <summary>Basic sizes of a 60 degree thread, unrounded, in the unit of the thread (mm or in).</summary>
/// <param name="Major">Basic major diameter.</param>
/// <param name="Pitch">Basic pitch diameter: D - 0.649519 P.</param>
/// <param name="MinorInternal">Basic minor diameter of the internal thread: D - 1.082532 P.</param>
/// <param name="MinorExternal">Minor diameter of the external thread at its rounded root: D - 1.190785 P (UNR) or D - 1.226869 P (M).</param>
/// <param name="StressArea">Tensile stress area.</param>
public readonly record struct ThreadBasics(double Major, double Pitch, double MinorInternal, double MinorExternal, double StressArea);
