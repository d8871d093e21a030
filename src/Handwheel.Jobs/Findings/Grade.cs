namespace Handwheel.Jobs.Findings;

/// <summary>How grave a finding is, lightest first.</summary>
public enum Grade
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>May be meant; look.</summary>
    Caution,

    /// <summary>Cutting as planned would scrap the part, break something or hurt someone; or the document cannot be read.</summary>
    Halt,
}
