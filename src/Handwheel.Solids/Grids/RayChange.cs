namespace Handwheel.Solids.Grids;

// How a ray was before a cut, and between which places it may differ since.
internal readonly record struct RayChange(int Set, int Ray, double Lo, double Hi, double[]? More, double From, double To);
