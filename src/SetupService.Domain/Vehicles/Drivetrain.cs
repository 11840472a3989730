namespace SetupService.Domain.Vehicles;

/// <summary>How the differential of a driven axle shares torque between its wheels.</summary>
public enum DifferentialKind
{
    /// <summary>The same torque to both wheels.</summary>
    Open,

    /// <summary>Both wheels turn alike.</summary>
    Locked,

    /// <summary>Up to a torque bias ratio between the wheels.</summary>
    LimitedSlip,
}

/// <summary>The differential of each driven axle.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="BiasRatio">Torque bias ratio: the most torque of the wheel that holds more by that of the other, at least 1; 1 of an open one, infinite of a locked one.</param>
public readonly record struct Differential(DifferentialKind Kind, double BiasRatio)
{
    /// <summary>An open differential.</summary>
    public static Differential Open => new(DifferentialKind.Open, 1);

    /// <summary>A locked differential, or a spool.</summary>
    public static Differential Locked => new(DifferentialKind.Locked, double.PositiveInfinity);

    /// <summary>A limited-slip differential.</summary>
    public static Differential LimitedSlip(double biasRatio) => new(DifferentialKind.LimitedSlip, biasRatio);
}

/// <summary>Forces of the air on a car at a reference speed, as measured at the wheels; they grow with the square of speed.</summary>
/// <param name="ReferenceSpeedKmh">Reference speed, km/h, above 0.</param>
/// <param name="FrontDownforceN">Load added to the front axle, N; negative = lift. What the drag's own height shifts is in it.</param>
/// <param name="RearDownforceN">Load added to the rear axle, N; negative = lift.</param>
/// <param name="DragN">Drag, N, not negative.</param>
public readonly record struct Aero(double ReferenceSpeedKmh, double FrontDownforceN, double RearDownforceN, double DragN)
{
    /// <summary>Forces at a speed over those at the reference speed.</summary>
    public double ScaleAt(double speedKmh) => speedKmh * speedKmh / (ReferenceSpeedKmh * ReferenceSpeedKmh);
}
