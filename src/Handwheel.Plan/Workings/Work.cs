using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Moves;
using Handwheel.Quantities;

namespace Handwheel.Plan.Workings;

// Makes workings; the one place where a reading is rounded.
internal sealed class Work(Figures figures, AxesFacts axes)
{
    internal const string Geometry = "plane geometry";
    internal const string Practice = "common practice";

    internal Figures Figures => figures;

    internal AxesFacts Axes => axes;

    internal AxisFacts Facts(Axis axis) => axis switch
    {
        Axis.X => axes.X,
        Axis.Y => axes.Y,
        Axis.Z => axes.Z,
        _ => axes.T,
    };

    // A reading of an axis: millimetres, or degrees of theta. Rounded once.
    internal Working Reading(Axis axis, Expression e, Toward toward, params WorkingInput[] inputs)
    {
        var step = Facts(axis).Step;
        var result = Rounding.ToStep(e.Exact, step, toward);
        return new()
        {
            Name = e.Name,
            Formula = e.Formula,
            PutIn = e.PutIn,
            Exact = e.Exact,
            Result = result,
            Unit = axis == Axis.T ? "deg" : "mm",
            Rounded = RoundedText(axis, e.Exact, result, step, toward),
            Source = e.Source,
            Inputs = inputs,
            Note = e.Note,
        };
    }

    // A value that is not a reading.
    internal static Working Value(Expression e, string unit, params WorkingInput[] inputs) => new()
    {
        Name = e.Name,
        Formula = e.Formula,
        PutIn = e.PutIn,
        Exact = e.Exact,
        Result = e.Exact,
        Unit = unit,
        Source = e.Source,
        Inputs = inputs,
        Note = e.Note,
    };

    internal WorkingInput Typed(string name, Typed typed) => new(name, typed.Value, figures.L(typed.Value), InputKind.Typed, "typed: " + typed.Text, typed.Where, null);

    internal WorkingInput Shop(string name, double value, string says, SourceSpan? where) => new(name, value, figures.L(value), InputKind.Shop, says, where, null);

    internal WorkingInput Rule(string name, double value, string says) => new(name, value, figures.L(value), InputKind.Rule, says, null, null);

    internal WorkingInput From(string name, Working working) => new(
        name,
        working.Result,
        working.Unit == "mm" ? figures.L(working.Result) : Figures.Bare(working.Result),
        InputKind.WorkedOut,
        working.Name,
        null,
        working);

    private string RoundedText(Axis axis, double exact, double result, double step, Toward toward)
    {
        var loss = Math.Abs(result - exact);
        if (loss < (axis == Axis.T ? 1e-7 : 5e-7))
        {
            return string.Empty;
        }

        var side = toward == Toward.Nearest ? "nearest" : "towards metal left";
        return axis == Axis.T
            ? $"{Figures.Deg(exact)} to {Figures.Bare(step * 60, 2)}', {side}: {Figures.Bare(loss * 60, 2)}'"
            : $"{figures.L(exact)} to {figures.L(step)}, {side}: {figures.L(loss)}";
    }
}
