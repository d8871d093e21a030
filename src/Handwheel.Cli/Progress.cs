using System.Diagnostics;
using Handwheel.Proof;

namespace Handwheel.Cli;

/// <summary>Tells how far long work has come, once it has taken over a second, to a terminal or when asked.</summary>
internal sealed class Progress : IProgress<ProofProgress>, IProgress<double>
{
    private readonly Lock _gate = new();
    private readonly TextWriter _error;
    private readonly bool _lines;
    private readonly bool _shown;
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private long _next = 1000;
    private bool _open;

    /// <summary>Initializes a new instance of the <see cref="Progress"/> class.</summary>
    /// <param name="error">Where it is told.</param>
    /// <param name="asked">Whether it was asked for though no terminal listens; then each is a line of its own.</param>
    public Progress(TextWriter error, bool asked)
    {
        (_error, _lines) = (error, asked);
        _shown = asked || !Console.IsErrorRedirected;
    }

    /// <inheritdoc/>
    public void Report(ProofProgress value) => Tell("proving, " + value.Question, value.Share);

    /// <inheritdoc/>
    public void Report(double value) => Tell("drawing the sheet", value);

    /// <summary>Wipes the line.</summary>
    public void Done()
    {
        lock (_gate)
        {
            if (_open)
            {
                _error.Write("\r" + new string(' ', 60) + "\r");
                _open = false;
            }
        }
    }

    private void Tell(string what, double share)
    {
        lock (_gate)
        {
            if (!_shown || _clock.ElapsedMilliseconds < _next)
            {
                return;
            }

            _next = _clock.ElapsedMilliseconds + 250;
            var text = FormattableString.Invariant($"handwheel: {what}, {Math.Floor(share * 100)} of 100");
            if (_lines)
            {
                _error.WriteLine(text);
            }
            else
            {
                _open = true;
                _error.Write("\r" + text.PadRight(60));
            }
        }
    }
}
