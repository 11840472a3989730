namespace SetupService.Api.Drawings.Corners;

/// <summary>Draws the wheel as a disc of the loaded radius, as wide as the tyre.</summary>
internal static class WheelPainter
{
    private const double AxleShare = 0.32;

    public static void Paint(ViewCanvas canvas)
    {
        var (svg, shape) = (canvas.Svg, canvas.Shape);
        var wheel = shape.Views.Wheel;
        svg.OpenGroup(canvas.Id("wheel"));
        svg.Path(Polyline.Of(ConvexHull.Of(shape.Sidewalls().Select(canvas.Of)), closed: true), Pen.Full(InkRole.Soft, 1.3).WithFill(InkRole.Soft, 0.13));
        svg.Path(Polyline.Of([.. shape.Circle(0).Select(canvas.Of)], closed: true), Pen.Dashed(InkRole.Soft, 0.9, 5, 4));
        var axle = AxleShare * shape.Views.LoadedRadiusMm * wheel.Spin;
        canvas.Line(wheel.Centre - axle, wheel.Centre + axle, CornerPens.CentreLine);
        CornerMarks.Cross(svg, canvas.Unit, canvas.Of(wheel.Centre));
        svg.Circle(canvas.Of(shape.Contact).X, canvas.Of(shape.Contact).Y, 4 * canvas.Unit, Pen.Filled(InkRole.Ink));
        svg.Close();
    }
}
