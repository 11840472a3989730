namespace SetupService.Domain.Vehicles;

/// <summary>The loads of an axle's two wheels at rest.</summary>
/// <param name="LeftN">Left wheel, N.</param>
/// <param name="RightN">Right wheel, N.</param>
public readonly record struct StaticLoads(double LeftN, double RightN)
{
    /// <summary>How far the scales of an axle's wheels may differ from its stated load, as a share, before one of them is wrong; common practice, no source.</summary>
    public const double Agreement = 0.02;

    private const double StandardGravity = 9.80665;

    /// <summary>Of both wheels, N.</summary>
    public double SumN => LeftN + RightN;

    /// <summary>The loads: by the scales where both wheels were read, else half the axle's load each; null where neither is known.</summary>
    public static StaticLoads? Compute(Vehicle vehicle, CarAxle axle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        if (Scales(vehicle, axle) is (double left, double right))
            return new(left * StandardGravity, right * StandardGravity);
        return vehicle.At(axle).LoadKg is { } kg ? new(kg * StandardGravity / 2, kg * StandardGravity / 2) : null;
    }

    /// <summary>Mass of the whole car, kg; null where an axle's load is not known.</summary>
    public static double? CarMassKg(Vehicle vehicle) => (Compute(vehicle, CarAxle.Front)?.SumN + Compute(vehicle, CarAxle.Rear)?.SumN) / StandardGravity;

    /// <summary>Mean static load of the four wheels, N; 0 where an axle's load is not known.</summary>
    public static double MeanOfWheelsN(Vehicle vehicle) => CarMassKg(vehicle) is { } kg ? kg * StandardGravity / 4 : 0;

    /// <summary>True when half an axle's load is taken to be on each of its wheels because their scales were not read.</summary>
    public static bool AreHalved(Vehicle vehicle, CarAxle axle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return Scales(vehicle, axle) is not (double, double);
    }

    /// <summary>What the scales read together and what the axle is said to carry, kg, where the two contradict each other; null where they do not.</summary>
    public static (double ScalesKg, double StatedKg)? Contradiction(Vehicle vehicle, CarAxle axle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        if (Scales(vehicle, axle) is not (double left, double right) || vehicle.At(axle).LoadKg is not { } stated) return null;
        return Math.Abs(left + right - stated) > Agreement * stated ? (left + right, stated) : null;
    }

    private static (double? Left, double? Right) Scales(Vehicle vehicle, CarAxle axle) => vehicle.CornerWeights is not { } weights
        ? (null, null)
        : axle == CarAxle.Front ? (weights.FrontLeftKg, weights.FrontRightKg) : (weights.RearLeftKg, weights.RearRightKg);
}
