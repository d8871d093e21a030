using System.Globalization;

namespace Handwheel.Trade.Asking;

/// <summary>Gathers the answers of a topic.</summary>
internal sealed class ReplyBuilder
{
    private readonly Question _question;
    private readonly List<Answer> _answers = [];
    private readonly List<string> _cautions = [];
    private readonly List<string> _notes = [];

    /// <summary>Starts a reply.</summary>
    /// <param name="question">The question.</param>
    internal ReplyBuilder(Question question) => _question = question;

    /// <summary>Adds a number; a unit that has a twin is shown in both, the question's own first.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Number.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="basis">Where from.</param>
    /// <param name="working">Working lines.</param>
    /// <returns>This.</returns>
    /// <exception cref="UnansweredException">The number is none.</exception>
    internal ReplyBuilder Add(string name, double value, string unit, Basis basis, params string[] working) => Add(name, value, unit, basis, string.Empty, working);

    /// <summary>Adds a number that may be off.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Number.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="basis">Where from.</param>
    /// <param name="spread">How wide it may be off.</param>
    /// <param name="working">Working lines.</param>
    /// <returns>This.</returns>
    /// <exception cref="UnansweredException">The number is none.</exception>
    internal ReplyBuilder Add(string name, double value, string unit, Basis basis, string spread, string[] working)
    {
        if (!double.IsFinite(value))
        {
            throw new UnansweredException($"the numbers given have no answer for '{name}'; look at whether they can be right together");
        }

        // No minus before a zero.
        value = value == 0 ? 0 : value;
        var both = Units.Both(value, unit);
        var shown = both is null ? new Measure(value, unit) : _question.Inch ? both.Value.Inch : both.Value.Metric;
        _answers.Add(new Answer
        {
            Name = name, Number = shown.Value, Unit = shown.Unit, Metric = both?.Metric, Inch = both?.Inch, Basis = basis, Spread = spread, Working = working,
        });
        return this;
    }

    /// <summary>Adds a word.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="text">Word.</param>
    /// <param name="basis">Where from.</param>
    /// <param name="working">Working lines.</param>
    /// <returns>This.</returns>
    internal ReplyBuilder Say(string name, string text, Basis basis, params string[] working)
    {
        _answers.Add(new Answer { Name = name, Text = text, Basis = basis, Working = working });
        return this;
    }

    /// <summary>Adds a caution, once.</summary>
    /// <param name="text">Caution.</param>
    /// <returns>This.</returns>
    internal ReplyBuilder Caution(string text)
    {
        if (!_cautions.Contains(text, StringComparer.Ordinal))
        {
            _cautions.Add(text);
        }

        return this;
    }

    /// <summary>Adds a note, once.</summary>
    /// <param name="text">Note.</param>
    /// <returns>This.</returns>
    internal ReplyBuilder Note(string text)
    {
        if (!_notes.Contains(text, StringComparer.Ordinal))
        {
            _notes.Add(text);
        }

        return this;
    }

    /// <summary>Finishes.</summary>
    /// <param name="topic">Topic.</param>
    /// <returns>The reply.</returns>
    internal Reply Done(string topic)
    {
        if (_question.AssumedUnit)
        {
            Note(_question.Inch ? "Plain numbers were taken as inches." : "Plain numbers were taken as millimetres; write 6 in or 1/4 for inches.");
        }

        if (_answers.Exists(a => a.Basis.Evidence == Evidence.Memory))
        {
            Note("'from memory': nobody confirmed this value against a printed page; look it up before metal depends on it.");
        }

        return new Reply { Question = _question.Text, Topic = topic, Answers = [.. _answers], Cautions = [.. _cautions], Notes = [.. _notes] };
    }

    /// <summary>A number as text for a working line.</summary>
    /// <param name="value">Number.</param>
    /// <param name="decimals">Most decimals.</param>
    /// <returns>Text.</returns>
    internal static string N(double value, int decimals = 4) => value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>A length as text in the question's unit.</summary>
    /// <param name="mm">mm.</param>
    /// <returns>Text with unit.</returns>
    internal string L(double mm) => _question.Inch ? N(mm / 25.4, 5) + " in" : N(mm, 4) + " mm";
}
