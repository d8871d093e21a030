using Handwheel.Trade.Metals;
using Handwheel.Trade.Strength;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Punching and shear pins.</summary>
internal static class PunchTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        if (q.HasIn("gauge", "ga", "gage", "swg"))
        {
            throw new UnansweredException("sheet gauges differ from metal to metal and country to country; measure the sheet, and say its thickness");
        }

        var force = q.Force();
        var stress = q.InUnit("MPa", "psi", "ksi");
        var metal = q.TakeMetal();
        var shear = stress ?? (metal ?? MetalTable.Find("mild steel")!).ShearMPa;
        var name = metal?.Name ?? "mild steel";
        var planes = q.Has("double", "two", "clevis") ? 2 : 1;
        var pin = q.Has("pin", "shearpin");
        q.Has("single", "hole", "sheet", "punch", "shear", "load", "thick", "blank", "plate", "under", "planes", "plane");
        var diameter = Question.Need(q.Length(), "the diameter");
        if (pin)
        {
            var area = planes * Math.PI * diameter * diameter / 4;
            if (force is { } f)
            {
                r.Add("shear stress", Beams.PinShear(diameter, f, planes), "MPa", Beams.Basis, "5 %", [$"F / (n A) = {N(f, 1)} / {N(area, 3)} mm^2"]);
            }

            r.Add($"force that shears a pin of {name}", area * shear, "N", Beams.Basis, "25 %", [$"n A tau = {N(area, 3)} x {N(shear, 0)}"]).Note($"{N(planes)} shear plane(s).");
            return;
        }

        var thick = Question.Need(q.Length(), "the sheet's thickness");
        var (push, squeeze) = Beams.Punching(diameter, thick, shear);
        r.Add("force to punch", push, "N", Beams.Basis, "25 %", [$"pi d t tau = pi x {N(diameter)} x {N(thick)} x {N(shear, 0)} = {N(push, 0)} N ({name})"])
            .Add("squeeze in the punch", squeeze, "MPa", Beams.Basis, "25 %", ["4 t tau / d"]).Caution("Guard the punch: fingers, and a slug or a broken punch that flies.");
    }
}
