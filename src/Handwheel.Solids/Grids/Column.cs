using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Grids;

// A layer of constant radius on a level path in the part's frame that takes everything above its floor: what is not under it is not its business.
internal readonly record struct Column(CutterPath Path, double Radius, double Floor, Box3 Bounds);
