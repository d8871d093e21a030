using Handwheel.Quantities;
using Handwheel.Trade;

namespace Handwheel.Proof.Designs;

/// <summary>Gathers the values of one line.</summary>
/// <param name="unit">The unit lengths are told in.</param>
internal sealed class DesignAnswers(LengthUnit unit)
{
    private readonly List<DesignAnswer> all = [];

    /// <summary>The values so far.</summary>
    public IReadOnlyList<DesignAnswer> All => all;

    /// <summary>A number as a person writes it: three figures that count.</summary>
    /// <param name="value">The number.</param>
    /// <returns>The text.</returns>
    public static string N(double value) => ThreeFigures.Of(value);

    /// <summary>A length in the job&#39;s unit.</summary>
    /// <param name="millimetres">mm.</param>
    /// <returns>The text.</returns>
    public string L(double millimetres) => unit.Told(millimetres);

    /// <summary>A force in the job&#39;s way.</summary>
    /// <param name="newtons">N.</param>
    /// <returns>The text.</returns>
    public string F(double newtons) => unit.Force(newtons);

    /// <summary>A torque in the job&#39;s way.</summary>
    /// <param name="newtonMetres">N m.</param>
    /// <returns>The text.</returns>
    public string T(double newtonMetres) => unit.Torque(newtonMetres);

    /// <summary>Adds a number.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">The number.</param>
    /// <param name="of">Its unit.</param>
    /// <param name="basis">Where from.</param>
    /// <param name="spread">How wide it may be off.</param>
    /// <param name="working">How it came about.</param>
    public void Add(string name, double value, string of, Basis basis, string spread, string working) =>
        all.Add(new DesignAnswer { Name = name, Number = value, Unit = of, Basis = basis, Spread = spread, Working = working });

    /// <summary>Adds a word.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="text">The word.</param>
    /// <param name="basis">Where from.</param>
    /// <param name="working">How it came about.</param>
    public void Say(string name, string text, Basis basis, string working) => all.Add(new DesignAnswer { Name = name, Text = text, Basis = basis, Working = working });
}
