namespace Handwheel.Sheets.Text;

/// <summary>The faces a sheet is set in.</summary>
internal enum Face
{
    /// <summary>Text.</summary>
    Plain,

    /// <summary>Text, bold.</summary>
    Bold,

    /// <summary>Figures.</summary>
    Figure,

    /// <summary>Figures, bold.</summary>
    FigureBold,
}
