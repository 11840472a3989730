namespace SetupService.Domain.Fitment.Outlines;

/// <summary>A point of a section through the wheel axis.</summary>
/// <param name="StationMm">Distance from the hub face along the wheel axis, mm; positive = outboard.</param>
/// <param name="HeightMm">Height above the wheel axis, mm; negative = below it.</param>
public readonly record struct OutlinePoint(double StationMm, double HeightMm)
{
    /// <summary>The point a share of the way, 0 to 1, towards another.</summary>
    internal OutlinePoint Towards(OutlinePoint other, double share) =>
        new(StationMm + (share * (other.StationMm - StationMm)), HeightMm + (share * (other.HeightMm - HeightMm)));
}
