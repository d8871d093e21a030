using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Quantities;

namespace Handwheel.Sheets.Text;

/// <summary>Readings as one holding's readouts and dials show them.</summary>
internal sealed class SheetNumbers
{
    private readonly SetupFacts? _setup;
    private readonly Mill? _mill;
    private readonly Indexer? _indexer;

    /// <summary>Initializes a new instance of the <see cref="SheetNumbers"/> class.</summary>
    /// <param name="unit">The unit the sheet speaks.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="setup">The holding's facts; null by hand.</param>
    public SheetNumbers(LengthUnit unit, Shop shop, SetupFacts? setup)
    {
        Unit = unit;
        _setup = setup;
        _mill = shop.Mill;
        _indexer = shop.Indexer;
    }

    /// <summary>The unit the sheet speaks.</summary>
    public LengthUnit Unit { get; }

    /// <summary>The step a length with no axis of its own is printed to: the finest of the axes'.</summary>
    public double FineStep => Math.Min(Step(Axis.X), Math.Min(Step(Axis.Y), Step(Axis.Z)));

    /// <summary>The step an axis is read to, millimetres (T: degrees).</summary>
    /// <param name="axis">The axis.</param>
    /// <returns>Above 0.</returns>
    public double Step(Axis axis)
    {
        var step = axis == Axis.T ? _setup?.Rotary?.DialStep ?? Degrees(_indexer?.DialStep) : SetUp(axis)?.Step ?? Machine(axis)?.Step;
        var fallback = axis == Axis.T ? 1.0 / 60 : Unit == LengthUnit.Inch ? 0.0254 : 0.01;
        return step is > 0 ? step.Value : fallback;
    }

    /// <summary>An axis's reading as printed: sign shown, decimals of its readout; T in degrees and minutes of its own rim.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="value">Holding frame, millimetres; T: degrees of theta.</param>
    /// <returns>The text.</returns>
    public string Reading(Axis axis, double value) => axis == Axis.T
        ? ReadingText.Rotary(Printed(value), Step(Axis.T))
        : ReadingText.Signed(Flips(axis) ? -value : value, Unit, Step(axis));

    /// <summary>A length without sign at the finest readout's decimals, not fewer than a measured size has: 3 in millimetres, 4 in inches.</summary>
    /// <param name="millimetres">The length.</param>
    /// <returns>The text.</returns>
    public string Length(double millimetres) => ReadingText.Plain(millimetres, Unit, Math.Min(FineStep, Unit == LengthUnit.Inch ? 0.00254 : 0.001));

    /// <summary>A length as a drawing writes it: no idle noughts, at most the decimals given.</summary>
    /// <param name="millimetres">The length.</param>
    /// <param name="decimals">Decimals at most, in the sheet's unit; below 0: 3 in millimetres, 4 in inches.</param>
    /// <returns>The text.</returns>
    public string Short(double millimetres, int decimals = -1)
    {
        var most = decimals >= 0 ? decimals : Unit == LengthUnit.Inch ? 4 : 3;
        var value = Math.Round(Unit.FromMillimetres(millimetres), most, MidpointRounding.AwayFromZero);
        return (value == 0 ? 0 : value).ToString("0.######", System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>Theta as the rotary's rim shows it: T0 + s theta, within one turn.</summary>
    /// <param name="theta">Theta, degrees.</param>
    /// <returns>Degrees, 0 to below 360.</returns>
    public double Printed(double theta)
    {
        var rotary = _setup?.Rotary;
        var printed = (rotary?.ZeroReading ?? 0) + ((rotary?.Sense ?? 1) * theta);
        var step = Step(Axis.T);
        var steps = Math.Round(printed / step, MidpointRounding.AwayFromZero) * step;
        var wrapped = steps % 360;
        wrapped = wrapped < 0 ? wrapped + 360 : wrapped;
        return wrapped > 360 - (step / 2) ? 0 : wrapped;
    }

    /// <summary>How the rim's reading comes from theta, with the reading it gives.</summary>
    /// <param name="theta">Theta, degrees.</param>
    /// <returns><c>T = 360 - theta = 87 deg 59'</c>.</returns>
    public string Rim(double theta)
    {
        var zero = _setup?.Rotary?.ZeroReading ?? 0;
        var falls = Flips(Axis.T);
        var start = Math.Abs(zero) > 1e-9 ? Markup.Number(zero) : falls ? "360" : string.Empty;
        return $"T = {start}{(falls ? " - theta" : start.Length > 0 ? " + theta" : "theta")} = {Reading(Axis.T, theta)}";
    }

    /// <summary>Whether an axis's printed reading falls where the holding frame's grows.</summary>
    /// <param name="axis">The axis.</param>
    /// <returns>True for a readout that counts the other way, and for a rotary whose rim does.</returns>
    public bool Flips(Axis axis) => axis == Axis.T ? _setup?.Rotary?.Sense < 0 : Machine(axis)?.CountsOtherWay ?? false;

    private static double? Degrees(double? radians) => radians * 180 / Math.PI;

    private AxisFacts? SetUp(Axis axis) => axis switch
    {
        Axis.X => _setup?.Axes.X,
        Axis.Y => _setup?.Axes.Y,
        _ => _setup?.Axes.Z,
    };

    private MachineAxis? Machine(Axis axis) => axis switch
    {
        Axis.X => _mill?.X,
        Axis.Y => _mill?.Y,
        Axis.Z => _mill?.Z,
        _ => null,
    };
}
