using System.Globalization;
using System.Text;

namespace Handwheel.Slips;

/// <summary>The logs of the bench as a page.</summary>
internal static class Report
{
    internal static string Of(string folder)
    {
        var rows = new List<(string Job, string Kind, string What, string Harm, string Halts)>();
        var heads = new List<string>();
        foreach (var file in Directory.GetFiles(folder, "*.tsv").Order(StringComparer.Ordinal))
        {
            foreach (var cells in File.ReadLines(file).Select(l => l.Split('\t')))
            {
                if (cells[0] == "#")
                {
                    heads.Add($"- **{cells[1]}**: {cells[2]}.");
                }
                else
                {
                    rows.Add((Path.GetFileNameWithoutExtension(file), cells[0], cells[1], cells[2], cells[3]));
                }
            }
        }

        var text = new StringBuilder(File.ReadAllText(Path.Combine(folder, "head.md")));
        text.Append("\n## The sound jobs\n\n").AppendJoin('\n', heads).Append("\n\n## Each job\n\n");
        Table(text, "job", rows.GroupBy(r => r.Job, r => (r.Harm, r.Halts)));
        text.Append("\n## Each kind\n\n");
        Table(text, "kind", rows.GroupBy(r => r.Kind, r => (r.Harm, r.Halts)));
        text.Append("\n## Every harmful slip that was missed\n\n");
        var missed = rows.Where(r => r.Harm.Length > 0 && r.Halts.Length == 0).ToList();
        text.Append(missed.Count == 0 ? "None.\n" : "| job | kind | slip | harm |\n| --- | --- | --- | --- |\n");
        foreach (var r in missed)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {r.Job} | {r.Kind} | {r.What} | {r.Harm} |\n");
        }

        var why = Path.Combine(folder, "misses.md");
        return text.Append(File.Exists(why) ? "\n" + File.ReadAllText(why) : string.Empty).ToString();
    }

    private static void Table(StringBuilder text, string head, IEnumerable<IGrouping<string, (string Harm, string Halts)>> groups)
    {
        text.Append(CultureInfo.InvariantCulture, $"| {head} | slips | harmful | caught | share | harmless | of them halted |\n| --- | ---: | ---: | ---: | ---: | ---: | ---: |\n");
        var all = groups.ToList();
        foreach (var g in all.Select(g => (g.Key, Rows: g.ToList())).Append(("all", [.. all.SelectMany(g => g)])))
        {
            var harmful = g.Rows.Where(r => r.Harm.Length > 0).ToList();
            var caught = harmful.Count(r => r.Halts.Length > 0);
            var harmless = g.Rows.Count - harmful.Count;
            var share = harmful.Count == 0 ? "-" : (100.0 * caught / harmful.Count).ToString("F1", CultureInfo.InvariantCulture) + " %";
            text.Append(CultureInfo.InvariantCulture, $"| {g.Key} | {g.Rows.Count} | {harmful.Count} | {caught} | {share} | {harmless} | {g.Rows.Count(r => r.Harm.Length == 0 && r.Halts.Length > 0 && r.Halts != "-")} of {g.Rows.Count(r => r.Harm.Length == 0 && r.Halts != "-")} proved |\n");
        }
    }
}
