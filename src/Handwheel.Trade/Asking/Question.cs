using System.Globalization;
using Handwheel.Trade.Metals;

namespace Handwheel.Trade.Asking;

/// <summary>A question taken apart; topics take from it what they need.</summary>
internal sealed class Question
{
    private static readonly HashSet<string> InchUnits = new(StringComparer.Ordinal) { "in", "thou", "ft", "lbf", "ft/min", "lbf in", "ft lbf", "tpi", "psi", "ksi" };

    private readonly List<Token> _tokens;
    private bool? _inch;

    /// <summary>Takes a question apart.</summary>
    /// <param name="text">The words after <c>ask</c>.</param>
    internal Question(string text)
    {
        Text = text;
        _tokens = TokenReader.Read(Sections.Spelled(Sections.Apart(text)));
    }

    /// <summary>As it was put.</summary>
    internal string Text { get; }

    /// <summary>Its words and numbers.</summary>
    internal IReadOnlyList<Token> Tokens => _tokens;

    /// <summary>Whether a bare number was taken as a length.</summary>
    internal bool AssumedUnit { get; private set; }

    /// <summary>Whether inches come first: something was said in inches, and nothing in millimetres.</summary>
    internal bool Inch
    {
        get => _inch ??= _tokens.Any(t => (t.IsNumber && (InchUnits.Contains(t.Unit) || IsInchLooking(t))) || t.Low is "inch" or "imperial" or "inches")
            && !_tokens.Any(t => (t.IsNumber && (t.Unit is "mm" or "cm" or "um")) || t.Low is "metric");
        set => _inch = value;
    }

    /// <summary>Whether any of the words stands in the question; those found count as used.</summary>
    /// <param name="words">Words, lower case.</param>
    /// <returns>True where one does.</returns>
    internal bool Has(params string[] words)
    {
        var found = false;
        foreach (var token in _tokens.Where(t => !t.IsNumber && words.Contains(t.Low, StringComparer.Ordinal)))
        {
            token.Used = true;
            found = true;
        }

        return found;
    }

    /// <summary>Whether any of the words stands in the question; none counts as used for it.</summary>
    /// <param name="words">Words, lower case.</param>
    /// <returns>True where one does.</returns>
    internal bool HasIn(params string[] words) => _tokens.Exists(t => !t.IsNumber && words.Contains(t.Low, StringComparer.Ordinal));

    /// <summary>Takes the first unused number in one of the units.</summary>
    /// <param name="units">Units.</param>
    /// <returns>The number in metric, degrees or as it stands; null where none.</returns>
    internal double? InUnit(params string[] units)
    {
        var token = _tokens.Find(t => t.IsNumber && !t.Used && units.Contains(t.Unit, StringComparer.Ordinal));
        if (token is null)
        {
            return null;
        }

        token.Used = true;
        return Units.IsLength(token.Unit) ? Units.ToMm(token.Value, token.Unit) : Units.ToMetric(token.Value, token.Unit);
    }

    /// <summary>Takes an angle in degrees.</summary>
    /// <returns>Degrees, or null.</returns>
    internal double? Angle() => InUnit("deg") ?? (InUnit("min") is { } m ? m / 60 : null);

    /// <summary>Takes a force.</summary>
    /// <returns>N, or null.</returns>
    internal double? Force() => InUnit("N", "kN", "lbf", "kgf");

    /// <summary>Takes a metal.</summary>
    /// <param name="bareNumbers">Whether a plain number may be a metal's name.</param>
    /// <returns>The metal, or null.</returns>
    internal Metal? TakeMetal(bool bareNumbers = true)
    {
        for (var length = 3; length >= 1; length--)
        {
            for (var at = 0; at + length <= _tokens.Count; at++)
            {
                var run = _tokens.GetRange(at, length);
                if (run.Exists(t => t.Used || t.Unit.Length > 0 || t.IsFraction) || (length == 1 && !MayBeMetal(at, bareNumbers)))
                {
                    continue;
                }

                if (MetalTable.Find(string.Join(' ', run.Select(t => t.Raw))) is { } metal && (length == 1 || run.Exists(t => !t.IsNumber)))
                {
                    run.ForEach(t => t.Used = true);
                    return metal;
                }
            }
        }

        return null;
    }

    /// <summary>Takes numbers that stand beside labels, in the order of the question.</summary>
    /// <param name="labels">What is wanted: a name, and the words that label it.</param>
    /// <returns>Tokens by name.</returns>
    internal Dictionary<string, Token> Labelled(params (string Name, string[] Words)[] labels)
    {
        var found = new Dictionary<string, Token>(StringComparer.Ordinal);
        var labelFirst = LabelFirst(labels);
        for (var i = 0; i < _tokens.Count; i++)
        {
            var label = labels.FirstOrDefault(l => !_tokens[i].IsNumber && l.Words.Contains(_tokens[i].Low, StringComparer.Ordinal));
            if (label.Name is null || found.ContainsKey(label.Name))
            {
                continue;
            }

            var number = labelFirst ? After(i) ?? Before(i) : Before(i) ?? After(i);
            if (number is not null)
            {
                number.Used = true;
                _tokens[i].Used = true;
                found[label.Name] = number;
            }
        }

        return found;
    }

    // "stickout 12" or "12 out": what the last label and the last number say.
    private bool LabelFirst((string Name, string[] Words)[] labels)
    {
        bool IsLabel(Token t) => !t.IsNumber && labels.Any(l => l.Words.Contains(t.Low, StringComparer.Ordinal));
        var lastLabel = _tokens.FindLastIndex(IsLabel);
        if (lastLabel > 0 && lastLabel + 1 < _tokens.Count && _tokens[lastLabel].Low is "force" or "load" or "push" && _tokens[lastLabel + 1] is { IsNumber: true, Used: true })
        {
            lastLabel = _tokens.FindLastIndex(lastLabel - 1, IsLabel); // "stickout 1 in force 20 lbf": the force was taken by its unit and says nothing of the order
        }

        var last = _tokens.FindLastIndex(t => (t.IsNumber && !t.Used) || (IsLabel(t) && _tokens.IndexOf(t) <= lastLabel));
        return last >= 0 && _tokens[last].IsNumber && lastLabel >= 0 && After(lastLabel) is not null;
    }

    /// <summary>Takes a number that stands right before a word, as in "6 holes".</summary>
    /// <param name="words">The words.</param>
    /// <returns>The number, or null.</returns>
    internal double? JustBefore(params string[] words)
    {
        for (var i = 1; i < _tokens.Count; i++)
        {
            if (!_tokens[i].IsNumber && words.Contains(_tokens[i].Low, StringComparer.Ordinal) && _tokens[i - 1] is { IsNumber: true, Used: false } number)
            {
                number.Used = _tokens[i].Used = true;
                return number.Value;
            }
        }

        return null;
    }

    /// <summary>Takes the next unused bare number or length.</summary>
    /// <returns>mm, or null.</returns>
    internal double? Length()
    {
        var token = _tokens.Find(t => t.IsNumber && !t.Used && (t.Unit.Length == 0 || Units.IsLength(t.Unit)));
        return token is null ? null : Mm(token);
    }

    /// <summary>Takes the next unused plain number.</summary>
    /// <returns>The number, or null.</returns>
    internal double? Plain()
    {
        var token = _tokens.Find(t => t is { IsNumber: true, Used: false, Unit: "" });
        if (token is not null)
        {
            token.Used = true;
        }

        return token?.Value;
    }

    /// <summary>A token as a length in mm.</summary>
    /// <param name="token">The token; it counts as used.</param>
    /// <returns>mm.</returns>
    internal double Mm(Token token)
    {
        token.Used = true;
        if (Units.IsLength(token.Unit))
        {
            return Positive(Units.ToMm(token.Value, token.Unit), token.Raw);
        }

        AssumedUnit |= !token.IsFraction;
        return Positive(Inch || token.IsFraction ? token.Value * 25.4 : token.Value, token.Raw);
    }

    /// <summary>Puts a word in place of another.</summary>
    /// <param name="token">The word.</param>
    /// <param name="word">What it is taken for.</param>
    internal void Respell(Token token, string word) => _tokens[_tokens.IndexOf(token)] = new Token { Raw = word };

    /// <summary>What is unused and not a filler: words that were not understood.</summary>
    /// <returns>Words as typed.</returns>
    internal IReadOnlyList<string> Left() => [.. _tokens.Where(t => !t.Used && !Fillers.Contains(t.Low)).Select(t => t.Raw)];

    /// <summary>A number that must be over 0 and of a size that exists.</summary>
    /// <param name="value">Number.</param>
    /// <param name="raw">As typed.</param>
    /// <returns>The number.</returns>
    /// <exception cref="UnansweredException">It is 0, absurd or none.</exception>
    internal static double Positive(double value, string raw) =>
        double.IsFinite(value) && value is > 0 and < 1e7 ? value : throw new UnansweredException($"'{raw}' is no size that can be worked with; it must be over 0 and under ten million");

    /// <summary>A number that must be there.</summary>
    /// <param name="value">What was found.</param>
    /// <param name="what">What it is, in words.</param>
    /// <returns>The number.</returns>
    /// <exception cref="UnansweredException">It is not there.</exception>
    internal static double Need(double? value, string what) => value ?? throw new UnansweredException($"{what} is missing");

    private static bool IsInchLooking(Token t) =>
        t.IsNumber && t.Unit.Length == 0 && ((t.IsFraction && t.Raw.Contains('/', StringComparison.Ordinal)) || (t.Value < 1 && (t.Decimals is 3 or 4)));

    private bool MayBeMetal(int at, bool bareNumbers)
    {
        var token = _tokens[at];
        var name = token.Low;
        if (!token.IsNumber)
        {
            return name is not ("pe" or "pc" or "ci" or "t1" or "al" or "alloy" or "carbon" or "a2" or "in" or "ti" or "ns" or "ms" or "mg" or "cu" or "pb" or "ss")
                || (at > 0 && (_tokens[at - 1].Low is "in" or "of" or "from" or "into" or "for" or "metal")) || _tokens.Count <= 2;
        }

        return bareNumbers && (token.Value >= 200 || token.Raw.Contains('.', StringComparison.Ordinal)) && (token.Decimals is 0 or 4);
    }

    private Token? Before(int at)
    {
        var i = at - 1;
        while (i >= 0 && Fillers.Contains(_tokens[i].Low))
        {
            i--;
        }

        return i >= 0 && _tokens[i].IsNumber && !_tokens[i].Used ? _tokens[i] : null;
    }

    private Token? After(int at)
    {
        var i = at + 1;
        while (i < _tokens.Count && Fillers.Contains(_tokens[i].Low))
        {
            i++;
        }

        return i < _tokens.Count && _tokens[i].IsNumber && !_tokens[i].Used ? _tokens[i] : null;
    }

    /// <summary>Plain text of a number.</summary>
    /// <param name="value">Number.</param>
    /// <returns>Text, invariant.</returns>
    internal static string Plainly(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
