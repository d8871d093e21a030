using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Strike: do cutter, neck, shank, arbor screw, chuck or nose meet jaws, clamps, parallels, rotary or table (the whole cutter, certified by the engine), or
/// metal (what does not cut, looked at on upright lines at stations along the move)? Is the work swung against the column? One of a kind a step. (A free
/// move that meets metal is found while the pieces are followed.)
/// </summary>
internal static class Strike
{
    private const double Enough = 0.2;
    private const double Fine = 0.01;
    private const double Rubs = 0.02;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Halts and cautions <c>strike</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var told = new HashSet<(string Step, string What)>();
        var near = new Dictionary<(string Step, string What), Finding>();
        var fixtures = new Dictionary<int, IReadOnlyList<(FixtureFacts Facts, ISolid? Turning, ISolid? Standing)>>();
        foreach (var stroke in subject.Trace.Strokes)
        {
            if (stroke is not { Shape: { } shape, Move: not null, Stage.Facts.Setup: { } setup })
            {
                continue;
            }

            if (!fixtures.TryGetValue(stroke.Stage.Index, out var around))
            {
                around = [.. setup.Fixtures.Select(f => (f, FixtureSolids.InPart(f, setup), FixtureSolids.Of(f)))];
                fixtures.Add(stroke.Stage.Index, around);
            }

            foreach (var finding in Fixtures(subject, stroke, shape, around, told, near).Concat(Metals(subject, stroke, shape, told)).Concat(Column(subject, stroke, setup, told)))
            {
                yield return finding;
            }
        }

        // A close pass is told only where no move of the step strikes the same thing.
        foreach (var finding in near.Where(n => !told.Contains(n.Key)).Select(n => n.Value))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> Fixtures(
        Subject subject, Stroke stroke, CutterShape shape, IReadOnlyList<(FixtureFacts Facts, ISolid? Turning, ISolid? Standing)> around, HashSet<(string, string)> told, Dictionary<(string, string), Finding> near)
    {
        foreach (var leg in stroke.Legs)
        {
            var swept = new SweptCut(shape, leg.Path, leg.ToPart, whole: true);
            foreach (var (facts, turning, standing) in around)
            {
                if (facts.Soft || told.Contains((stroke.Step.Id, facts.Name)))
                {
                    continue;
                }

                var turns = facts.Turns || !stroke.Stage.Frame!.Turns;
                var obstacle = turns ? turning : standing;
                if (obstacle is null)
                {
                    continue;
                }

                ISolid mover = turns ? swept : Standing(shape, leg);
                var answer = Solids.Questions.Strike.Check(mover, obstacle, Enough, Fine, near.ContainsKey((stroke.Step.Id, facts.Name)) ? 4_000 : 20_000);
                var at = turns ? answer.Place : stroke.Stage.Frame!.PartAt(leg.To.T).Inverse().Apply(answer.Place);
                if (answer.Verdict == StrikeVerdict.Strikes && answer.Depth > Fine)
                {
                    told.Add((stroke.Step.Id, facts.Name));
                    yield return FindingCatalogue.Strike(Places.Of(stroke, at), What(stroke, shape, mover, answer.Place), facts.Name, subject.Unit, answer.Depth);
                }
                else if (answer.Verdict != StrikeVerdict.Clear && !near.ContainsKey((stroke.Step.Id, facts.Name)))
                {
                    near[(stroke.Step.Id, facts.Name)] = FindingCatalogue.StrikeNear(Places.Of(stroke, at), stroke.CutterName, facts.Name, subject.Unit, Math.Max(0, answer.Clearance));
                }
            }
        }
    }

    // Round a standing fixture the cutter goes where its readings are, whatever the work turns.
    private static SweptCut Standing(CutterShape shape, Leg leg) => new(
        shape,
        CutterPath.Straight(new Point3(leg.From.X, leg.From.Y, leg.From.Z), new Point3(leg.To.X, leg.To.Y, leg.To.Z)),
        Pose.Identity,
        whole: true);

    private static string What(Stroke stroke, CutterShape shape, ISolid mover, Point3 at)
    {
        if (mover is SweptCut swept)
        {
            var inFrame = swept.ToPart.Inverse().Apply(at);
            var low = Math.Min(swept.Path.From.Z, swept.Path.To.Z);
            return shape.PieceAt(inFrame.Z - low) is { } piece ? Named(stroke, piece.Part) : stroke.CutterName;
        }

        return stroke.CutterName;
    }

    private static string Named(Stroke stroke, CutterPart part) => part switch
    {
        CutterPart.Neck => $"{stroke.CutterName}'s neck",
        CutterPart.Shank => $"{stroke.CutterName}'s shank",
        CutterPart.Arbor => $"{stroke.CutterName}'s arbor",
        CutterPart.Screw => $"{stroke.CutterName}'s arbor screw",
        CutterPart.Chuck => $"{stroke.CutterName}'s chuck",
        CutterPart.Nose => "The spindle's nose",
        _ => stroke.CutterName,
    };

    private static IEnumerable<Finding> Metals(Subject subject, Stroke stroke, CutterShape shape, HashSet<(string, string)> told)
    {
        if (stroke.Cutter is { Kind: CutterKind.Tap } tap)
        {
            if (!told.Contains((stroke.Step.Id, tap.Name)) && Tapping.Look(subject, stroke) is { } finding && told.Add((stroke.Step.Id, tap.Name)))
            {
                yield return finding;
            }

            yield break;
        }

        foreach (var piece in shape.Pieces.Where(p => !p.Cuts))
        {
            var name = Named(stroke, piece.Part);
            if (told.Contains((stroke.Step.Id, name)))
            {
                continue;
            }

            var (deep, at) = InMetal(stroke, piece);
            if (deep > Rubs && told.Add((stroke.Step.Id, name)))
            {
                yield return FindingCatalogue.Strike(Places.Of(stroke, at), name, "metal", subject.Unit, deep);
            }
        }
    }

    private static (double Depth, Point3 At) InMetal(Stroke stroke, ProfilePiece piece)
    {
        (double Depth, Point3 At) worst = default;
        var radius = Math.Max(piece.Radius0, piece.Radius1) - Rubs;
        if (radius <= 0 || !Reaches(stroke, piece))
        {
            return worst;
        }

        foreach (var station in Station.Along(stroke.Legs, Math.Max(2, radius / 2), 24))
        {
            for (var i = 0; i < 24; i++)
            {
                var share = i < 16 ? 1 : 0.5;
                var (s, c) = Math.SinCos(2 * Math.PI * i / (i < 16 ? 16 : 8));
                var line = station.Upright(radius * share * c, radius * share * s);
                foreach (var span in stroke.After.Sound(line))
                {
                    double low = Math.Max(span.From, piece.Z0), high = Math.Min(span.To, piece.Z1);
                    if (high - low > worst.Depth && piece.RadiusAt((low + high) / 2) >= radius * share)
                    {
                        worst = (high - low, line.At((low + high) / 2));
                    }
                }
            }
        }

        return worst;
    }

    // Whether the piece comes anywhere near the height of the stock.
    private static bool Reaches(Stroke stroke, ProfilePiece piece)
    {
        foreach (var leg in stroke.Legs)
        {
            var box = stroke.After.Bounds.Placed(leg.ToPart.Inverse());
            var low = Math.Min(leg.Path.From.Z, leg.Path.To.Z) + piece.Z0;
            var high = Math.Max(leg.Path.From.Z, leg.Path.To.Z) + piece.Z1;
            if (low < box.Max.Z && high > box.Min.Z)
            {
                return true;
            }
        }

        return false;
    }

    private static IEnumerable<Finding> Column(Subject subject, Stroke stroke, SetupFacts setup, HashSet<(string, string)> told)
    {
        if (subject.Shop.Mill is not { Throat: > 0 } mill || setup.Rotary is not { Lies: false } rotary || told.Contains((stroke.Step.Id, "column")))
        {
            yield break;
        }

        var swing = setup.Fixtures.Where(f => f.Turns && f.Across == 0).Select(f => Swing(f, rotary)).DefaultIfEmpty(0).Max();
        foreach (var leg in stroke.Legs.Where(l => l.IsTurning))
        {
            var reach = rotary.Y + swing - leg.To.Y;
            if (reach > mill.Throat && told.Add((stroke.Step.Id, "column")))
            {
                yield return FindingCatalogue.StrikeColumn(stroke.Place, subject.Unit, reach, mill.Throat);
            }
        }
    }

    private static double Swing(FixtureFacts f, RotaryFacts rotary)
    {
        var x = Math.Max(Math.Abs(f.Least.X - rotary.X), Math.Abs(f.Most.X - rotary.X));
        var y = Math.Max(Math.Abs(f.Least.Y - rotary.Y), Math.Abs(f.Most.Y - rotary.Y));
        return Math.Sqrt((x * x) + (y * y));
    }
}
