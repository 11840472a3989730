using SetupService.Domain.Geometry.Measured;
using SetupService.Domain.Geometry.Suspensions;
using SetupService.Domain.Tyres;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Vehicles;

/// <summary>One axle of a car, as far as it is known; what is not known is null.</summary>
public sealed record Axle
{
    /// <summary>The wheel fitted now.</summary>
    public Wheel? Wheel { get; init; }

    /// <summary>The tyre fitted now.</summary>
    public Tyre? Tyre { get; init; }

    /// <summary>Load on the axle with the car as driven, kg.</summary>
    public double? LoadKg { get; init; }

    /// <summary>The greatest load the axle may carry, kg, as the car's plate states it.</summary>
    public double? MaximumLoadKg { get; init; }

    /// <summary>The lowest load index the car's papers allow.</summary>
    public int? MinimumLoadIndex { get; init; }

    /// <summary>What the wheel is bolted to.</summary>
    public Hub Hub { get; init; } = new();

    /// <summary>The gaps around the wheel and tyre fitted now.</summary>
    public Clearance Clearance { get; init; } = new();

    /// <summary>How the axle is suspended.</summary>
    public SuspensionLayout? Layout { get; init; }

    /// <summary>The points of the left corner at ride height, where they are known; they may contradict each other.</summary>
    public Suspension? Suspension { get; init; }

    /// <summary>Camber against wheel travel, where it was measured.</summary>
    public CamberCurve? CamberCurve { get; init; }

    /// <summary>Camber at ride height, degrees, negative = top inboard.</summary>
    public double? CamberDeg { get; init; }

    /// <summary>Toe of the wheel at ride height, degrees, positive = toe-in.</summary>
    public double? ToeDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees, positive = top inboard.</summary>
    public double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Wheel travel from ride height to the first touch of the bump stop, mm.</summary>
    public double? BumpTravelMm { get; init; }
}
