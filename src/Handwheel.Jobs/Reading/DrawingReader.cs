using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

// Reads the lines of a drawing: names first, so that a line may name a feature typed below it.
internal sealed class DrawingReader(FindingBag bag, FeatureNames names, NumberReader numbers, DrawingWorker worker)
{
    /// <summary>The names of the size lines, those that could not be worked out too.</summary>
    public HashSet<string> SizeNames { get; } = new(StringComparer.Ordinal);

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
        var drawing = new DrawingBuilder(bag, names, worker).Build(sizes);
        if (names.All.All(f => !f.Broken) && drawing.Features.Count == names.All.Count)
        {
            // Outlines can only be drawn of a drawing that is whole.
            new SizeAgreement(bag, drawing, worker.Unit).Check();
        }

        SizeNames.UnionWith(sizes.Select(s => s.Name));
        SizeNames.UnionWith(drawing.Sizes.Select(s => s.Name));
        return drawing;
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
        var read = new List<SizeDraft>();
        foreach (var c in cursors.TakeWhile(_ => !bag.Full))
        {
            if (reader.Read(c) is { } size)
            {
                read.Add(size);
            }
            else
            {
                // A line that is mended later still has its name: what names it is not wrong.
                SizeNames.UnionWith(Enumerable.Range(2, Math.Max(0, c.Statement.Tokens.Count - 2)).Select(n => FeatureNames.Name(c.Statement.Tokens.Skip(1).Take(n))));
            }
        }

        return read;
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

            worker.OthersSaid = true;
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
