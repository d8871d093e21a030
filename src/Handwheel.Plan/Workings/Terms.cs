using System.Text.RegularExpressions;

namespace Handwheel.Plan.Workings;

// Numbers put into a rule so that a person reads them one way only.
internal static partial class Terms
{
    // A number below nought in brackets where it stands after a sign of reckoning or is raised to a power: 0 - (-6), (-3)^2.
    internal static string Bracketed(string text) => Raised().Replace(After().Replace(text, "(-${n})"), "(-${n})^");

    [GeneratedRegex(@"(?<=(?:^|\s)[-+*/x] )-(?<n>[0-9]*\.?[0-9]+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex After();

    [GeneratedRegex(@"(?<=^|\()-(?<n>[0-9]*\.?[0-9]+)\^", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Raised();
}
