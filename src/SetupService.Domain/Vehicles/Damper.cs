namespace SetupService.Domain.Vehicles;

/// <summary>The damper of one wheel, linear, with figures at the damper; what is not known is null.</summary>
public sealed record Damper
{
    /// <summary>Force by speed in bump, N s/m.</summary>
    public double? BumpNsPerM { get; init; }

    /// <summary>Force by speed in rebound, N s/m.</summary>
    public double? ReboundNsPerM { get; init; }

    /// <summary>Damper travel by wheel travel at ride height.</summary>
    public double? MotionRatio { get; init; }
}
