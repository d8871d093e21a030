using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

// A place of a surface that was met, how far, with the unit normal out of the metal there, and the name its plane goes by.
internal readonly record struct MetPlace(Point3 Place, Vector3 Normal, double Distance, SurfaceId Surface, int Name);
