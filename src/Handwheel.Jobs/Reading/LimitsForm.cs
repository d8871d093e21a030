namespace Handwheel.Jobs.Reading;

/// <summary>The ways limits are written.</summary>
internal enum LimitsForm
{
    /// <summary><c>+/-0.1</c>.</summary>
    Around,

    /// <summary><c>+0.08 -0.02</c>, in either order.</summary>
    Deviations,

    /// <summary><c>9.95 to 10</c>.</summary>
    Range,

    /// <summary><c>6 H7</c>, ISO 286-1.</summary>
    Fit,

    /// <summary><c>0.5 at most</c>: from 0.</summary>
    AtMost,
}
