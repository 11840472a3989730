using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>The bump stop of one wheel.</summary>
public sealed record BumpStopDocument
{
    /// <summary>Mean rate at the stop.</summary>
    [Limits(0.1, 5000)]
    [Sample(90.0)]
    public double? RateNPerMm { get; set; }

    /// <summary>Length without load.</summary>
    [Limits(1, 300)]
    [Sample(45.0)]
    public double? LengthMm { get; set; }
}
