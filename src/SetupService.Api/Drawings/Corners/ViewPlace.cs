namespace SetupService.Api.Drawings.Corners;

/// <summary>Where one view stands in the picture.</summary>
/// <param name="Projection">How points get there.</param>
/// <param name="Region">The room for lines and labels.</param>
/// <param name="HeadingY">Baseline of the view's heading.</param>
/// <param name="GroundY">The ground.</param>
/// <param name="DimensionY">Where distances along the ground are dimensioned.</param>
/// <param name="CaptionY">Baseline of the words for the directions.</param>
internal sealed record ViewPlace(
    ViewProjection Projection, PictureBox Region, double HeadingY, double GroundY, double DimensionY, double CaptionY);
