using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

// Reads the lines of a drawing: names first, so that a line may name a feature typed below it.
internal sealed class DrawingReader(FindingBag bag, FeatureNames names, NumberReader numbers, DrawingWorker worker)
{
    public Drawing Read(IReadOnlyList<Statement> lines)
    {
        var cursors = lines.Select(l => new Cursor(l, bag)).ToList();
        var features = Declare(cursors);
        var reader = new FeatureReader(names, numbers);
        foreach (var (cursor, feature) in features)
        {
            reader.Read(cursor, feature);
        }

        var sizes = Sizes(cursors.Where(c => c.Statement.Tokens[0].Is("size")));
        worker.Take(Others(cursors), sizes);
        return new DrawingBuilder(bag, names, worker).Build(sizes);
    }

    private List<(Cursor Cursor, FeatureDraft Feature)> Declare(List<Cursor> cursors)
    {
        var features = new List<(Cursor, FeatureDraft)>();
        foreach (var cursor in cursors.Where(c => !c.Statement.Tokens[0].Is("size") && !c.Statement.Tokens[0].Is("others")))
        {
            var feature = FeatureReader.Declare(cursor);
            if (names.Find(feature.Name) is { } first)
            {
                bag.Add(FindingCatalogue.SaidTwice(feature.NameWhere, $"The feature '{feature.Name}'", first.NameWhere));
                continue;
            }

            names.Add(feature);
            features.Add((cursor, feature));
        }

        return features;
    }

    private List<SizeDraft> Sizes(IEnumerable<Cursor> cursors)
    {
        var reader = new SizeReader(names, numbers);
        return [.. cursors.Where(_ => !bag.Full).Select(reader.Read).OfType<SizeDraft>()];
    }

    private LimitsDraft? Others(List<Cursor> cursors)
    {
        LimitsDraft? others = null;
        foreach (var c in cursors.Where(c => c.Statement.Tokens[0].Is("others")))
        {
            c.At = 1;
            if (others is not null)
            {
                bag.Add(FindingCatalogue.SaidTwice(c.Statement.Where, "'others'", others.Where));
                continue;
            }

            others = numbers.TakeLimits(c, false);
            if (others is null)
            {
                c.Fail("the limits of all that is not limited otherwise", "Write 'others +/-0.1'.");
            }

            _ = c.ExpectEnd("Write 'others +/-0.1'.");
        }

        return others;
    }
}
