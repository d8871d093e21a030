namespace Handwheel.Jobs.Findings;

/// <summary>Findings of the plan: an intention that cannot be turned into moves.</summary>
public static partial class FindingCatalogue
{
    /// <summary>A step cannot be planned as it is written.</summary>
    /// <param name="place">The step.</param>
    /// <param name="why">Why, in a sentence without its full stop.</param>
    /// <param name="mend">What would mend it.</param>
    /// <returns>A halt <c>cannot-plan</c>.</returns>
    public static Finding CannotPlan(FindingPlace place, string why, string mend)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place.Says(Grade.Halt, "cannot-plan", why + ".", mend, Practice);
    }

    /// <summary>A typed move is meant to cut and meets no metal.</summary>
    /// <param name="place">The step.</param>
    /// <returns>A note <c>cuts-nothing</c>.</returns>
    public static Finding CutsNothing(FindingPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place.Says(Grade.Note, "cuts-nothing", "This move is meant to cut and meets no metal.", "Check its readings and their signs; a move through the air is written 'move'.", Practice);
    }
}
