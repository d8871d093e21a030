using Handwheel.Jobs.Findings;

namespace Handwheel.Proof.Questions;

/// <summary>
/// One mistake, one halt: what a gouge, a stock too short or a cutter that is not on hand already explains is told as a caution. The job stands halted either
/// way; a person mends the cause and proves again.
/// </summary>
internal sealed class Explained
{
    private readonly HashSet<(string Step, int? Move)> moves;
    private readonly Dictionary<string, int> order = new(StringComparer.Ordinal);
    private readonly int first = int.MaxValue;

    /// <summary>Gathers what is known.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="gouging">The strokes that gouge.</param>
    /// <param name="isShort">Whether the stock is too short.</param>
    public Explained(Subject subject, IReadOnlySet<int> gouging, bool isShort)
    {
        foreach (var step in subject.Trace.Steps)
        {
            order.TryAdd(step.Step.Id, order.Count);
        }

        var strokes = gouging.Select(i => subject.Trace.Strokes[i]).ToList();
        moves = [.. strokes.Select(s => (s.Step.Id, s.Move?.Number))];
        first = strokes.Select(s => order[s.Step.Id]).DefaultIfEmpty(int.MaxValue).Min();
        Any = strokes.Count > 0 || isShort || subject.Trace.Incomplete;
    }

    /// <summary>Whether anything is known that explains more.</summary>
    public bool Any { get; }

    /// <summary>Findings with what is explained made a caution.</summary>
    /// <param name="findings">The findings.</param>
    /// <returns>The same in the same order.</returns>
    public IEnumerable<Finding> Graded(IEnumerable<Finding> findings) => findings.Select(f =>
        f.Grade == Grade.Halt && Explains(f) ? f with { Grade = Grade.Caution, Message = f.Message + " It may follow from what is found elsewhere." } : f);

    private bool Explains(Finding finding) => finding.Code switch
    {
        "release" or "loose" or "leftover" => Any,
        "direction" => moves.Contains((finding.Step ?? string.Empty, finding.Move)),
        "load" or "grip" or "web" or "wall" => finding.Step is { } at && order.GetValueOrDefault(at) >= first,
        "strike" => finding.Step is { } step && order.GetValueOrDefault(step) > first,
        _ => false,
    };
}
