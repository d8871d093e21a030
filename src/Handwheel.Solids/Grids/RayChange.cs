namespace Handwheel.Solids.Grids;

// How a ray was before a cut.
internal readonly record struct RayChange(int Set, int Ray, double Lo, double Hi, double[]? More);
