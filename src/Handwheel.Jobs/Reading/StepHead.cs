using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Reading;

/// <summary>What every step's line has.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Text">As typed.</param>
/// <param name="Where">Its place.</param>
internal readonly record struct StepHead(string Id, string Text, SourceSpan Where);
