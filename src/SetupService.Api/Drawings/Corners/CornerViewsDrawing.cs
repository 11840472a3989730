using SetupService.Domain.Answers;

namespace SetupService.Api.Drawings.Corners;

/// <summary>Draws a corner seen from behind and from its side as SVG. One unit of the picture is one millimetre.</summary>
public static class CornerViewsDrawing
{
    /// <summary>
    /// Both views one under the other: from behind, so that outboard is on the left; from the left, so that forward is on the left.
    /// </summary>
    /// <param name="views">What is to be drawn.</param>
    /// <param name="units">Units of the texts; the picture itself is in mm always.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(CornerViews views, UnitSystem units) => throw new NotImplementedException();
}
