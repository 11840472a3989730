using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>Height of the wheel centre above the ground with the car standing, mm.</summary>
/// <param name="Mm">The height, mm.</param>
/// <param name="IsEstimated">True where it was not measured but follows from tyre and load.</param>
public readonly record struct StandingRadius(double Mm, bool IsEstimated)
{
    private const double StandardGravity = 9.80665;

    /// <summary>
    /// As measured; else from the tyre's vertical rate and the load of the wheel; else the static estimate of <see cref="Tyres.LoadedRadius"/>. Null without a
    /// tyre.
    /// </summary>
    public static StandingRadius? Of(Axle axle)
    {
        ArgumentNullException.ThrowIfNull(axle);
        if (axle.LoadedRadiusMm is { } measuredMm) return new(measuredMm, false);
        if (axle.Tyre is not { } tyre) return null;
        var loadN = axle.LoadKg / 2 * StandardGravity;
        return tyre.VerticalRateNPerMm is { } rate && loadN is { } pressing
            ? new(LoadedRadius.FromVerticalRateMm(tyre.Marking.Dimensions.OverallDiameterMm, pressing, rate), true)
            : new(LoadedRadius.StaticEstimateMm(tyre.Marking, loadN, tyre.PressureKpa), true);
    }
}
