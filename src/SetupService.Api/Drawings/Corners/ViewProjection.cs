using SetupService.Domain.Numerics;

namespace SetupService.Api.Drawings.Corners;

/// <summary>
/// Turns points of the corner into points of the picture. Seen from behind, the left of the car is on the left; seen from the left,
/// its front is. Both views keep millimetres.
/// </summary>
/// <param name="IsFront">Whether this is the view along the car, from behind; else the one from the left.</param>
/// <param name="ShiftX">The picture's x of the axes' origin, mm.</param>
/// <param name="ShiftY">The picture's y of it, mm.</param>
internal readonly record struct ViewProjection(bool IsFront, double ShiftX, double ShiftY)
{
    public ViewPoint Flat(in Vector3 point) => new(IsFront ? point.Y : point.X, point.Z);

    public (double X, double Y) Of(ViewPoint point) => (ShiftX - point.AlongMm, ShiftY - point.HeightMm);

    public (double X, double Y) Of(in Vector3 point) => Of(Flat(point));
}
