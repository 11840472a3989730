namespace SetupService.Api.Drawings;

/// <summary>Draws the sample beside a name of a legend.</summary>
/// <param name="svg">Where it is drawn.</param>
/// <param name="unit">Size of a text unit.</param>
/// <param name="x">Its left end.</param>
/// <param name="y">Its middle.</param>
internal delegate void LegendSample(SvgWriter svg, double unit, double x, double y);
