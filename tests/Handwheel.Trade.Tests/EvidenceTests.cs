using Handwheel.Trade.Asking;

namespace Handwheel.Trade.Tests;

/// <summary>What the answers say about themselves.</summary>
public sealed class EvidenceTests
{
    private static readonly string[] MoreQuestions =
    [
        "taper R8", "taper B&S 9", "taper 7/24 40 drawbar 10 kN torque 100 N m", "taper pin 4", "woodruff 404", "woodruff 5x6.5", "fit 2 RC5", "fit 4.2 FN2", "fit 1200 H3", "drill #90",
        "screw 1/4", "counterbore M12", "grub screw 1/4", "metal titanium", "metal lead", "force 6 end mill in titanium 1 deep 2 wide", "force turning 2 deep 0.2 feed 40 dia in grey cast iron",
        "friction bronze on steel", "clearance 1/4", "speed 6 drill in copper", "strip 1/4-20 grade 8 in brass", "press 1 in FN2 hub 2 in long 1 in", "key 20 shaft torque 50 N m",
    ];

    private static readonly (Evidence Evidence, string Words)[] Kinds =
        [(Evidence.StandardFormula, "formula"), (Evidence.HandbookTable, "table"), (Evidence.CommonPractice, "common practice"), (Evidence.Memory, "from memory")];

    private static IEnumerable<Reply> Replies() =>
        TopicList.All.SelectMany(t => t.Examples).Concat(MoreQuestions).Select(q => Asker.Ask(q.Split(' '))).Where(r => r.Refusal is null);

    [Fact]
    public void Strength_answers_say_that_they_are_estimates_and_to_whom_they_defer()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var reply in Replies())
        {
            var topic = Asker.Topics.Single(t => t.Name == reply.Topic);
            var strong = topic.IsEstimate || reply.Answers.Any(a => a.Unit is "N" or "lbf" or "MPa" or "psi" or "N m" or "lbf in" or "kW");
            if (strong)
            {
                Assert.Contains(reply.Cautions, c => c.Contains("estimates", StringComparison.Ordinal) && c.Contains("licensed engineer", StringComparison.Ordinal) && c.Contains("manual", StringComparison.Ordinal));
                seen.Add(reply.Topic);
            }
        }

        Assert.Equal(Asker.Topics.Where(t => t.IsEstimate).Select(t => t.Name).Append("key").Order(StringComparer.Ordinal), seen.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_table_of_topics_names_every_kind_of_evidence_that_the_answers_give()
    {
        foreach (var reply in Replies())
        {
            var line = Asker.Topics.Single(t => t.Name == reply.Topic).Evidence;
            foreach (var evidence in reply.Answers.Select(a => a.Basis.Evidence).Distinct())
            {
                var words = Kinds.Single(k => k.Evidence == evidence).Words;
                Assert.True(line.Contains(words, StringComparison.Ordinal), $"'{reply.Question}' rests on '{words}', which the line of '{reply.Topic}' does not name: {line}");
            }
        }
    }

    [Fact]
    public void What_nobody_confirmed_says_so()
    {
        var remembered = 0;
        foreach (var reply in Replies())
        {
            var any = reply.Answers.Any(a => a.Basis.Evidence == Evidence.Memory);
            remembered += any ? 1 : 0;
            Assert.Equal(any, reply.Notes.Any(n => n.Contains("nobody confirmed", StringComparison.Ordinal)));
            Assert.All(reply.Answers.Where(a => a.Basis.Evidence == Evidence.Memory), a => Assert.Equal("from memory", a.Basis.EvidenceWords));
        }

        Assert.True(remembered > 5);
    }
}
