namespace Handwheel.Jobs.Findings;

/// <summary>
/// Every finding there is: one named method a code, gathered by subject in the partial files beside this one (<c>FindingCatalogue.Reading.cs</c>,
/// <c>.Planning.cs</c>, <c>.Cutting.cs</c>, <c>.Setup.cs</c>). A test walks the methods: each code is unique to its method or family, documented in
/// <c>docs/findings/</c>, and reachable.
/// </summary>
public static partial class FindingCatalogue
{
}
