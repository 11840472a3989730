using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Planning;

/// <summary>What one state of the car reaches: its three outcomes by their figures; null where a figure is not known. Method page: docs/methods/plan.</summary>
public sealed record PackageFigures
{
    /// <summary>What the axle that gives up first can hold, g, the mean over the bends by their shares.</summary>
    public required double? LimitG { get; init; }

    /// <summary>The same of the hardest bend alone.</summary>
    public required double? HardestLimitG { get; init; }

    /// <summary>By how much the rear can hold more than the front, g, the mean over the bends; negative = the rear gives up first.</summary>
    public required double? MarginG { get; init; }

    /// <summary>The front axle.</summary>
    public required AxleFigures Front { get; init; }

    /// <summary>The rear axle.</summary>
    public required AxleFigures Rear { get; init; }

    /// <summary>By what the life of the tyre that ends first is multiplied over a year of the use stated, the car as given being 1; null where no treads tell it.</summary>
    public required double? TreadLifeFactor { get; init; }

    /// <summary>By how much one standard error of each independent unknown of the wear model, as the treads leave it, moves that factor; alike in order for all packages of a plan, empty where none is known.</summary>
    public IReadOnlyList<double> TreadLifeEffects { get; init; } = [];

    /// <summary>How much louder than the car as given, in steps of <see cref="PackageNoise"/>; null where it was not told.</summary>
    public double? NoiseSteps { get; init; } = 0;

    /// <summary>How far the treads lean off flat, degrees, the larger of both axles'.</summary>
    public double OffFlatDeg => Math.Max(Math.Abs(Front.OffFlatDeg), Math.Abs(Rear.OffFlatDeg));

    /// <summary>The higher ride frequency of both axles, Hz.</summary>
    public double RideFrequencyHz => Math.Max(Front.RideFrequencyHz, Rear.RideFrequencyHz);

    /// <summary>Wear of the inner shoulder by the mean of the tread on the straight, the larger of both axles'; null where no tyre is known.</summary>
    public double? InnerShoulderWearRatio => Front.InnerShoulderWearRatio is { } front && Rear.InnerShoulderWearRatio is { } rear ? Math.Max(front, rear) : Front.InnerShoulderWearRatio ?? Rear.InnerShoulderWearRatio;

    /// <summary>How far the tyres are made for a dry track: 0 for touring and summer tyres up to 3 for slicks; the more so the less they hold on a wet road.</summary>
    public int DryBias => Math.Max(Front.DryBias, Rear.DryBias);

    /// <summary>How far the damping ratios of both axles are outside what serves on road and track, added up; one that is not known counts for nothing.</summary>
    public double OffDampingRange => OffRange(Front.DampingRatio) + OffRange(Rear.DampingRatio);

    /// <summary>One axle.</summary>
    public AxleFigures At(CarAxle at) => at == CarAxle.Front ? Front : Rear;

    private static double OffRange(double? dampingRatio)
    {
        var range = DampingRange.RoadAndTrack;
        return dampingRatio is not { } ratio ? 0 : Math.Max(0, Math.Max(range.From - ratio, ratio - range.To));
    }
}

/// <summary>What one axle of a state of the car reaches.</summary>
public sealed record AxleFigures
{
    /// <summary>What it can hold, g, the mean over the bends; null where a bend has no such limit.</summary>
    public required double? LimitG { get; init; }

    /// <summary>Mean inclination of the outer wheel to the road over the bends, degrees, weighted by load times slip times time; negative = top towards the car's centre.</summary>
    public required double MeanInclinationDeg { get; init; }

    /// <summary>How far the outer tread leans off flat, degrees: the mean inclination, with what the treads say against it where they were read.</summary>
    public required double OffFlatDeg { get; init; }

    /// <summary>Camber standing, mean of both wheels, degrees.</summary>
    public required double CamberDeg { get; init; }

    /// <summary>Frequency of the sprung mass on spring and tyre, Hz.</summary>
    public required double RideFrequencyHz { get; init; }

    /// <summary>Mean damping ratio; null where the damper is not known.</summary>
    public required double? DampingRatio { get; init; }

    /// <summary>Wheel rate, N/mm.</summary>
    public required double WheelRateNPerMm { get; init; }

    /// <summary>Travel left to the bump stop, standing, mm; null where it is not known.</summary>
    public required double? BumpLeftMm { get; init; }

    /// <summary>Body height less that of the car as given, mm; null where it is not known.</summary>
    public required double? HeightMm { get; init; }

    /// <summary>Wear of the inner shoulder by the mean of the tread on the straight; null where the tyre is not known.</summary>
    public required double? InnerShoulderWearRatio { get; init; }

    /// <summary>0 for touring and summer tyres, 1 trackDay, 2 semiSlick, 3 slick.</summary>
    public required int DryBias { get; init; }

    /// <summary>Width of the rim, in; null where the wheel is not known.</summary>
    public required double? RimWidthIn { get; init; }

    /// <summary>The figures of an axle of a car.</summary>
    /// <param name="car">The car, standing.</param>
    /// <param name="scaled">The same on the plan's scale of grip.</param>
    /// <param name="at">Which axle.</param>
    /// <param name="limitG">What the axle can hold, g; null where a bend has no such limit.</param>
    /// <param name="meanDeg">Mean inclination of its outer wheel, degrees.</param>
    /// <param name="treadsSayDeg">What its treads say against that, degrees.</param>
    internal static AxleFigures From(StandingCar car, HandlingCar scaled, CarAxle at, double? limitG, double meanDeg, double treadsSayDeg)
    {
        var (axle, ride, stated) = (scaled.At(at), car.At(at), car.Stated.At(at));
        var camberDeg = StandingCamberDeg(axle, at);
        return new()
        {
            LimitG = limitG,
            MeanInclinationDeg = meanDeg,
            OffFlatDeg = meanDeg - treadsSayDeg,
            CamberDeg = camberDeg,
            RideFrequencyHz = ride.RideFrequencyHz,
            DampingRatio = ride.MeanRatio,
            WheelRateNPerMm = ride.WheelRateNPerMm,
            BumpLeftMm = ride.BumpLeftMm,
            HeightMm = car.Unknown.Any(gap => gap.At == at && gap.Figure == FollowingFigure.RideHeight) ? null : at == CarAxle.Front ? car.HeightMm.Front : car.HeightMm.Rear,
            InnerShoulderWearRatio = stated.Tyre is { } tyre
                ? StraightRunning.Compute(camberDeg, (axle.LeftToeDeg + axle.RightToeDeg) / 2, axle.LoadN / 2, axle.TyreRateNPerMm, TreadWidth.Mm(tyre).Value, axle.LoadedRadiusMm).InnerShoulderWearRatio.Value
                : null,
            DryBias = stated.Tyre?.Category switch { TyreCategory.TrackDay => 1, TyreCategory.SemiSlick => 2, TyreCategory.Slick => 3, _ => 0 },
            RimWidthIn = stated.Wheel?.RimWidthIn,
        };
    }

    /// <summary>Camber of an axle standing, mean of both wheels, degrees.</summary>
    internal static double StandingCamberDeg(HandlingAxle axle, CarAxle at)
    {
        return (Standing(WheelSide.Left) + Standing(WheelSide.Right)) / 2;

        // Beyond what was read of it a wheel keeps the camber it is set to.
        double Standing(WheelSide side)
        {
            if (axle.Suspension.MotionOf(axle.SetupOf(at, side)) is not { } motion) return Set(side);
            var pose = motion.Origin;
            return motion.TryAt(0, 0, ref pose, out var wheel) ? wheel.CamberDeg : Set(side);
        }

        double Set(WheelSide side) => side == WheelSide.Left ? axle.LeftCamberDeg : axle.RightCamberDeg;
    }
}
