using Handwheel.Jobs.Moves;

namespace Handwheel.Plan.Steps;

// Where the spindle stands beside an edge: the axis off it, which side of it, and the exact reading with nothing left on. Millimetres.
internal readonly record struct EdgeOff(string Word, Axis Axis, bool Plus, double Exact);
