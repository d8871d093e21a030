namespace Handwheel.Sheets.Pictures;

/// <summary>A run of metal along a line.</summary>
/// <param name="Low">Its lower end.</param>
/// <param name="High">Its upper end.</param>
internal readonly record struct Span(double Low, double High);
