namespace SetupService.Domain.Vehicles;

/// <summary>A car, as far as it is known; what is not known is null.</summary>
public sealed record Vehicle
{
    /// <summary>Which axle the engine drives.</summary>
    public DrivenAxle? DrivenAxle { get; init; }

    /// <summary>Top speed, km/h, as the car's papers state it.</summary>
    public double? TopSpeedKmh { get; init; }

    /// <summary>The front axle.</summary>
    public Axle Front { get; init; } = new();

    /// <summary>The rear axle.</summary>
    public Axle Rear { get; init; } = new();

    /// <summary>One axle of the car.</summary>
    public Axle At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;

    /// <summary>The axle at the other end.</summary>
    public Axle Opposite(CarAxle axle) => axle == CarAxle.Front ? Rear : Front;
}
