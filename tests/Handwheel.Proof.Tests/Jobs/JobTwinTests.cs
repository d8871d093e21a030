using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Jobs;

/// <summary>Spoiled twins of the four jobs: each gives the finding a machinist would give at its step, and no other halt but its consequences (common practice, no source).</summary>
public sealed class JobTwinTests(ITestOutputHelper output)
{
    private const double In = 25.4;

    private static readonly Dictionary<string, JobTwin> Knob = new(StringComparer.Ordinal)
    {
        ["half a cutter forgotten round the head"] = new(c => c.X("A8", 0.9995 * In, 0.75 * In), "gouge", "A8"),
        ["a grip indexed 50 degrees on, not 60"] = new(c => c.Moves("A11", r => Near(r.T % 360, -60) ? r with { T = r.T + 10 } : r), "gouge", "A11"),
        ["saw set by its lower face, its thickness forgotten"] = new(c => c.Z("A12", -0.9575 * In, -0.895 * In), "gouge", "A12", "release", "loose"),
        ["bar left too low in the chuck for the saw's screw"] = new(c => c.Setups("A", s => s.Raise("chuck jaws", 0.15 * In)), "strike", "A12"),
        ["neck cut two tenths too deep"] = new(c => c.Z("A9", -0.375 * In, -0.575 * In), "gouge", "A9"),
        ["boring head set thirty thou large"] = new(c => c.Each("B6", e => e is CutterIn i ? i with { Across = 0.656 * In } : e), "gouge", "B6"),
        ["no touch-off after the tap"] = new(c => c.Each("A7", e => e is TouchOff ? null : e), "zero", "A7"),
        ["recess pocketed right through, read for its height"] = new(c => c.Z("B5", 0.75 * In, 0.25 * In), "gouge", "B5"),
    };

    private static readonly Dictionary<string, JobTwin> Quadrant = new(StringComparer.Ordinal)
    {
        ["slot turned the other way"] = new(c => c.TurnTheOtherWay("A13"), "gouge", "A13"),
        ["rotary read as counterclockwise for the slot"] = new(c => c.Moves("A13", r => r with { T = -r.T }), "gouge", "A13"),
        ["rotary read as counterclockwise for the flanks"] = new(c => c.Moves("A15", r => r with { T = -r.T }), "leftover", null, "strike", "gouge"),
        ["second holding centred on the hub"] = new(c => c.Setups("B", s => s with { PartOrigin = default }), "gouge", "B3", "lost-reference", "strike", "release", "loose"),
        ["the smaller saw taken, its screw under the bar"] = new(
            c => c.Each("B4", e => e is CutterIn i ? i with { Cutter = "saw1" } : e is TouchOff t ? t with { With = "saw1" } : e).Z("B4", -9.3, -9.1).Y("B4", -36.3, -27.8), "strike", "B4"),
        ["stop hole on the wrong side"] = new(c => c.Moves("A7", r => Near(r.X, 3.75) ? r with { Y = -r.Y } : r), "gouge", "A7", "plunge"),
        ["plate faced a millimetre too deep"] = new(c => c.Z("A10", -4, -5), "gouge", "A10", "direction"),
    };

    private static readonly Dictionary<string, JobTwin> EndPlate = new(StringComparer.Ordinal)
    {
        ["slack left in the screw at the slot's left end"] = new(c => c.Each("A13", e => e is Move { To.X: -10 } ? null : e), "size", "A13"),
        ["half a cutter forgotten at the ends"] = new(c => c.X("A7", 36, 30), "gouge", "A7", "plunge"),
        ["one turn of the dial miscounted at a screw"] = new(c => c.Moves("A9", r => r.X is 24 or 22 ? r with { X = r.X - 2 } : r), "plunge", "A9", "gouge", "strike"),
        ["holes too shallow for the counterbore's pilot"] = new(c => c.Z("A9", -12.675, -10.15), "strike", "A10"),
        ["no touch-off of the slot cutter"] = new(c => c.Each("A13", e => e is TouchOff ? null : e), "zero", "A13"),
        ["jaws left high for the second side"] = new(c => c.Setups("B", s => s.Raise("jaw", 4)), "strike", "B3"),
        ["depth off by the paper's ten times"] = new(c => c.Each("B3", e => e is TouchOff t ? t with { SetTo = t.SetTo + 0.45 } : e), "gouge", null, "size"),
    };

    private static readonly Dictionary<string, JobTwin> Clamp = new(StringComparer.Ordinal)
    {
        ["tilted the other way"] = new(c => c.Setups("H", s => s with { TiltY = 30 }), "lost-reference", "H1", "gouge", "strike", "zero", "leftover", "size", "grip"),
        ["step milled from one side only"] = new(c => c.Each("G4", e => e is Move { To.Y: < 0 } ? null : e), "leftover", null, "size"),
        ["jaws above the step"] = new(c => c.Setups("G", s => s.Raise("jaw", 6)), "strike", "G4"),
        ["counterbored three millimetres too deep"] = new(c => c.Z("E8", -6.6, -9.6), "gouge", "E8"),
        ["raw end taken for the drawing's end"] = new(c => c.Each("E1", e => e is TouchOff { Axis: Axis.X } t ? t with { SetTo = -5 } : e), "gouge", "E6", "size", "leftover", "plunge"),
        ["clearance drill taken for the tap's hole"] = new(c => c.Each("E6", e => e is CutterIn i ? i with { Cutter = "d6.8" } : e is TouchOff t ? t with { With = "d6.8" } : e), "gouge", "E6"),
        ["half a cutter forgotten at the right end"] = new(c => c.X("F5", 57.98, 50), "gouge", "F5", "lost-reference"),
    };

    public static TheoryData<string, string> Names() =>
        [.. All().SelectMany(j => j.Twins.Keys.Select(n => new TheoryDataRow<string, string>(j.Job, n)))];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_twin_gives_its_finding_and_no_false_halt(string job, string name)
    {
        var (_, build, release, twins) = All().Single(j => j.Job == job);
        var twin = twins[name];
        var read = HandCourse.Read(job);
        var course = build(new CourseBuilder()).Build(release) with { Unit = read.Unit };
        var result = Prove(read, twin.Damage(course));
        foreach (var f in result.Findings.Where(f => f.Grade >= Grade.Caution))
        {
            output.WriteLine(FormattableString.Invariant($"{f.Grade} {f.Code} {f.Step} {f.Move}: {f.Message} | {f.Mend} {f.At}"));
        }

        Assert.Contains(result.Findings, f => f.Grade == Grade.Halt && f.Code == twin.Code && (twin.Step is null || f.Step == twin.Step));
        Assert.DoesNotContain(result.Findings, f => f.Grade == Grade.Halt && f.Code != twin.Code && !twin.Then.Contains(f.Code, StringComparer.Ordinal));
    }

    private static (string Job, Func<CourseBuilder, CourseBuilder> Build, string? Release, Dictionary<string, JobTwin> Twins)[] All() =>
    [
        ("clamp-knob.handwheel", KnobCourse.Build, "h1", Knob),
        ("friction-quadrant.handwheel", QuadrantCourse.Build, "h1", Quadrant),
        ("plain-dial.handwheel", EndPlateCourse.Build, null, EndPlate),
        ("tslot-clamp.handwheel", ClampCourse.Build, null, Clamp),
    ];

    private static ProofResult Prove(Job job, Course course) =>
        Prover.Prove(course, job.Drawing, job.Stock, ShopReader.Read(job.ShopFile, CrankCourse.Example(job.ShopFile)).Value!);

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-6;
}
