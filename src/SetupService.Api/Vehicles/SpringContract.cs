using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>The main spring of one wheel.</summary>
public sealed record SpringDocument
{
    /// <summary>Rate at the spring.</summary>
    [Range(1, 2000)]
    [Sample(27.0)]
    public double? RateNPerMm { get; set; }

    /// <summary>Spring travel divided by wheel travel.</summary>
    [Range(0.05, 2)]
    [Sample(0.94)]
    public double? MotionRatio { get; set; }

    /// <summary>Length without load.</summary>
    [Range(30, 1000)]
    [Sample(340.0)]
    public double? FreeLengthMm { get; set; }

    /// <summary>Length with the coils touching.</summary>
    [Range(10, 1000)]
    [Sample(120.0)]
    public double? SolidLengthMm { get; set; }

    /// <summary>Length at ride height.</summary>
    [Range(10, 1000)]
    [Sample(215.0)]
    public double? InstalledLengthMm { get; set; }

    /// <summary>How far the seats compress the spring at full droop; negative = the spring is loose there.</summary>
    [Range(-200, 500)]
    [Sample(20.0)]
    public double? PreloadMm { get; set; }
}

/// <summary>The damper of one wheel, linear, with figures at the damper.</summary>
public sealed record DamperDocument
{
    /// <summary>Force per speed in bump.</summary>
    [Range(0, 100000)]
    [Sample(1500.0)]
    public double? BumpNsPerM { get; set; }

    /// <summary>Force per speed in rebound.</summary>
    [Range(0, 100000)]
    [Sample(3200.0)]
    public double? ReboundNsPerM { get; set; }

    /// <summary>Damper travel divided by wheel travel.</summary>
    [Range(0.05, 2)]
    [Sample(0.94)]
    public double? MotionRatio { get; set; }
}

/// <summary>The bump stop of one wheel.</summary>
public sealed record BumpStopDocument
{
    /// <summary>Mean rate at the stop.</summary>
    [Range(0.1, 5000)]
    [Sample(90.0)]
    public double? RateNPerMm { get; set; }

    /// <summary>Force over compression from the first touch, both rising; takes the place of rate and length in a turn. Beyond its last point the stop is solid.</summary>
    [Count(1, 40)]
    public StopForceDocument[]? ForceCurve { get; set; }

    /// <summary>Length without load.</summary>
    [Range(1, 300)]
    [Sample(45.0)]
    public double? LengthMm { get; set; }

    /// <summary>Length when compressed as far as it goes.</summary>
    [Range(1, 300)]
    [Sample(18.0)]
    public double? CompressedLengthMm { get; set; }

    /// <summary>Compression of the stop by wheel travel; the damper's motion ratio where left out.</summary>
    [Range(0.1, 2)]
    [Sample(0.94)]
    public double? MotionRatio { get; set; }
}

/// <summary>A point of a bump stop's force curve, at the stop.</summary>
public sealed record StopForceDocument
{
    /// <summary>Compression from the first touch.</summary>
    [JsonRequired]
    [Range(0.1, 200)]
    [Sample(10.0)]
    public double CompressionMm { get; set; }

    /// <summary>Force there.</summary>
    [JsonRequired]
    [Range(1, 200000)]
    [Sample(400.0)]
    public double ForceN { get; set; }
}

/// <summary>The anti-roll bar of one axle.</summary>
public sealed record AntiRollBarDocument
{
    /// <summary>The bar's moment on the body per degree of body roll; 0 = no bar.</summary>
    [Range(0, 20000)]
    [Sample(310.0)]
    public double? RollRateNmPerDeg { get; set; }
}

/// <summary>How far a wheel gives under side force towards the car's middle.</summary>
public sealed record ComplianceDocument
{
    /// <summary>Change of camber; positive = the wheel leans out.</summary>
    [Range(-5, 5)]
    [Sample(0.12)]
    public double? CamberDegPerKn { get; set; }

    /// <summary>Change of toe; positive = the wheel toes out.</summary>
    [Range(-5, 5)]
    [Sample(0.03)]
    public double? ToeDegPerKn { get; set; }
}
