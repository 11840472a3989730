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

    /// <summary>How far the treads lean off flat, degrees, the larger of both axles'.</summary>
    public double OffFlatDeg => Math.Max(Math.Abs(Front.OffFlatDeg), Math.Abs(Rear.OffFlatDeg));

    /// <summary>The higher ride frequency of both axles, Hz.</summary>
    public double RideFrequencyHz => Math.Max(Front.RideFrequencyHz, Rear.RideFrequencyHz);

    /// <summary>Wear of the inner shoulder by the mean of the tread on the straight, the larger of both axles'; null where no tyre is known.</summary>
    public double? InnerShoulderWearRatio => Front.InnerShoulderWearRatio is { } front && Rear.InnerShoulderWearRatio is { } rear ? Math.Max(front, rear) : Front.InnerShoulderWearRatio ?? Rear.InnerShoulderWearRatio;

    /// <summary>How far the tyres are made for a dry track: 0 for touring and summer tyres up to 3 for slicks; the more so the less they hold on a wet road.</summary>
    public int DryBias => Math.Max(Front.DryBias, Rear.DryBias);

    /// <summary>One axle.</summary>
    public AxleFigures At(CarAxle at) => at == CarAxle.Front ? Front : Rear;
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
}
