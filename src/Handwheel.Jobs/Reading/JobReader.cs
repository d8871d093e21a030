using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

/// <summary>Reads a job document and the shop it names. A person's mistake never throws: it gives a finding, and reading goes on.</summary>
public static class JobReader
{
    /// <summary>Reads a job.</summary>
    /// <param name="fileName">The name findings carry; folders are taken off.</param>
    /// <param name="text">The document.</param>
    /// <param name="openShop">Gives a shop's text by the name typed in the job; null where there is none. It is called at most once.</param>
    /// <returns>What could be read, the shop, and every finding in order of place.</returns>
    public static Read<Job> Read(string fileName, string text, Func<string, string?> openShop)
    {
        ArgumentNullException.ThrowIfNull(openShop);
        var source = new SourceText(fileName, text);
        var bag = new FindingBag();
        var sources = new List<SourceText> { source };
        Job? job = null;
        Shop? shop = null;
        if (Sections.IsText(source, bag, "job") && !IsShop(source, bag))
        {
            var reading = new JobReading(source, bag, openShop);
            job = reading.Read();
            shop = reading.Shop;
            sources.AddRange(reading.ShopSources);
        }

        return new Read<Job> { Value = job, Shop = shop, Findings = bag.InOrder(sources), Sources = sources };
    }

    // A shop given for a job is one mistake, not a dozen: it starts with 'shop' and has a mill, and no heading that only a job has.
    private static bool IsShop(SourceText source, FindingBag bag)
    {
        var statements = Sections.Statements(source, new FindingBag());
        bool has(string word) => statements.Exists(s => s.Tokens[0].Is(word));
        if (statements.Count == 0 || !statements[0].Tokens[0].Is("shop") || !has("mill") || has("job") || has("drawing") || has("stock") || has("holding"))
        {
            return false;
        }

        bag.Add(FindingCatalogue.NotUnderstood(statements[0].SpanOf(0, 0), "shop", "a job", "This is a shop: give the job that names it, with 'shop home.handwheel' in its head."));
        return true;
    }
}
