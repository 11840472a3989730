using SetupService.Domain.Tyres;

namespace SetupService.Domain.Vehicles;

/// <summary>Height of the wheel centre above the ground with the car standing, the same in every call.</summary>
/// <param name="Mm">The height, mm.</param>
/// <param name="IsEstimated">True where it was not measured but follows from tyre and load.</param>
public readonly record struct StandingRadius(double Mm, bool IsEstimated)
{
    /// <summary>What an estimate rests on.</summary>
    public const string EstimateSource = "static estimate from tyre, pressure and load";

    /// <summary>
    /// As measured; else from the tyre's vertical rate and the mean load of the axle's wheels; else the static estimate of <see cref="LoadedRadius"/>. Never below
    /// the rim's radius. Null without a tyre, and where its size has no rule for its height.
    /// </summary>
    public static StandingRadius? Compute(Vehicle vehicle, CarAxle at)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        var axle = vehicle.At(at);
        if (axle.LoadedRadiusMm is { } measuredMm) return new(measuredMm, false);
        if (axle.Tyre is not { Marking.HasDimensions: true } tyre) return null;
        var loadN = StaticLoads.Compute(vehicle, at)?.SumN / 2;
        var dimensions = tyre.Marking.Dimensions;
        return tyre.VerticalRateNPerMm is { } rate && loadN is { } pressing
            ? new(Math.Max(LoadedRadius.FromVerticalRateMm(dimensions.OverallDiameterMm, pressing, rate), dimensions.RimDiameterMm / 2), true)
            : new(LoadedRadius.StaticEstimateMm(tyre.Marking, loadN, tyre.PressureKpa), true);
    }
}
