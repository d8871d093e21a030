using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

/// <summary>Reads a shop document. A person's mistake never throws: it gives a finding, and reading goes on.</summary>
public static class ShopReader
{
    /// <summary>Reads a shop.</summary>
    /// <param name="fileName">The name findings carry; folders are taken off.</param>
    /// <param name="text">The document.</param>
    /// <returns>The shop and every finding in order of place.</returns>
    public static Read<Shop> Read(string fileName, string text)
    {
        var bag = new FindingBag();
        var reading = new ShopReading(new SourceText(fileName, text), bag);
        var shop = reading.Read();
        IReadOnlyList<SourceText> sources = [reading.Source];
        return new Read<Shop> { Value = shop, Shop = shop, Findings = bag.InOrder(sources), Sources = sources };
    }
}
