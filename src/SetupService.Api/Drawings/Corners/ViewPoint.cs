namespace SetupService.Api.Drawings.Corners;

/// <summary>A point of one view, mm.</summary>
/// <param name="AlongMm">Front view: to the left of the centre plane (y). Side view: forward (x).</param>
/// <param name="HeightMm">Upward (z), in the axes of the points.</param>
public readonly record struct ViewPoint(double AlongMm, double HeightMm);
