namespace SetupService.Api.Drawings;

/// <summary>How a shape is drawn.</summary>
/// <param name="Line">Ink of the line; null for none.</param>
/// <param name="Width">Line width in text units.</param>
/// <param name="Dashes">Lengths of dash and gap in text units; empty for a full line.</param>
/// <param name="Fill">Ink of the filling; null for none.</param>
/// <param name="FillOpacity">How dense the filling is, 0 to 1.</param>
/// <param name="LineOpacity">How dense the line is, 0 to 1.</param>
internal readonly record struct Pen(InkRole? Line, double Width, double[] Dashes, InkRole? Fill = null, double FillOpacity = 1, double LineOpacity = 1)
{
    public static Pen Full(InkRole line, double width) => new(line, width, []);

    public static Pen Dashed(InkRole line, double width, params double[] dashes) => new(line, width, dashes);

    public static Pen Filled(InkRole fill, double opacity = 1) => new(null, 0, [], fill, opacity);

    public Pen WithFill(InkRole fill, double opacity) => this with { Fill = fill, FillOpacity = opacity };
}
