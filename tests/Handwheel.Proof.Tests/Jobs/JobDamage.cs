using Handwheel.Jobs.Moves;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Jobs;

/// <summary>Slips of one reading: where it stands in a step, another is cranked to, on either side of zero alike.</summary>
internal static class JobDamage
{
    public static Course X(this Course course, string step, double from, double to) =>
        course.Moves(step, r => r with { X = Slip(r.X, from, to) });

    public static Course Y(this Course course, string step, double from, double to) =>
        course.Moves(step, r => r with { Y = Slip(r.Y, from, to) });

    public static Course Z(this Course course, string step, double from, double to) =>
        course.Moves(step, r => r with { Z = Slip(r.Z, from, to) });

    public static SetupFacts Raise(this SetupFacts setup, string name, double by) => setup with
    {
        Fixtures = [.. setup.Fixtures.Select(f => f.Name.Contains(name, StringComparison.Ordinal) ? f with { Most = f.Most with { Z = f.Most.Z + by } } : f)],
    };

    private static double Slip(double value, double from, double to) =>
        Math.Abs(value - from) < 1e-9 ? to : Math.Abs(value + from) < 1e-9 ? -to : value;
}
